/** True on a Mac, where the command key does what Ctrl does elsewhere. */
export const MAC = /Mac|iPhone|iPad/.test(navigator.userAgent)

/** True in a window of the program's own, where no browser keeps keys for itself. */
export const OWN_WINDOW = window.kerfwright !== undefined
