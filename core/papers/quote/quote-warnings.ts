import { bookAge, OLD_AFTER_DAYS } from '../../pricing/index.ts'
import { printMoney } from '../../units/index.ts'
import { NO_QUOTE, type PaperSource } from '../source.ts'
import { DEPOSIT_LIMITS, depositLimit } from './deposit-limits.ts'
import { isClosed } from './scope-words.ts'
import { stageAmounts } from './stage-amounts.ts'

/** What to look at before a quote goes out: each a sentence with what to do. */
export function quoteWarnings(source: PaperSource): readonly string[] {
  const { estimate, firm, quote = NO_QUOTE } = source
  const { totals } = estimate.pricing
  if (totals.method === 'none') return []
  const open = estimate.checks.filter(({ status }) => status !== 'passes' && status !== 'near')
  return [
    ...(source.date === '' ? ['No date stands on the quote, so it says no day until which it holds.'] : []),
    ...(firm.name === '' ? ['The quote does not say who makes it: give your firm a name.'] : []),
    ...validity(source),
    ...deposit(source),
    ...estimate.pricing.idle.map(({ message, fix }) => `${message} ${fix}`),
    ...(open.length === 0
      ? []
      : [
          `${open.length} ${open.length === 1 ? 'check does' : 'checks do'} not pass by a table (${[...new Set(open.map(({ title }) => title))].join(', ')}): what is promised here may have to change.`,
        ]),
    ...(isClosed(estimate.guard, estimate.stairs.length)
      ? [
          'The guard closes every open edge, and neither stairs nor a gate are in the price: ask the customer how anyone leaves the deck.',
        ]
      : []),
    ...quote.options.flatMap(({ name, caution }) => (caution === '' ? [] : [`Option “${name}”: ${caution}`])),
  ]
}

function validity({ book, date, firm, estimate }: PaperSource): readonly string[] {
  if (book.invented) return [`The prices are invented (${book.name}): take your yard’s own before you quote.`]
  if (date === '') return []
  const age = bookAge(book.date, date)
  if (age < 0)
    return [`The prices are of ${book.date}, after the quote’s own date, ${date}: one of the two is wrong.`]
  // prices taken one by one may be older than their book
  const oldest = estimate.pricing.lines.reduce(
    (least, { source }) => (source !== undefined && source.date < least ? source.date : least),
    book.date,
  )
  const last = bookAge(oldest, date) + firm.validDays
  if (last <= OLD_AFTER_DAYS) return []
  return [
    `${oldest === book.date ? 'The prices are' : 'Some prices are'} of ${oldest}. When the quote runs out, after ${firm.validDays} days, they are ${last} days old: ask the yard until when they hold.`,
  ]
}

function deposit({ estimate, firm }: PaperSource): readonly string[] {
  const price = estimate.pricing.totals.priceWithTax
  const [first] = firm.stages
  if (first === undefined) return ['No stages of payment are stated.']
  if (firm.stages.length === 1) return []
  const amount = stageAmounts(firm.stages, price)[0] ?? price
  const limit = depositLimit(firm.state)
  if (limit === null) {
    const over = DEPOSIT_LIMITS.filter((one) => amount > one.limit(price)).map(({ name }) => name)
    return over.length === 0
      ? []
      : [
          `The first payment, ${printMoney(amount)}, is more than a deposit may be in ${over.join(', ')}. Say in which state you work; your own state’s rule decides.`,
        ]
  }
  const most = limit.limit(price)
  if (amount <= most) return []
  return [
    `The first payment, ${printMoney(amount)}, is more than ${limit.name} lets a deposit be, ${printMoney(most)}: ${limit.words}. From memory; the state’s own rule decides.`,
  ]
}
