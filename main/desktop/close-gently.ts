/** What of a window its closing needs. */
export interface Closing {
  on(event: 'close', listener: (event: { preventDefault(): void }) => void): unknown
  destroy(): void
}

/** A page that does not answer for so long is closed all the same: what it had was saved a second before. */
const LONGEST_WAIT = 2_000

/**
 * Holds a closing window until its page has saved what was typed last.
 * @param ask tells the page that it is about to close
 * @returns to be called when the page says that it may close
 */
export function closeGently(
  window: Closing,
  { ask, wait = LONGEST_WAIT }: { readonly ask: () => void; readonly wait?: number },
): () => void {
  let timer: ReturnType<typeof setTimeout> | null = null
  const close = () => {
    if (timer === null) return
    clearTimeout(timer)
    timer = null
    window.destroy()
  }
  window.on('close', (event) => {
    event.preventDefault()
    if (timer !== null) return
    timer = setTimeout(close, wait)
    ask()
  })
  return close
}
