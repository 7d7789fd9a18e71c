import { type DrawingLook, printLook, readLook } from '../state/drawing/look.ts'

const KEY = 'kerfwright-drawing'

/** How the drawing was looked at when the window was closed; a browser that keeps nothing for a page begins anew. */
export const lookMemory = {
  read(): DrawingLook {
    return readLook(attempt(() => localStorage.getItem(KEY)))
  },
  keep(look: DrawingLook): void {
    attempt(() => localStorage.setItem(KEY, printLook(look)))
  },
}

/** A browser may refuse a page its storage; that is no fault of the job. */
function attempt<Value>(work: () => Value): Value | null {
  try {
    return work()
  } catch {
    return null
  }
}
