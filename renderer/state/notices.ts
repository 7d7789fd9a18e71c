import type { StoreApi } from 'zustand/vanilla'
import type { SessionState } from './session-types.ts'

const NOTICE_FOR = 8_000

export interface Notices {
  say(sentence: string): void
  dispose(): void
}

/** One sentence at a time; the newest stands for some seconds. */
export function notices(store: StoreApi<SessionState>): Notices {
  let timer: ReturnType<typeof setTimeout> | undefined
  return {
    say(sentence) {
      store.setState({ notice: sentence })
      clearTimeout(timer)
      timer = setTimeout(() => store.setState({ notice: null }), NOTICE_FOR)
    },
    dispose: () => clearTimeout(timer),
  }
}
