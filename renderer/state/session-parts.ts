import type { StoreApi } from 'zustand/vanilla'
import type { Client } from '../../shared/contract/index.ts'
import type { SessionState } from './session-types.ts'
import type { Tasks } from './tasks.ts'

/** What every part of a session works with. */
export interface SessionParts {
  readonly client: Client
  readonly store: StoreApi<SessionState>
  readonly get: () => SessionState
  readonly set: (patch: Partial<SessionState>) => void
  /** runs work under a name of its own, so that it is watched and can be stopped */
  readonly watched: Tasks['watched']
  /** shows a sentence in the status line, for as long as a notice stands */
  readonly say: (sentence: string) => void
}
