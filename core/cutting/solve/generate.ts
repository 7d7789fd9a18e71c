import type { BoardTable, Spot } from '../bound/board-table.ts'
import { ceilCents, type DualBound, dualBound, scaleFor } from '../bound/dual-bound.ts'
import { KnapsackTable } from '../bound/knapsack-table.ts'
import { MixedTable } from '../bound/mixed-table.ts'
import type { LpSolution } from '../lp-port.ts'
import { patternOf } from '../model/board-cost.ts'
import { savingIn } from '../model/costs.ts'
import type { Pattern, Problem } from '../model/problem.ts'
import { countsBoardsOnly } from './boards-only.ts'
import { type Master, pricesFrom } from './master.ts'
import type { Work } from './work.ts'

/** Reduced costs above this share of the dearest board count as none. */
const TOLERANCE = 1e-9

export function tableFor(problem: Problem, limits?: readonly number[], shared?: BoardTable): BoardTable {
  const widths = problem.items.map((item) => item.width)
  const most = limits ?? problem.items.map((item) => item.limit)
  const { mix } = problem.measure
  if (mix === null) {
    const own = shared instanceof KnapsackTable ? shared : undefined
    return new KnapsackTable(widths, most, problem.capacity, own)
  }
  const kinds = problem.items.map((item) => item.kind)
  const own = shared instanceof MixedTable ? shared : undefined
  return new MixedTable(widths, kinds, most, problem.capacity, mix, own)
}

/** New patterns that the duals make worth having: for each widest item and stock type the best one. */
export function priceOut(master: Master, table: BoardTable, duals: ArrayLike<number>): Pattern[] {
  const { problem, costs, rows } = master
  const profits = new Float64Array(problem.items.length)
  for (let i = 0; i < profits.length; i++) profits[i] = Math.max(0, duals[i] ?? 0) - costs.perPiece
  const board = problem.stocks.map((_, s) => {
    const row = rows.supply[s] ?? -1
    return (costs.board[s] ?? 0) - (row >= 0 ? Math.min(0, duals[row] ?? 0) : 0)
  })
  const dearest = board.reduce((most, cost) => Math.max(most, Math.abs(cost)), 1)
  const least = dearest * TOLERANCE
  const found: { stock: number; item: number; spot: Spot; extra: number }[] = []
  const before = new Float64Array(problem.stocks.length)
  let pending = -1
  const settle = (): void => {
    if (pending < 0) return
    problem.stocks.forEach((stock, s) => {
      if (stock.supply <= 0) return
      const now = table.valueAt(stock.capacity)
      if (now > (before[s] ?? 0) && now - (board[s] ?? 0) > least) {
        found.push({ stock: s, item: pending, spot: table.spotAt(stock.capacity), extra: -1 })
      }
    })
    pending = -1
  }
  const look = (item: number): void => {
    settle()
    if ((profits[item] ?? 0) <= 0) return
    problem.stocks.forEach((stock, s) => {
      if (stock.supply <= 0) return
      before[s] = table.valueAt(stock.capacity)
      const forced = (profits[item] ?? 0) + table.valueBeside(item, stock.capacity)
      if (forced <= (before[s] ?? 0) && forced - (board[s] ?? 0) > least) {
        found.push({ stock: s, item, spot: table.spotBeside(item, stock.capacity), extra: item })
      }
    })
    pending = item
  }
  const ends = problem.stocks.map((stock) => stock.capacity)
  table.fill(profits, false, look, ends)
  settle()
  const patterns = found.map(({ stock, item, spot, extra }) => {
    const filling = table.traceSpot(extra < 0 ? item : item + 1, spot)
    if (extra >= 0) {
      filling.items.unshift(extra)
      filling.counts.unshift(1)
    }
    return patternOf(problem, stock, filling.items, filling.counts)
  })
  if (patterns.length > 0 || costs.savings === 0) return patterns
  return priceByUse(master, table, profits, board, least)
}

