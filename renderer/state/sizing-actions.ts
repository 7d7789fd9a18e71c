import type { FieldPath } from '../../core/job/index.ts'
import type { SizingResult } from '../../core/sizing/index.ts'
import { sentenceOf } from '../client/call-error.ts'
import type { SessionParts } from './session-parts.ts'

/** What came of asking for sizes, and for which edit of the job. */
export type Proposal =
  | { readonly edit: number; readonly result: SizingResult }
  | { readonly edit: number; readonly failure: string }

export interface SizingActions {
  /** asks for the cheapest sizes that pass; nothing of the job changes */
  proposeSizes(held: readonly FieldPath[]): Promise<Proposal>
}

export function sizingActions({ client, store, watched }: SessionParts): SizingActions {
  return {
    async proposeSizes(held) {
      const { edit, history } = store.getState()
      try {
        return await watched('sizes', (task) =>
          client.call('sizing.run', { edit, statement: history.present, held, task }),
        )
      } catch (error) {
        return { edit, failure: sentenceOf(error) }
      }
    },
  }
}
