import type { Costs } from '../model/costs.ts'
import { savingIn } from '../model/costs.ts'
import type { Problem } from '../model/problem.ts'
import type { BoardTable } from './board-table.ts'
import { leastFlow } from './least-flow.ts'

/** Whole-numbered prices: `scale` to the cent. Caps are indexed [run][cap] and are zero or less. */
export interface Prices {
  readonly scale: number
  readonly items: Float64Array
  readonly caps: readonly Float64Array[]
}

export interface DualBound {
  /** in cents, rounded up: no plan costs less */
  readonly cents: number
  /** the same before rounding, in 1/scale cent */
  readonly exact: number
  readonly prices: Prices
}

/** Prices per cent such that every sum in the bound stays an exact integer in a double. */
export function scaleFor(upper: number): number {
  const most = upper === Number.POSITIVE_INFINITY ? 1e7 : Math.max(1, upper)
  let scale = 1e9
  while (scale > 1 && scale * most > 2 ** 51) scale /= 10
  return scale
}

/** Whole cents at or above value / scale, exactly. */
export function ceilCents(value: number, scale: number): number {
  const rest = ((value % scale) + scale) % scale
  return (value - rest) / scale + (rest > 0 ? 1 : 0)
}

/** Best value of one board of each stock type under the prices, savings counted, in 1/scale cent. */
export function boardValues(problem: Problem, costs: Costs, table: BoardTable, prices: Prices): number[] {
  const profits = new Float64Array(prices.items.length)
  for (let i = 0; i < profits.length; i++) profits[i] = (prices.items[i] ?? 0) - costs.perPiece * prices.scale
  const ends = costs.savings > 0 ? undefined : problem.stocks.map((stock) => stock.capacity)
  table.fill(profits, costs.savings > 0, undefined, ends)
  return problem.stocks.map((stock, s) => {
    if (costs.savings === 0) return table.valueAt(stock.capacity)
    let best = 0
    for (let used = 1; used <= stock.capacity; used++) {
      const value = table.valueAt(used)
      if (value > Number.NEGATIVE_INFINITY)
        best = Math.max(best, value + savingIn(problem, costs, s, used) * prices.scale)
    }
    return best
  })
}

/**
 * The lower bound that whole-numbered prices prove: what the pieces are worth, plus the cheapest way through every
 * run, less what limited boards are worth above their price. Endless boards must not be worth more than they cost;
 * the prices are shrunk until that holds exactly. See README, "The bound".
 */
export function dualBound(problem: Problem, costs: Costs, table: BoardTable, start: Prices): DualBound {
  let prices = start
  for (let round = 0; round < 40; round++) {
    const values = boardValues(problem, costs, table, prices)
    let shrink = 1
    problem.stocks.forEach((stock, s) => {
      const cost = (costs.board[s] ?? 0) * prices.scale
      const value = values[s] ?? 0
      if (stock.counts === null && stock.supply === Number.POSITIVE_INFINITY && value > cost) {
        shrink = Math.min(shrink, (cost / value) * (1 - round * 1e-9))
      }
    })
    if (shrink === 1) return evaluate(problem, costs, prices, values)
    prices = { ...prices, items: prices.items.map((price) => Math.floor(price * shrink)) }
  }
  const nothing = { ...start, items: new Float64Array(start.items.length) }
  return evaluate(
    problem,
    costs,
    nothing,
    problem.stocks.map(() => 0),
  )
}

function evaluate(problem: Problem, costs: Costs, prices: Prices, values: readonly number[]): DualBound {
  const { scale } = prices
  let exact = costs.constant * scale
  problem.items.forEach((item, i) => {
    exact += item.demand * (prices.items[i] ?? 0)
  })
  problem.runs.forEach((run, r) => {
    const caps = prices.caps[r] ?? new Float64Array(run.caps.length)
    exact += run.members * leastFlow(run, costs.arcs[r] ?? [], prices, caps)
    run.caps.forEach((cap, c) => {
      exact += (caps[c] ?? 0) * cap.cap
    })
  })
  problem.stocks.forEach((stock, s) => {
    const value = values[s] ?? 0
    if (stock.counts === null) {
      if (stock.supply !== Number.POSITIVE_INFINITY) {
        exact += stock.supply * Math.min(0, (costs.board[s] ?? 0) * scale - value)
      }
      return
    }
    let least = 0
    const gain = value - (costs.board[s] ?? 0) * scale
    stock.counts.forEach((choice, c) => {
      least = Math.min(least, (costs.counts[s]?.[c] ?? 0) * scale - Math.max(0, gain) * choice.count)
    })
    exact += least
  })
  return { cents: ceilCents(exact, scale), exact, prices }
}
