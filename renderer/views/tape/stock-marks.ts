import type { CompareRow } from '../../../core/compare/index.ts'
import type { Job } from '../../../core/job/index.ts'
import type { PriceBook } from '../../../core/pricing/index.ts'

/** Stock lengths that both the joist-size lumber (rim, ledger) and the front beam's lumber are sold in, ascending, in ticks. */
export function stockLengths(book: PriceBook, job: Job): readonly number[] {
  const lengthsOf = (size: string) =>
    book.lumber
      .filter(
        ({ product }) =>
          product.size === size &&
          product.species === job.frame.species &&
          product.treatment === job.frame.treatment,
      )
      .flatMap(({ stock }) => stock.map((each) => each.length as number))
  const beams = new Set(lengthsOf(job.frame.beams.front.size))
  return [...new Set(lengthsOf(job.frame.joists.size))]
    .filter((length) => beams.has(length))
    .sort((a, b) => a - b)
}

/** Widths to mark: a dot where a width is a stock length and every framing run is whole, a ring where the courses are whole too. */
export function stockMarks(
  rows: readonly CompareRow[],
  lengths: readonly number[],
): { readonly dots: readonly number[]; readonly rings: readonly number[] } {
  const priced = rows.filter((row) => row.fault === null)
  const exact = new Set(lengths)
  const dots = priced.filter((row) => row.fitsStock && exact.has(row.width)).map((row) => row.width)
  const rings = priced.filter((row, index) => {
    if (!row.fitsWithDecking) return false
    const next = priced[index + 1]
    return exact.has(row.width) || (next !== undefined && !next.fitsWithDecking)
  })
  return { dots, rings: rings.map((row) => row.width) }
}
