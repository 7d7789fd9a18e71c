import { priceDifference } from '../../core/compare/index.ts'
import type { JobStatement } from '../../core/job/index.ts'
import {
  changeLines,
  changeSteps,
  type Firm,
  type QuoteChange,
  type QuoteContext,
} from '../../core/papers/index.ts'
import type { OffcutsOnHand, PriceBook, Pricing } from '../../core/pricing/index.ts'
import { type Cents, cents } from '../../core/units/index.ts'
import type { SinceQuote } from '../../shared/contract/index.ts'
import type { PricedEstimate } from '../exports/workbook/index.ts'
import type { KeptQuote, Store } from '../store/index.ts'
import type { Pool } from '../workers/index.ts'
import { mustBePriced } from './priced.ts'
import { pricedOptions, pricedOr } from './priced-options.ts'

/** What a quote was made from, kept with it; estimated again it is the quote's own estimate. */
export interface MadeFrom {
  readonly statement: JobStatement
  readonly book: PriceBook
  readonly rack: readonly OffcutsOnHand[]
  readonly firm: Firm
}

/** A job as it stands, with the prices and offcuts that hold for it. */
interface Standing extends Omit<MadeFrom, 'firm'> {
  readonly jobId: string | undefined
  /** ISO, '' for none */
  readonly date: string
}

/** Options and changes of quotes, each worked out by estimating what stands on both sides of it. */
interface QuoteReckoner {
  readonly contextOf: (standing: Standing, estimate: PricedEstimate) => Promise<QuoteContext>
  /** the price as it stands against the quote sent last; null where none was sent */
  readonly sinceLast: (jobId: string | undefined, now: Pricing) => Promise<SinceQuote | null>
  /** a sent revision against the one before it; null for the first */
  readonly changeOf: (jobId: string, revision: number) => Promise<QuoteChange | null>
}

export function quoteReckoner(store: Store, pool: Pool): QuoteReckoner {
  const estimated = ({ statement, book, rack }: Omit<MadeFrom, 'firm'>) =>
    pool.estimate({ statement, book, rack, givesWay: false })
  const priceOf = async (from: Omit<MadeFrom, 'firm'>): Promise<Cents | null> => {
    const made = pricedOr(await estimated(from))
    return typeof made === 'string' ? null : made.pricing.totals.priceWithTax
  }

  /** First what prices and offcuts did by themselves, then the fields. */
  async function difference(
    from: KeptQuote,
    to: Omit<MadeFrom, 'firm'> & QuoteChange['to'],
  ): Promise<QuoteChange> {
    const kept = JSON.parse(from.madeFrom) as MadeFrom
    const steps = [
      { what: pricesWords(kept.book, to.book), statement: kept.statement },
      ...changeSteps(kept.statement, to.statement),
    ]
    const prices: (Cents | null)[] = []
    for (const { statement } of steps.slice(0, -1))
      prices.push(await priceOf({ statement, book: to.book, rack: to.rack }))
    const lines = changeLines(from.price, steps, [...prices, to.price])
    return {
      from: { revision: from.revision, date: from.date, price: from.price },
      to: { revision: to.revision, date: to.date, price: to.price },
      lines: lines.filter(({ amount }, i) => i > 0 || amount !== 0),
    }
  }

  const lastOf = (jobId: string | undefined): KeptQuote | null => {
    const last = jobId === undefined ? undefined : store.quotes.list(jobId).at(-1)
    return jobId === undefined || last === undefined ? null : store.quotes.read(jobId, last.revision)
  }

  return {
    contextOf: async (standing, estimate) => {
      const last = lastOf(standing.jobId)
      const price = estimate.pricing.totals.priceWithTax
      const { statement } = standing
      return {
        number: last?.number ?? null,
        revision: null,
        options: await pricedOptions(statement, estimate, (changed) =>
          estimated({ ...standing, statement: changed }),
        ),
        change: last === null ? null : await difference(last, { ...standing, revision: null, price }),
      }
    },
    sinceLast: async (jobId, now) => {
      const last = lastOf(jobId)
      if (last === null) return null
      const { firm: _sender, ...from } = JSON.parse(last.madeFrom) as MadeFrom
      const then = mustBePriced(await estimated(from), 'What was sent cannot be priced again').pricing
      const { number, revision, date, sentAt, price } = last
      return {
        ...priceDifference(then, now),
        from: { number, revision, date, sentAt, price },
        price: now.totals.priceWithTax,
        countedOtherwise: cents(then.totals.priceWithTax - price),
      }
    },
    changeOf: async (jobId, revision) => {
      const [before, after] = [store.quotes.read(jobId, revision - 1), store.quotes.read(jobId, revision)]
      if (before === null || after === null) return null
      return difference(before, { ...(JSON.parse(after.madeFrom) as MadeFrom), ...summaryOf(after) })
    },
  }
}

function summaryOf({ revision, date, price }: KeptQuote): QuoteChange['to'] {
  return { revision, date, price }
}

function pricesWords(before: PriceBook, now: PriceBook): string {
  return JSON.stringify(before) === JSON.stringify(now)
    ? 'Material on hand'
    : `Prices of ${now.date}, formerly of ${before.date}`
}
