import type { BoardTable } from '../bound/board-table.ts'
import type { Costs } from '../model/costs.ts'
import type { Problem } from '../model/problem.ts'
import { countsBoardsOnly } from './boards-only.ts'
import { fillBoards } from './fill-boards.ts'
import { fillExactly } from './fill-exactly.ts'
import { priceOut, tableFor } from './generate.ts'
import type { Master } from './master.ts'
import { roundPlan } from './round-plan.ts'
import { rounded } from './rounded.ts'
import type { Boards, Solution } from './solution.ts'
import type { Work } from './work.ts'

/** Rounds of new patterns after each fixing; a dive need not converge. */
const MOST_ROUNDS = 12
/** A pattern used by this much of a whole board is fixed with the first. */
const NEARLY = 0.9

/**
 * Fixes patterns and arcs one after another, nearest to whole first, with new patterns for what is left after each.
 * @param discrepancy at this step the second choice is taken; −1: nowhere. Widening it gives other dives.
 * @param enough a cost that ends the dive
 */
export function dive(
  master: Master,
  shared: BoardTable,
  below: number,
  enough: number,
  discrepancy: number,
  work: Work,
): Solution | null {
  const { problem, costs } = master
  const boardsOnly = countsBoardsOnly(problem, costs)
  const fixed = new Map<number, number>()
  let best: Solution | null = null
  let limit = below
  const better = (plan: Solution | null): void => {
    if (plan === null || plan.cost >= limit) return
    best = plan
    limit = plan.cost
  }
  try {
    for (let step = 0; !work.stopped(); step++) {
      const left = leftToCut(problem, master, fixed)
      const table = tableFor(problem, left, shared)
      let solution = master.solve()
      for (let round = 0; round < MOST_ROUNDS && solution.status === 'optimal'; round++) {
        const patterns = priceOut(master, table, solution.duals)
        const added = master.add(patterns)
        work.columns += added
        if (added === 0) break
        solution = master.solve()
      }
      work.nodes++
      if (solution.status !== 'optimal') return best
      if (Math.ceil(solution.objective + costs.constant - 1e-4) >= limit) return best
      better(roundPlan(problem, costs, master.columns, solution.x))
      if (boardsOnly) {
        const whole = wholeBoards(master, solution.x)
        better(fillBoards(problem, costs, whole))
        if (limit > enough) better(fillExactly(problem, costs, whole, boardsFor(enough, costs)))
      }
      if (limit <= enough) return best
      const chosen = choose(master, fixed, solution.x, step === discrepancy)
      if (chosen.length === 0) {
        better(rounded(problem, costs, master.columns, solution.x))
        return best
      }
      for (const { column, value } of chosen) {
        fixed.set(column, value)
        master.setBounds(column, value, master.mostOf(column))
      }
      closeTooLarge(problem, master, fixed)
    }
    return best
  } finally {
    master.freeAll()
  }
}

/** Whole boards of the relaxation: what is left is filled board by board. */
function wholeBoards({ columns }: Master, x: ArrayLike<number>): Boards[] {
  const boards: Boards[] = []
  columns.forEach((column, c) => {
    const count = Math.floor((x[c] ?? 0) + 1e-6)
    if (column.kind === 'pattern' && count > 0) boards.push({ pattern: column.pattern, count })
  })
  return boards
}

/** Boards that a plan of such a cost has, where only their number counts. */
function boardsFor(cost: number, costs: Costs): number {
  return Math.floor((cost - costs.constant) / (costs.board[0] ?? 1))
}

/** Copies of each item that a further board may hold: what the fixed boards do not cut yet. */
function leftToCut(problem: Problem, master: Master, fixed: ReadonlyMap<number, number>): number[] {
  const left = problem.items.map((item) => item.limit)
  for (const [c, value] of fixed) {
    const column = master.columns[c]
    if (column?.kind !== 'pattern') continue
    column.pattern.items.forEach((item, k) => {
      left[item] = Math.max(0, (left[item] ?? 0) - value * (column.pattern.counts[k] ?? 0))
    })
  }
  return left
}

/** Patterns that hold more of an item than is left are of no further use. */
function closeTooLarge(problem: Problem, master: Master, fixed: ReadonlyMap<number, number>): void {
  const left = leftToCut(problem, master, fixed)
  master.columns.forEach((column, c) => {
    if (column.kind !== 'pattern') return
    if (column.pattern.items.some((item, k) => (column.pattern.counts[k] ?? 0) > (left[item] ?? 0))) {
      master.setBounds(c, fixed.get(c) ?? 0, fixed.get(c) ?? 0)
    }
  })
}

/** Columns to fix now: all that are whole boards' worth or nearly, else the one nearest above a half. */
function choose(
  master: Master,
  fixed: ReadonlyMap<number, number>,
  x: ArrayLike<number>,
  second: boolean,
): { column: number; value: number }[] {
  const sure: { column: number; value: number }[] = []
  const open: { column: number; value: number; fraction: number }[] = []
  master.columns.forEach((column, c) => {
    if (column.kind !== 'pattern' && column.kind !== 'arc') return
    const value = x[c] ?? 0
    const now = fixed.get(c) ?? 0
    const floor = Math.floor(value + 1e-6)
    const fraction = value - floor
    if (floor > now) sure.push({ column: c, value: fraction > NEARLY ? floor + 1 : floor })
    else if (fraction > NEARLY) sure.push({ column: c, value: floor + 1 })
    else if (fraction > 1e-6) open.push({ column: c, value: floor + 1, fraction })
  })
  if (sure.length > 0 && !second)
    return open.length === 0 && sure.every(({ column, value }) => value <= (x[column] ?? 0) + 1e-6)
      ? []
      : sure
  open.sort((a, b) => b.fraction - a.fraction || a.column - b.column)
  const pick = open[second ? 1 : 0] ?? open[0]
  return pick === undefined ? [] : [pick]
}
