/** The only two channels between the window and the machine. */
export const callChannel = 'kerfwright:call'
export const eventChannel = 'kerfwright:event'
