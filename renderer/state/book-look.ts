import type { BookRow } from '../../core/pricing/index.ts'
import type { SessionParts } from './session-parts.ts'

/** The parts of a price book, each a table of its own. */
export const BOOK_PARTS = ['boards', 'goods', 'suppliers', 'hours', 'joints'] as const
export type BookPart = (typeof BOOK_PARTS)[number]

/** What of the price book is looked at, and the row in which one stands. */
export interface BookLook {
  readonly part: BookPart
  readonly row: BookRow | null
}

export interface BookLookActions {
  lookAtBook(part: BookPart): void
  /** what is added beside a row is offered for this one */
  standOn(row: BookRow): void
}

export function bookLookActions({ get, set }: Pick<SessionParts, 'get' | 'set'>): BookLookActions {
  return {
    lookAtBook: (part) => set({ bookLook: { part, row: null } }),
    standOn: (row) => set({ bookLook: { ...get().bookLook, row } }),
  }
}
