import type { Estimate } from '../estimate-types.ts'
import type { PriceBook, Pricing } from '../pricing/index.ts'
import type { Cents } from '../units/index.ts'
import type { About } from './sheet-types.ts'

/** A picture that stands at the head of every page. */
export interface Logo {
  /** the file as a data URL, PNG or JPEG */
  readonly data: string
  /** of the picture itself, pixels */
  readonly width: number
  readonly height: number
}

/** Who makes the papers, stated once. Every text is the firm's own; an empty one is left out. */
export interface Firm {
  readonly name: string
  readonly lines: readonly string[]
  readonly logo: Logo | null
  /** the state whose limit on deposits is watched, as its two letters; '' for none */
  readonly state: string
  /** terms of the firm's own, printed under a quote */
  readonly terms: readonly string[]
  /** days for which a quote holds */
  readonly validDays: number
  /** stages of payment with shares of the price in 1/100 %, summing to 10,000 */
  readonly stages: readonly { readonly label: string; readonly share: number }[]
}

export const NO_FIRM: Firm = {
  name: '',
  lines: [],
  logo: null,
  state: '',
  terms: [],
  validDays: 30,
  stages: [],
}

/** A choice offered to the customer, estimated beside the deck itself. */
export interface PricedOption {
  readonly name: string
  /** what it changes, field by field */
  readonly changes: readonly string[]
  /** what the customer pays more or, below zero, less, tax on the price included; null where it has no price */
  readonly price: Cents | null
  /** why it has no price, or what is to be looked at before it is promised; '' for nothing */
  readonly caution: string
}

/** One state of a quote: revision null is the present one, not sent yet. */
export interface QuoteState {
  readonly revision: number | null
  /** ISO date, '' where none was stated */
  readonly date: string
  readonly price: Cents
}

/** The difference of two states of a quote, line by line; the lines sum to the difference of their prices. */
export interface QuoteChange {
  readonly from: QuoteState
  readonly to: QuoteState
  readonly lines: readonly { readonly what: string; readonly amount: Cents }[]
}

/** What a quote says beyond its estimate. */
export interface QuoteContext {
  /** null until it is sent */
  readonly number: number | null
  readonly revision: number | null
  readonly options: readonly PricedOption[]
  /** since the quote sent last; null where none was */
  readonly change: QuoteChange | null
}

export const NO_QUOTE: QuoteContext = { number: null, revision: null, options: [], change: null }

/** Everything that papers are made from. The date is stated by whoever asks; nothing here reads a clock. */
export interface PaperSource {
  readonly estimate: Estimate & { readonly pricing: Pricing }
  readonly book: PriceBook
  readonly firm: Firm
  /** ISO date, '' where none was stated */
  readonly date: string
  readonly revision: string
  /** absent where no quote was sent and nothing is offered */
  readonly quote?: QuoteContext
}

export function aboutOf({ estimate, book, firm, date, revision }: PaperSource): About {
  return {
    job: estimate.job.name,
    firm: firm.name,
    logo: firm.logo,
    revision,
    date,
    prices: `Prices: ${book.name}, ${book.date}${book.invented ? ' (invented)' : ''}`,
    pricesOf: `Prices of ${book.date}${book.invented ? ' (invented)' : ''}`,
    code: estimate.job.code.edition,
  }
}
