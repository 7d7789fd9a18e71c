import { patternOf } from '../model/board-cost.ts'
import type { Costs } from '../model/costs.ts'
import type { Problem } from '../model/problem.ts'
import { type Boards, leftAfter, type Solution, solutionOf } from './solution.ts'

/** Steps of the search for one board's fullest filling. */
const MOST_STEPS = 3_000

/**
 * A plan for one stock length: board by board the widest piece left, with the pieces that fill the rest of the board
 * best. Close to the least number of boards where no board need have much left.
 */
export function fillBoards(problem: Problem, costs: Costs, fixed: readonly Boards[] = []): Solution | null {
  const left = leftAfter(
    problem.items.map((item) => item.demand),
    fixed,
  )
  const boards: Boards[] = [...fixed]
  for (let widest = 0; widest < left.length; ) {
    if ((left[widest] ?? 0) <= 0) {
      widest++
      continue
    }
    const counts = fullest(problem, left, widest)
    const items = [...counts.keys()].filter((item) => (counts[item] ?? 0) > 0)
    let times = Number.POSITIVE_INFINITY
    for (const item of items) times = Math.min(times, Math.floor((left[item] ?? 0) / (counts[item] ?? 1)))
    for (const item of items) left[item] = (left[item] ?? 0) - times * (counts[item] ?? 0)
    const pattern = patternOf(
      problem,
      0,
      items,
      items.map((item) => counts[item] ?? 0),
    )
    boards.push({ pattern, count: times })
  }
  return solutionOf(problem, costs, boards, [])
}

/** Copies of each item on a board that holds one of `widest`, as full as a bounded search finds it: widest pieces first. */
function fullest(problem: Problem, left: readonly number[], widest: number): number[] {
  const n = left.length
  const widths = problem.items.map((item) => item.width)
  const rest = new Float64Array(n + 1)
  for (let item = n - 1; item >= 0; item--)
    rest[item] = (rest[item + 1] as number) + (widths[item] ?? 0) * (left[item] ?? 0)
  const counts = new Array<number>(n).fill(0)
  counts[widest] = 1
  let best = [...counts]
  let least = problem.capacity - (widths[widest] ?? 0)
  let steps = 0
  const walk = (from: number, room: number): void => {
    if (room < least) {
      least = room
      best = [...counts]
    }
    for (let item = from; item < n; item++) {
      if (least === 0 || steps > MOST_STEPS) return
      if (room - (rest[item] as number) >= least) return
      const width = widths[item] ?? 1
      const have = (left[item] ?? 0) - (item === widest ? 1 : 0)
      const fit = Math.min(have, Math.floor(room / width))
      for (let count = fit; count > 0; count--) {
        steps++
        counts[item] = (counts[item] ?? 0) + count
        walk(item + 1, room - count * width)
        counts[item] = (counts[item] ?? 0) - count
        if (least === 0 || steps > MOST_STEPS) return
      }
    }
  }
  walk(widest, least)
  return best
}
