import type { Costs } from '../model/costs.ts'
import type { Problem } from '../model/problem.ts'
import type { BoardTable } from './board-table.ts'
import { type DualBound, dualBound, scaleFor } from './dual-bound.ts'

/** Most thresholds that are tried. */
const MOST_THRESHOLDS = 600

/**
 * The best bound from prices that need no linear program, where one endless stock length is cut: every piece is priced
 * by a dual feasible function of its width, so that no board can be worth more than it costs. Two families: by a
 * threshold, pieces too wide to lie beside one of it count as a whole board, narrower ones as nothing (Martello and
 * Toth 1990); by how many of the threshold fit beside a piece (Carlier, Clautiaux and Moukrim 2007).
 * `dualBound` checks the prices like any others.
 */
export function readyBound(problem: Problem, costs: Costs, table: BoardTable, upper: number): DualBound {
  const capacity = problem.stocks[0]?.capacity ?? 1
  const price = costs.board[0] ?? 0
  const scale = scaleFor(upper)
  let best: (width: number) => number = (width) => width / capacity
  let most = Number.NEGATIVE_INFINITY
  for (const threshold of thresholdsOf(problem, capacity)) {
    for (const share of [wholeOrNothing(capacity, threshold), besideOthers(capacity, threshold)]) {
      let sum = 0
      for (const { width, demand } of problem.items) sum += demand * share(width)
      if (sum <= most + 1e-9) continue
      most = sum
      best = share
    }
  }
  const items = Float64Array.from(problem.items, ({ width }) => Math.floor(best(width) * price * scale))
  return dualBound(problem, costs, table, { scale, items, caps: [] })
}

function wholeOrNothing(capacity: number, threshold: number): (width: number) => number {
  return (width) => (width > capacity - threshold ? 1 : width < threshold ? 0 : width / capacity)
}

function besideOthers(capacity: number, threshold: number): (width: number) => number {
  const fit = Math.floor(capacity / threshold)
  return (width) => {
    if (2 * width > capacity) return (fit - Math.floor((capacity - width) / threshold)) / fit
    return 2 * width === capacity ? 0.5 : Math.floor(width / threshold) / fit
  }
}

/** Widths at which a function changes: those of the pieces and what they leave of a board, up to half a board. */
function thresholdsOf(problem: Problem, capacity: number): number[] {
  const found = new Set<number>([1])
  for (const { width } of problem.items) {
    for (const at of [width, capacity - width, capacity - width + 1, width + 1])
      if (at >= 1 && 2 * at <= capacity) found.add(at)
  }
  const all = [...found].sort((a, b) => a - b)
  const step = Math.max(1, Math.ceil(all.length / MOST_THRESHOLDS))
  return all.filter((_, k) => k % step === 0)
}
