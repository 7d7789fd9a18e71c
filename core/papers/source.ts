import type { Estimate } from '../estimate-types.ts'
import type { PriceBook, Pricing } from '../pricing/index.ts'
import type { About } from './sheet-types.ts'

/** Who makes the papers, stated once. Every text is the firm's own; an empty one is left out. */
export interface Firm {
  readonly name: string
  readonly lines: readonly string[]
  /** terms of the firm's own, printed under a quote */
  readonly terms: readonly string[]
  /** days for which a quote holds */
  readonly validDays: number
  /** stages of payment with shares of the price in 1/100 %, summing to 10,000 */
  readonly stages: readonly { readonly label: string; readonly share: number }[]
}

export const NO_FIRM: Firm = { name: '', lines: [], terms: [], validDays: 30, stages: [] }

/** Everything that papers are made from. The date is stated by whoever asks; nothing here reads a clock. */
export interface PaperSource {
  readonly estimate: Estimate & { readonly pricing: Pricing }
  readonly book: PriceBook
  readonly firm: Firm
  /** ISO date, '' where none was stated */
  readonly date: string
  readonly revision: string
}

export function aboutOf({ estimate, book, firm, date, revision }: PaperSource): About {
  return {
    job: estimate.job.name,
    firm: firm.name,
    revision,
    date,
    prices: `Prices: ${book.name}, ${book.date}${book.invented ? ' (invented)' : ''}`,
    code: estimate.job.code.edition,
  }
}
