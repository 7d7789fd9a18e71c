import { excerpt, type Job, nearestName, type StatedLine, statedLines } from '../../job/index.ts'
import { printMoney } from '../../units/index.ts'
import { lineWords } from '../line-words.ts'
import { overrideWords } from '../override-words.ts'
import { GREATEST_SUM, isWithin } from '../sums.ts'
import type { IdleLine, Line, PriceBook } from '../types.ts'
import { line } from './line.ts'

/** Units of which nobody buys half a one. */
const WHOLE = new Set(['each', 'joint', 'bag'])

/**
 * The computed lines with what the job states of them by hand. A quantity or price for a line that is not there, or
 * that cannot hold it, counts nowhere and is told; it stays in the job.
 */
export function withStatedLines(
  { pricing }: Job,
  computed: readonly Line[],
  book: PriceBook,
): { readonly lines: readonly Line[]; readonly idle: readonly IdleLine[] } {
  const stated = new Map(statedLines(pricing.lines).map((one) => [one.line, one]))
  if (stated.size === 0) return { lines: computed, idle: [] }
  const idle: IdleLine[] = []
  const lines = computed.map((each) => {
    const one = stated.get(each.id)
    if (one === undefined) return each
    stated.delete(each.id)
    const wrong = cannotHold(each, one)
    if (wrong === null) return overridden(each, one)
    idle.push({
      line: each.id,
      label: each.label,
      message: `${each.label}: ${wrong.message}, so the computed line counts.`,
      fix: wrong.fix,
    })
    return each
  })
  const ids = computed.map(({ id }) => id)
  return { lines, idle: [...idle, ...[...stated.keys()].map((id) => notThere(id, ids, book))] }
}

function overridden(computed: Line, { thousandths, price }: StatedLine): Line {
  const made = {
    ...line({
      ...computed,
      thousandths: thousandths ?? computed.thousandths,
      price: price ?? computed.price,
    }),
    overridden: {
      quantity: thousandths !== null,
      price: price !== null,
      computed: { thousandths: computed.thousandths, price: computed.price, amount: computed.amount },
    },
  }
  const { fields, ids, rule } = computed.cause
  return {
    ...made,
    cause: { fields: ['pricing.lines', ...fields], ids, rule: `${overrideWords(made)}; ${rule}` },
  }
}

/** Why a line cannot be what is stated of it, and what it could be; null where it can. */
export function cannotHold(
  { unit, thousandths, price }: Pick<Line, 'unit' | 'thousandths' | 'price'>,
  stated: Pick<StatedLine, 'thousandths' | 'price'>,
): Pick<IdleLine, 'message' | 'fix'> | null {
  const quantity = stated.thousandths ?? thousandths
  if (WHOLE.has(unit) && quantity % 1000 !== 0)
    return { message: `${quantity / 1000} ${unit} cannot be had`, fix: 'State a whole number.' }
  if (isWithin(quantity, stated.price ?? price)) return null
  return {
    message: `this comes to more than ${printMoney(GREATEST_SUM)}`,
    fix: 'State a smaller quantity or price.',
  }
}

function notThere(id: string, ids: readonly string[], book: PriceBook): IdleLine {
  const label = lineWords(id, book)
  const nearest = nearestName(id, ids)
  const back = 'It counts again as soon as the line is there; take it away if it is not meant any more.'
  return {
    line: id,
    label,
    message: `A quantity or price is stated for “${excerpt(label)}”, and the price has no such line now: it is kept and counts nowhere.`,
    fix: nearest === null ? back : `${back} The line nearest by name is "${nearest}".`,
  }
}
