import type { Job } from '../job/index.ts'
import { type Cents, cents, shareOf, sumCents } from '../units/index.ts'
import { costLines, shareOfAmount } from './cost-lines.ts'
import type { CostedBoards, CostedLine, CostedSum, Costing, Held } from './types.ts'

/** Groups whose lines are boards. */
const BOARDS: ReadonlySet<string> = new Set(['lumber', 'decking', 'spares'])
const BOARD = 1000

/** Whether a job says that it is begun, or anything that it took. */
export function isBegun({ costing }: Job): boolean {
  const { begun, estimate, bought, worked, lines } = costing
  return begun !== '' || [estimate, bought, worked, lines].some((list) => list.length > 0)
}

/**
 * What a job took beside the estimate it is held against, line by line, by group and in all. Sums are those of the
 * lines to the cent: material, labour and other are sums of lines, the tax is the stated share of material, direct is
 * their sum.
 */
export function costJob(job: Job, held: Held): Costing {
  const lines = costLines(held, job.costing)
  const groups = [...new Set(lines.map(({ line }) => line.group))].map((group) => {
    const own = lines.filter(({ line }) => line.group === group)
    return { group, lines: own, ...sumOf(own) }
  })
  const part = (name: CostedLine['line']['part']) => sumOf(lines.filter(({ line }) => line.part === name))
  const [material, labour, other] = [part('material'), part('labour'), part('other')]
  const taxed = (amount: Cents) => shareOf(amount, job.pricing.salesTax)
  const estimatedTax = taxed(material.estimated)
  const actualTax = taxed(material.actual)
  const tax = sums(estimatedTax, actualTax, cents(taxed(material.likely) - actualTax))
  const direct = together([material, tax, labour, other])
  const worked = lines.reduce((sum, line) => sum + line.worked, 0)
  const untouched = lines.filter((line) => isUntouched(line, job))
  return {
    finished: job.costing.finished !== '',
    groups,
    material,
    tax,
    labour,
    other,
    direct,
    hours: {
      estimated: lines.reduce((sum, { line }) => sum + line.hours, 0),
      worked,
      open: lines
        .filter(({ line }) => line.part === 'labour')
        .reduce((sum, { openQuantity }) => sum + openQuantity, 0),
    },
    boards: boardsOf(lines),
    untouched: { count: untouched.length, estimated: sumCents(untouched.map(({ estimated }) => estimated)) },
    left:
      job.builder === 'owner'
        ? null
        : {
            price: held.price,
            estimated: cents(held.price - direct.estimated),
            likely: cents(held.price - direct.likely),
          },
  }
}

/** A line for which nothing is bought, worked or said to be done; a line that the job paid nothing for may be told done. */
function isUntouched({ line, planned, estimated, worked }: CostedLine, { costing }: Job): boolean {
  const isOf = (entry: { readonly line: string }) => entry.line === line.line
  const { bought, lines } = costing
  return (
    planned &&
    (estimated !== 0 || line.hours > 0) &&
    !bought.some(isOf) &&
    worked === 0 &&
    !lines.some((state) => isOf(state) && state.done)
  )
}

function sums(estimated: Cents, actual: Cents, open: Cents): CostedSum {
  const difference = cents(actual - estimated)
  return {
    estimated,
    actual,
    difference,
    share: shareOfAmount(difference, estimated),
    open,
    likely: cents(actual + open),
  }
}

function together(parts: readonly Pick<CostedSum, 'estimated' | 'actual' | 'open'>[]): CostedSum {
  return sums(
    sumCents(parts.map(({ estimated }) => estimated)),
    sumCents(parts.map(({ actual }) => actual)),
    sumCents(parts.map(({ open }) => open)),
  )
}

function sumOf(lines: readonly CostedLine[]): CostedSum {
  return together(lines)
}

/** Boards bought are whole; a purchase that tells its sum only counts none. */
function boardsOf(lines: readonly CostedLine[]): CostedBoards {
  const boards = lines.filter(({ line }) => BOARDS.has(line.group))
  const sum = (count: (line: CostedLine) => number) => boards.reduce((all, line) => all + count(line), 0)
  const bought = sum(({ bought: one }) => Math.round((one ?? 0) / BOARD))
  const unusable = sum((line) => line.unusable)
  return {
    bought,
    unusable,
    left: sum((line) => line.left),
    unusableShare: bought <= 0 ? null : shareOfAmount(unusable, bought),
  }
}
