/** True on a Mac, where the command key does what Ctrl does elsewhere. */
export const MAC = /Mac|iPhone|iPad/.test(navigator.userAgent)
