import type { DualBound } from '../bound/dual-bound.ts'
import { mayFit } from '../mitres/may-fit.ts'
import { patternKey, patternOf, savingOf } from '../model/board-cost.ts'
import { type Costs, costIn, savingIn } from '../model/costs.ts'
import type { Pattern, Problem } from '../model/problem.ts'
import type { Completion } from './completion.ts'
import type { IntegerQuestion } from './integer.ts'
import type { Usable } from './usable.ts'
import { waysWithin } from './ways.ts'

/**
 * Every pattern that a plan cheaper than `upper` can use: under the bound's prices its reduced cost is at most
 * upper − 1 − bound. Depth first, widest items first, cut by the table of what the rest can still earn.
 * Where boards' costs do not depend on their use, only patterns with no room for another piece are listed.
 * null: more than `most`.
 * @param completion under the bound's prices, of no fewer pieces than are usable
 * @param usable what such a plan can want of the pieces; of boards whose costs depend on their use, nothing is known
 */
export function patternsWithin(
  problem: Problem,
  costs: Costs,
  completion: Completion,
  bound: DualBound,
  upper: number,
  most: number,
  usable: Usable | null,
): Pattern[] | null {
  const { prices } = bound
  const n = problem.items.length
  const { mix } = problem.measure
  const slack = (upper - 1) * prices.scale - bound.exact
  if (slack < 0) return []
  const { profits, values, stillToEarn } = completion
  const widths = problem.items.map((item) => item.width)
  const limits = usable?.limits ?? problem.items.map((item) => item.limit)
  const narrowest = widths.findLast((_, i) => (limits[i] ?? 0) > 0) ?? 1
  const together = usable?.together ?? null
  const chosen: number[] = []
  const clashes = (item: number): boolean =>
    together !== null && chosen.some((other) => together[other * n + item] === 0)
  const kinds = mix?.kinds.length ?? 1
  const after = (state: number, item: number, count: number): number => {
    if (mix === null) return 0
    let reached = state
    const kind = problem.items[item]?.kind ?? 0
    for (let copy = 0; copy < count; copy++) reached = mix.after[reached * kinds + kind] as number
    return reached
  }
  const heldBy = (state: number): number => mix?.held[state] ?? 0
  const patterns: Pattern[] = []
  const counts = new Int32Array(n)
  const seen = new Set<string>()
  let full = false

  for (let s = 0; s < problem.stocks.length && !full; s++) {
    const stock = problem.stocks[s]
    if (stock === undefined || stock.supply <= 0) continue
    const greatest = costs.savings * greatestSaving(problem, s) * prices.scale
    const needed = Math.max(values[s] ?? 0, (costs.board[s] ?? 0) * prices.scale) - slack - greatest
    const descend = (item: number, room: number, earned: number, state: number): void => {
      if (full) return
      if (item === n || room < narrowest) {
        if (room === stock.capacity || room < heldBy(state)) return
        const saving = savingIn(problem, costs, s, stock.capacity - room) * prices.scale - greatest
        if (earned + saving < needed) return
        if (costs.savings === 0 && !maximal(room, state)) return
        emit(s)
        return
      }
      const width = widths[item] as number
      const profit = profits[item] as number
      const fit = clashes(item) ? 0 : Math.min(Math.floor(room / width), limits[item] ?? 0)
      for (let count = fit; count >= 0; count--) {
        const rest = room - count * width
        const sum = earned + count * profit
        const reached = after(state, item, count)
        if (sum + stillToEarn(item + 1, rest, reached) < needed) continue
        counts[item] = count
        if (count > 0) chosen.push(item)
        descend(item + 1, rest, sum, reached)
        if (count > 0) chosen.pop()
        counts[item] = 0
      }
    }
    const maximal = (room: number, state: number): boolean => {
      for (let i = n - 1; i >= 0; i--) {
        if ((widths[i] as number) > room) return true
        const isLeft = (counts[i] as number) < (limits[i] ?? 0)
        if (isLeft && room - (widths[i] as number) >= heldBy(after(state, i, 1)) && !clashes(i)) return false
      }
      return true
    }
    const emit = (stockIndex: number): void => {
      const items: number[] = []
      const numbers: number[] = []
      for (let i = 0; i < n; i++) {
        if ((counts[i] as number) > 0) {
          items.push(i)
          numbers.push(counts[i] as number)
        }
      }
      keep(patternOf(problem, stockIndex, items, numbers))
      if (patterns.length > most) full = true
    }
    /** Where it is too long after all, what is left of it without one piece or another. */
    const keep = (pattern: Pattern): void => {
      if (mayFit(problem, pattern)) {
        patterns.push(pattern)
        return
      }
      for (const smaller of withoutOne(problem, pattern)) {
        if (smaller.items.length === 0 || seen.has(patternKey(smaller))) continue
        seen.add(patternKey(smaller))
        const earned = smaller.items.reduce(
          (sum, item, k) => sum + (profits[item] as number) * (smaller.counts[k] as number),
          0,
        )
        if (earned >= needed) keep(smaller)
      }
    }
    descend(0, stock.capacity, 0, 0)
  }
  return full ? null : patterns
}

/** The patterns with one piece less of one of its items. */
function withoutOne(problem: Problem, { stock, items, counts }: Pattern): readonly Pattern[] {
  return items.map((_, left) => {
    const fewer = counts.map((count, k) => (k === left ? count - 1 : count))
    return patternOf(
      problem,
      stock,
      items.filter((_item, k) => (fewer[k] as number) > 0),
      fewer.filter((count) => count > 0),
    )
  })
}

function greatestSaving(problem: Problem, stock: number): number {
  let most = 0
  const capacity = problem.stocks[stock]?.capacity ?? 0
  for (let used = 1; used <= capacity; used++) most = Math.max(most, savingOf(problem, stock, used))
  return most
}

/** Of the patterns at hand and the arcs, those that a plan cheaper than `below` can use. */
export function usefulBelow(
  problem: Problem,
  costs: Costs,
  patterns: readonly Pattern[],
  bound: DualBound,
  below: number,
): Pick<IntegerQuestion, 'patterns' | 'below' | 'arcs'> {
  if (below === Number.POSITIVE_INFINITY) return { patterns, below }
  const { prices } = bound
  const slack = (below - 1) * prices.scale - bound.exact
  const kept = arcsWithin(problem, costs, bound, below)
  const reduced = (pattern: Pattern): number =>
    pattern.items.reduce(
      (left, item, k) => left - (prices.items[item] ?? 0) * (pattern.counts[k] ?? 0),
      costIn(problem, costs, pattern) * prices.scale,
    )
  return {
    patterns: patterns.filter((pattern) => reduced(pattern) <= slack),
    below,
    arcs: (run, arc) => kept[run]?.[arc] === true,
  }
}

/** Arcs that a plan cheaper than `upper` can use: those on a way whose price is near enough to the least. */
export function arcsWithin(problem: Problem, costs: Costs, bound: DualBound, upper: number): boolean[][] {
  const ways = waysWithin(problem, costs, bound, upper)
  return problem.runs.map((run, r) => run.arcs.map((_, a) => ways[r]?.has(a) === true))
}
