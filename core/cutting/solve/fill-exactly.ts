import { patternFrom } from '../model/board-cost.ts'
import type { Costs } from '../model/costs.ts'
import type { Problem } from '../model/problem.ts'
import { type Boards, leftAfter, type Solution, solutionOf } from './solution.ts'

/** Pieces taken in hand before the search gives up; three times as many found no more and cost a third more. */
const MOST_STEPS = 30_000
/** With more pieces left the search ends before it has begun to change its first boards. */
const MOST_PIECES = 100

/**
 * A plan for one stock length of at most so many boards beside the `fixed` ones, by trying ways to fill board after
 * board around the widest piece left, while all of them together leave no more over than that many boards can.
 * null: none was found within the steps, which proves nothing.
 */
export function fillExactly(
  problem: Problem,
  costs: Costs,
  fixed: readonly Boards[],
  most: number,
): Solution | null {
  const { capacity, items } = problem
  const widths = items.map((item) => item.width)
  const left = leftAfter(
    items.map((item) => item.demand),
    fixed,
  )
  const boardsLeft = fixed.reduce((rest, { count }) => rest - count, most)
  const open = left.map((_, item) => item).filter((item) => (left[item] ?? 0) > 0)
  const pieces = open.reduce((sum, item) => sum + (left[item] ?? 0), 0)
  const spare =
    boardsLeft * capacity - open.reduce((sum, item) => sum + (left[item] ?? 0) * (widths[item] ?? 0), 0)
  if (spare < 0 || pieces > MOST_PIECES) return null
  const boards: number[][] = []
  let steps = 0
  const nextBoard = (from: number, over: number): boolean => {
    let first = from
    while (first < open.length && (left[open[first] as number] ?? 0) === 0) first++
    if (first === open.length) return true
    const item = open[first] as number
    const parts = [item]
    left[item] = (left[item] as number) - 1
    boards.push(parts)
    if (fill(first, capacity - (widths[item] as number), over, parts, first)) return true
    boards.pop()
    left[item] = (left[item] as number) + 1
    return false
  }
  /** Goes on with the board in hand from the `at`th open length on. */
  const fill = (at: number, room: number, over: number, parts: number[], widest: number): boolean => {
    for (let k = at; k < open.length; k++) {
      if (steps > MOST_STEPS) return false
      const item = open[k] as number
      const width = widths[item] as number
      if ((left[item] as number) === 0 || width > room) continue
      steps++
      left[item] = (left[item] as number) - 1
      parts.push(item)
      if (fill(k, room - width, over, parts, widest)) return true
      parts.pop()
      left[item] = (left[item] as number) + 1
    }
    return room <= over && nextBoard(widest, over - room)
  }
  if (!nextBoard(0, spare)) return null
  const made = boards.map((parts) => ({ pattern: patternFrom(problem, parts), count: 1 }))
  return solutionOf(problem, costs, [...fixed, ...made], [])
}
