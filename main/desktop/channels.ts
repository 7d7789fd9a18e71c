/** The only channels between the window and the machine. */
export const callChannel = 'kerfwright:call'
export const eventChannel = 'kerfwright:event'
export const menuChannel = 'kerfwright:menu'
export const mayCloseChannel = 'kerfwright:may-close'
