import { ceilCents, type DualBound, dualBound, scaleFor } from '../bound/dual-bound.ts'
import { KnapsackTable } from '../bound/knapsack-table.ts'
import type { LpSolution } from '../lp-port.ts'
import { patternOf } from '../model/board-cost.ts'
import { savingIn } from '../model/costs.ts'
import type { Pattern, Problem } from '../model/problem.ts'
import { type Master, pricesFrom } from './master.ts'
import type { Work } from './work.ts'

/** Reduced costs above this share of the dearest board count as none. */
const TOLERANCE = 1e-9

export function tableFor(
  problem: Problem,
  limits?: readonly number[],
  shared?: KnapsackTable,
): KnapsackTable {
  return new KnapsackTable(
    problem.items.map((item) => item.width),
    limits ?? problem.items.map((item) => item.limit),
    problem.capacity,
    shared,
  )
}

/** New patterns that the duals make worth having: for each widest item and stock type the best one. */
export function priceOut(master: Master, table: KnapsackTable, duals: ArrayLike<number>): Pattern[] {
  const { problem, costs, rows } = master
  const profits = new Float64Array(problem.items.length)
  for (let i = 0; i < profits.length; i++) profits[i] = Math.max(0, duals[i] ?? 0) - costs.perPiece
  const board = problem.stocks.map((_, s) => {
    const row = rows.supply[s] ?? -1
    return (costs.board[s] ?? 0) - (row >= 0 ? Math.min(0, duals[row] ?? 0) : 0)
  })
  const dearest = board.reduce((most, cost) => Math.max(most, Math.abs(cost)), 1)
  const least = dearest * TOLERANCE
  const found: { stock: number; item: number; used: number; extra: number }[] = []
  const before = new Float64Array(problem.stocks.length)
  let pending = -1
  const settle = (): void => {
    if (pending < 0) return
    problem.stocks.forEach((stock, s) => {
      if (stock.supply <= 0) return
      const now = table.value[stock.capacity] ?? 0
      if (now > (before[s] ?? 0) && now - (board[s] ?? 0) > least) {
        found.push({ stock: s, item: pending, used: stock.capacity, extra: -1 })
      }
    })
    pending = -1
  }
  table.fill(profits, false, (item) => {
    settle()
    if ((profits[item] ?? 0) <= 0) return
    const width = problem.items[item]?.width ?? 0
    problem.stocks.forEach((stock, s) => {
      if (stock.supply <= 0) return
      before[s] = table.value[stock.capacity] ?? 0
      if (width > stock.capacity) return
      const forced = (profits[item] ?? 0) + (table.value[stock.capacity - width] ?? 0)
      if (forced <= (before[s] ?? 0) && forced - (board[s] ?? 0) > least) {
        found.push({ stock: s, item, used: stock.capacity - width, extra: item })
      }
    })
    pending = item
  })
  settle()
  const patterns = found.map(({ stock, item, used, extra }) => {
    const filling = table.trace(extra < 0 ? item : item + 1, used)
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
  table: KnapsackTable,
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
      const gain = (table.value[used] as number) + savingIn(problem, costs, s, used) - (board[s] ?? 0)
      if (gain > best) {
        best = gain
        at = used
      }
    }
    if (at < 0) return []
    const filling = table.trace(0, at)
    return [patternOf(problem, s, filling.items, filling.counts)]
  })
}

export interface Relaxation {
  readonly solution: LpSolution
  readonly bound: DualBound
  /** true: no pattern is missing, so that no better bound of this kind exists */
  readonly converged: boolean
}

/** Solves the master to the end, adding patterns as they become worth having; stops early once the bound meets `upper`. */
export function generate(master: Master, table: KnapsackTable, upper: number, work: Work): Relaxation {
  const scale = scaleFor(upper)
  let best: DualBound | null = null
  for (let round = 0; ; round++) {
    const solution = master.solve()
    if (solution.status !== 'optimal') {
      const nothing = {
        scale,
        items: new Float64Array(master.problem.items.length),
        caps: noCaps(master.problem),
      }
      return {
        solution,
        bound: best ?? dualBound(master.problem, master.costs, table, nothing),
        converged: false,
      }
    }
    const patterns = priceOut(master, table, solution.duals)
    const added = work.spent() ? 0 : master.add(patterns)
    work.columns += added
    const last = added === 0
    if (last || (round % 8 === 7 && ceilCents(solution.objective * 1e6, 1e6) >= upper - 1)) {
      const prices = pricesFrom(master.problem, master.costs, master.rows, solution.duals, scale)
      const bound = dualBound(master.problem, master.costs, table, prices)
      if (best === null || bound.exact > best.exact) best = bound
      if (last || best.cents >= upper) return { solution, bound: best, converged: last && !work.spent() }
    }
  }
}

function noCaps(problem: Problem): Float64Array[] {
  return problem.runs.map((run) => new Float64Array(run.caps.length))
}
