import type { Ticks } from '../../units/index.ts'
import { trimOf } from '../model/board-cost.ts'
import type { Problem } from '../model/problem.ts'
import type { Board, Cut } from '../types.ts'
import type { Boards } from './solution.ts'

export interface ToCut {
  readonly id: string
  readonly mark: string
  readonly length: Ticks
}

/**
 * Lays the pieces out on boards: longest boards first, equal boards together, the longest piece at the left end.
 * A pattern may hold more of a length than is left to cut; what is too much stays in the board.
 */
export function layOut(problem: Problem, boards: readonly Boards[], pieces: readonly ToCut[]): Board[] {
  const waiting = problem.items.map(() => [] as ToCut[])
  const itemOf = new Map(problem.items.map((item, index) => [item.length, index]))
  for (const piece of pieces) waiting[itemOf.get(piece.length) ?? -1]?.push(piece)
  for (const list of waiting) list.reverse()
  const sorted = [...boards].sort(
    (a, b) =>
      (problem.stocks[b.pattern.stock]?.option.length ?? 0) -
        (problem.stocks[a.pattern.stock]?.option.length ?? 0) ||
      a.pattern.stock - b.pattern.stock ||
      comparePatterns(a.pattern.items, b.pattern.items) ||
      comparePatterns(b.pattern.counts, a.pattern.counts),
  )
  const laid: Board[] = []
  for (const { pattern, count } of sorted) {
    const option = problem.stocks[pattern.stock]?.option
    if (option === undefined) continue
    const trim = trimOf(problem, pattern.stock)
    for (let copy = 0; copy < count; copy++) {
      const cuts: Cut[] = []
      let at: number = trim
      pattern.items.forEach((item, k) => {
        for (let piece = 0; piece < (pattern.counts[k] ?? 0); piece++) {
          const next = waiting[item]?.pop()
          if (next === undefined) return
          cuts.push({
            pieceId: next.id,
            mark: next.mark,
            length: next.length,
            from: at as Ticks,
            to: (at + next.length) as Ticks,
          })
          at += next.length + problem.job.kerf
        }
      })
      if (cuts.length === 0) continue
      const offcut = Math.max(0, option.length - trim - at) as Ticks
      laid.push({ number: laid.length + 1, stockId: option.id, length: option.length, cuts, offcut })
    }
  }
  return laid
}

function comparePatterns(a: readonly number[], b: readonly number[]): number {
  for (let k = 0; k < Math.max(a.length, b.length); k++) {
    const difference = (a[k] ?? -1) - (b[k] ?? -1)
    if (difference !== 0) return difference
  }
  return 0
}
