import type { CompareRow, WidthRange } from '../../core/compare/index.ts'
import type { JobStatement } from '../../core/job/index.ts'
import type { OffcutsOnHand, PriceBook } from '../../core/pricing/index.ts'
import { contentKey } from './content-key.ts'
import { Recent } from './recent.ts'

interface KeptRow {
  readonly row: CompareRow
  /** nothing better will come: proven, not to be priced, or left so at the end of a whole comparison */
  readonly final: boolean
  /** lay between the steps of the range that brought it */
  readonly exact: boolean
}

type DeckRows = Map<number, KeptRow>

/**
 * Rows already worked. A row says the same whatever width the deck itself has and whatever range it was asked in, so
 * dragging the width, or a range that moves with it, needs only what is new.
 */
export class KeptRows {
  readonly #decks: Recent<DeckRows>

  constructor(decks: number) {
    this.#decks = new Recent(decks)
  }

  of(statement: JobStatement, book: PriceBook, rack: readonly OffcutsOnHand[]) {
    const key = contentKey(withoutWidth(statement), book, rack)
    const deck = this.#decks.get(key) ?? new Map<number, KeptRow>()
    this.#decks.set(key, deck)
    const within = (range: WidthRange): readonly KeptRow[] =>
      [...deck.values()].filter(
        ({ row: { width }, exact }) =>
          width >= range.from &&
          width <= range.to &&
          (isStep(width, range) || (range.exactFits === true && exact)),
      )
    return {
      within,
      add: (row: CompareRow, range: WidthRange): void => {
        const final = row.proven || row.fault !== null
        deck.set(row.width, { row, final, exact: !isStep(row.width, range) })
      },
      /** A comparison over the range came to its end: its rows are as good as they get. */
      settle: (range: WidthRange): void => {
        for (const kept of within(range)) deck.set(kept.row.width, { ...kept, final: true })
      },
    }
  }
}

/** How many steps a range has, both ends included. */
export function stepsOf({ from, to, step }: WidthRange): number {
  return Math.floor((to - from) / step) + 1
}

function isStep(width: number, { from, step }: WidthRange): boolean {
  return (width - from) % step === 0
}

function withoutWidth(statement: JobStatement): unknown {
  const { size, ...rest } = statement
  if (size === null || typeof size !== 'object' || Array.isArray(size)) return { ...rest, size }
  const { width: _set, ...others } = size as { readonly [key: string]: unknown }
  return { ...rest, size: others }
}
