import { TICKS_PER_INCH } from '../../core/units/index.ts'

/** By which column rows stand, and which way; null: in their own order. */
export type Sorting = { readonly column: number; readonly down: boolean } | null

/** What choosing a heading does: up, then down, then the rows' own order again. */
export function nextSorting(before: Sorting, column: number): Sorting {
  if (before?.column !== column) return { column, down: false }
  return before.down ? null : { column, down: true }
}

const collator = new Intl.Collator('en', { numeric: true, sensitivity: 'base' })
const LENGTH = /(\d+)'-(\d+)(?: (\d+)\/(\d+))?"/g

/** A text so that lengths, sums and sizes in it stand in the order of what they say. */
export function sortText(text: string): string {
  return text
    .replace(
      LENGTH,
      (_all, feet: string, inches: string, over = '0', under = '1') =>
        `${(Number(feet) * 12 + Number(inches)) * TICKS_PER_INCH + (Number(over) * TICKS_PER_INCH) / Number(under)}`,
    )
    .replace(/[$,](?=\d)/g, '')
}

/** Rows by one of their texts; alike ones keep their order, and those that say nothing come last either way. */
export function sortedBy<T>(rows: readonly T[], textOf: (row: T) => string, down: boolean): readonly T[] {
  return rows
    .map((row) => ({ row, key: sortText(textOf(row)) }))
    .sort((a, b) => {
      if (a.key === '' || b.key === '') return a.key === b.key ? 0 : a.key === '' ? 1 : -1
      return down ? compareTexts(b.key, a.key) : compareTexts(a.key, b.key)
    })
    .map(({ row }) => row)
}

/** Figures by their size, decimals too; else texts, with the numbers in them by size. */
function compareTexts(a: string, b: string): number {
  const difference = Number(a) - Number(b)
  return Number.isNaN(difference) ? collator.compare(a, b) : difference
}
