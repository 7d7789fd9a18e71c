import type { Job, KeptLine, LineState, Purchase } from '../job/index.ts'
import {
  type Cents,
  cents,
  divideRounded,
  priceOf,
  type Share,
  share,
  sumCents,
  unitPrice,
} from '../units/index.ts'
import { spreadHours } from './spread-hours.ts'
import type { CostedLine, Held } from './types.ts'

type Stated = Pick<Job['costing'], 'bought' | 'worked' | 'lines' | 'finished'>

/** Where what is bought or worked beside the estimate stands. */
export const BESIDE = 'not in the estimate'

/** Greatest share that is told: beyond a hundred times the estimate the sums tell more. */
const MOST_SHARE = 1_000_000

/** Every line of the estimate with what it took, then what was bought and worked beside it. */
export function costLines(held: Held, stated: Stated): readonly CostedLine[] {
  const ids = new Set(held.lines.map(({ line }) => line))
  const states = new Map(stated.lines.map((one) => [one.line, one]))
  const bought = grouped(stated.bought, ({ line }) => ids.has(line))
  const worked = spreadHours(held.lines, stated.worked)
  const planned = held.lines.map((line) =>
    costed(line, true, {
      bought: bought.of.get(line.line) ?? [],
      worked: worked.of.get(line.line) ?? 0,
      state: states.get(line.line),
      held,
      finished: stated.finished !== '',
    }),
  )
  const beside = (line: KeptLine, took: Partial<Pick<Took, 'bought' | 'worked'>>) =>
    costed(line, false, { bought: [], worked: 0, ...took, state: undefined, held, finished: true })
  return [
    ...planned,
    ...[...bought.beside].map(([what, entries]) => beside(unplanned(what, 'material'), { bought: entries })),
    ...[...worked.beside].map(([what, hours]) => beside(unplanned(what, 'labour'), { worked: hours })),
  ]
}

/** What part of an amount another is, in 1/100 %; null where there is nothing to take a part of. */
export function shareOfAmount(difference: number, whole: number): Share | null {
  if (whole === 0) return null
  const exact = divideRounded(BigInt(difference) * 10_000n, BigInt(Math.abs(whole)))
  return share(Math.min(MOST_SHARE, Math.max(-MOST_SHARE, exact)))
}

interface Took {
  readonly bought: readonly Purchase[]
  /** worker hours in 1/1000 */
  readonly worked: number
  readonly state: LineState | undefined
  readonly held: Held
  readonly finished: boolean
}

function costed(line: KeptLine, planned: boolean, took: Took): CostedLine {
  const { state, held, worked } = took
  const estimated = priceOf(line.thousandths, line.price)
  const bought = took.bought.every(({ thousandths }) => thousandths !== null)
    ? took.bought.reduce((sum, { thousandths }) => sum + (thousandths ?? 0), 0)
    : null
  const paid = sumCents(took.bought.map(({ amount }) => amount))
  const actual = cents(paid + hoursCost(worked, held.hourly))
  const done = took.finished || state?.done === true
  const open = done ? NOTHING : openOf({ line, estimated, actual, worked, bought, paid }, held)
  const difference = cents(actual - estimated)
  return {
    line,
    planned,
    estimated,
    bought,
    worked,
    actual,
    difference,
    share: shareOfAmount(difference, estimated),
    open: open.amount,
    openQuantity: open.quantity,
    done,
    unusable: state?.unusable ?? 0,
    left: state?.left ?? 0,
  }
}

const NOTHING = { amount: cents(0), quantity: 0 }

/** Worker hours in 1/1000 at the loaded rate, rounded once. */
function hoursCost(thousandths: number, hourly: Cents): Cents {
  return priceOf(thousandths, unitPrice(hourly * 100))
}

/**
 * What is still to come: by quantity where the purchases tell theirs, by hours where a task has hours only, else what
 * the estimate holds beyond what was paid.
 */
function openOf(
  so: Pick<CostedLine, 'line' | 'estimated' | 'actual' | 'worked' | 'bought'> & { readonly paid: Cents },
  { hourly }: Held,
): typeof NOTHING {
  const { line, estimated, actual, worked, bought, paid } = so
  const isWork = line.part === 'labour'
  const quantity = isWork
    ? Math.max(0, line.hours - worked)
    : Math.max(0, line.thousandths - (bought ?? line.thousandths))
  if (worked === 0 && paid === 0 && bought === 0) return { amount: estimated, quantity }
  if (bought === null || (isWork && paid !== 0))
    return { amount: cents(Math.max(0, estimated - actual)), quantity }
  return { amount: isWork ? hoursCost(quantity, hourly) : priceOf(quantity, line.price), quantity }
}

/** Purchases by their line, and those of no line of the estimate by their words. */
function grouped(
  entries: readonly Purchase[],
  isOfLine: (entry: Purchase) => boolean,
): { readonly of: ReadonlyMap<string, Purchase[]>; readonly beside: ReadonlyMap<string, Purchase[]> } {
  const besides = entries.filter((entry) => !isOfLine(entry))
  return {
    of: Map.groupBy(entries.filter(isOfLine), ({ line }) => line),
    beside: Map.groupBy(besides, ({ line, what }) => (what.trim() === '' ? line : what.trim())),
  }
}

function unplanned(what: string, part: 'material' | 'labour'): KeptLine {
  return {
    line: `beside-${part}-${what}`,
    group: BESIDE,
    what,
    part,
    thousandths: 0,
    unit: '',
    price: unitPrice(0),
    hours: 0,
    stage: '',
    rate: '',
    count: 0,
    of: '',
    factor: 10_000,
  }
}