/** The same where a board's cost depends on how much of it is used: the best total width for each stock type. */
function priceByUse(
  master: Master,
  table: BoardTable,
  profits: Float64Array,
  board: readonly number[],
  least: number,
): Pattern[] {
  const { problem, costs } = master
  table.fill(profits, true)
  return problem.stocks.flatMap((stock, s) => {
    let best = least
    let at = -1
    for (let used = 1; used <= stock.capacity; used++) {
      const gain = table.valueAt(used) + savingIn(problem, costs, s, used) - (board[s] ?? 0)
      if (gain > best) {
        best = gain
        at = used
      }
    }
    if (at < 0) return []
    const filling = table.traceSpot(0, table.spotAt(at))
    return [patternOf(problem, s, filling.items, filling.counts)]
  })
}

/** How far above a whole number of boards a relaxation is near enough for a first dive, in boards. */
const NEAR = 0.03
/** What the engine's objective may be out by, in boards. */
const ERROR = 1e-6

export interface Relaxation {
  readonly solution: LpSolution
  readonly bound: DualBound
  /** true: no pattern is missing, so that no better bound of this kind exists */
  readonly converged: boolean
}

/**
 * Solves the master to the end, adding patterns as they become worth having; stops early once the bound meets `upper`.
 * @param known a bound proven already
 * @param near where only equal boards count: stop too once the relaxation is hardly above what the bound says, so that
 * a good plan is as likely as at the end; the bound is the same then, its prices are not the best
 */
export function generate(
  master: Master,
  table: BoardTable,
  upper: number,
  work: Work,
  known: DualBound | null = null,
  near = false,
): Relaxation {
  const { problem, costs, rows } = master
  const scale = scaleFor(upper)
  const boardsOnly = countsBoardsOnly(problem, costs)
  const price = costs.board[0] ?? 0
  let best = known
  const boundOf = (solution: LpSolution): DualBound =>
    dualBound(problem, costs, table, pricesFrom(problem, costs, rows, solution.duals, scale))
  const better = (solution: LpSolution): DualBound => {
    const bound = boundOf(solution)
    return best === null || bound.exact > best.exact ? bound : best
  }
  for (let round = 0; ; round++) {
    const solution = master.solve()
    if (solution.status !== 'optimal') {
      const nothing = { scale, items: new Float64Array(problem.items.length), caps: noCaps(problem) }
      return { solution, bound: best ?? dualBound(problem, costs, table, nothing), converged: false }
    }
    const patterns = priceOut(master, table, solution.duals)
    work.weigh(table.cells)
    const added = work.spent() ? 0 : master.add(patterns)
    work.columns += added
    if (boardsOnly && added > 0) {
      const worth = solution.objective / Math.max(1, table.valueAt(problem.capacity) / price)
      if (Math.ceil(worth - ERROR * price) > (best?.cents ?? 0)) best = better(solution)
      if (best !== null && best.cents >= upper) return { solution, bound: best, converged: false }
    }
    const enough =
      near &&
      boardsOnly &&
      best !== null &&
      solution.objective <= Math.ceil(best.cents / price - ERROR) * price + NEAR * price
        ? best
        : null
    if ((added === 0 || enough !== null) && master.ceilings) {
      master.dropCeilings()
      continue
    }
    if (added === 0) {
      const last = boundOf(solution)
      const bound = best !== null && best.cents > last.cents ? best : last
      return { solution, bound, converged: !work.spent() }
    }
    if (enough !== null) return { solution, bound: enough, converged: false }
    if (!boardsOnly && round % 8 === 7 && ceilCents(solution.objective * 1e6, 1e6) >= upper - 1) {
      best = better(solution)
      if (best.cents >= upper) return { solution, bound: best, converged: false }
    }
  }
}

function noCaps(problem: Problem): Float64Array[] {
  return problem.runs.map((run) => new Float64Array(run.caps.length))
}
