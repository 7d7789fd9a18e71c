import type { SinceQuote } from '../../shared/contract/index.ts'
import { sentenceOf } from '../client/call-error.ts'
import type { SessionParts } from './session-parts.ts'

/** How the price stands against the quote sent last. */
export interface SinceQuoteState {
  /** edit of the job that it was asked for */
  readonly edit: number
  /** null: no quote was sent */
  readonly since: SinceQuote | null
  /** why it is not known */
  readonly failure: string | null
}

export interface SinceQuoteActions {
  /** asks how the present price differs from the quote sent last; an answer to an older edit is dropped */
  readSinceQuote(): Promise<void>
}

export function sinceQuoteActions({ client, get, set }: SessionParts): SinceQuoteActions {
  return {
    async readSinceQuote() {
      const { open, history, edit } = get()
      if (!open) return
      const tell = (told: Pick<SinceQuoteState, 'since' | 'failure'>) => {
        if (get().edit === edit && get().open?.id === open.id) set({ sinceQuote: { edit, ...told } })
      }
      try {
        const since = await client.call('quotes.lines', { statement: history.present, jobId: open.id })
        tell({ since, failure: null })
      } catch (error) {
        tell({ since: get().sinceQuote?.since ?? null, failure: sentenceOf(error) })
      }
    },
  }
}
