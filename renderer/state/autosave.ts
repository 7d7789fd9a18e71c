/** Saves soon after the last change, and never later than a second after the first unsaved one. */
export interface Autosave {
  touch(): void
  /** saves at once what is unsaved */
  flush(): void
}

const QUIET = 350
const LONGEST = 900

export function autosave(save: () => void): Autosave {
  let timer: ReturnType<typeof setTimeout> | null = null
  let first = 0

  function fire() {
    if (timer !== null) clearTimeout(timer)
    timer = null
    first = 0
    save()
  }

  return {
    touch() {
      const now = performance.now()
      if (timer === null) first = now
      else clearTimeout(timer)
      timer = setTimeout(fire, Math.max(0, Math.min(QUIET, first + LONGEST - now)))
    },
    flush() {
      if (timer !== null) fire()
    },
  }
}
