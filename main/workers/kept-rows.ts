import type { CompareRow, WidthRange } from '../../core/compare/index.ts'
import type { JobStatement } from '../../core/job/index.ts'
import type { PriceBook } from '../../core/pricing/index.ts'
import { contentKey } from './content-key.ts'
import { Recent } from './recent.ts'

/** Rows of one deck by width, and which of them lie between the steps of the range that brought them. */
interface DeckRows {
  readonly rows: Map<number, CompareRow>
  readonly exact: Set<number>
}

/**
 * Rows already worked. A row says the same whatever width the deck itself has and whatever range it was asked in, so
 * dragging the width, or a range that moves with it, needs only what is new.
 */
export class KeptRows {
  readonly #decks: Recent<DeckRows>

  constructor(decks: number) {
    this.#decks = new Recent(decks)
  }

  of(statement: JobStatement, book: PriceBook) {
    const key = contentKey(withoutWidth(statement), book)
    const deck = this.#decks.get(key) ?? { rows: new Map(), exact: new Set() }
    this.#decks.set(key, deck)
    return {
      within: (range: WidthRange): readonly CompareRow[] =>
        [...deck.rows.values()].filter(
          ({ width }) =>
            width >= range.from &&
            width <= range.to &&
            (isStep(width, range) || (range.exactFits === true && deck.exact.has(width))),
        ),
      add: (row: CompareRow, range: WidthRange): void => {
        deck.rows.set(row.width, row)
        if (!isStep(row.width, range)) deck.exact.add(row.width)
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
