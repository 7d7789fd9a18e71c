import type { Ticks } from '../../units/index.ts'
import { chained } from '../mitres/chain.ts'
import { asLaid } from '../mitres/shape.ts'
import { kerfAlong } from '../mitres/slants.ts'
import { trimOf } from '../model/board-cost.ts'
import type { Problem } from '../model/problem.ts'
import type { Board, Cut, Mitres } from '../types.ts'
import type { Boards } from './solution.ts'

export interface ToCut {
  readonly id: string
  readonly mark: string
  readonly length: Ticks
  readonly mitres: Mitres | undefined
}

/**
 * Lays the pieces out on boards: longest boards first, equal boards together, the longest piece at the left end.
 * A pattern may hold more of a length than is left to cut; what is too much stays in the board.
 */
export function layOut(problem: Problem, boards: readonly Boards[], pieces: readonly ToCut[]): Board[] {
  const waiting = problem.items.map(() => [] as ToCut[])
  const { job } = problem
  for (const piece of pieces) waiting[itemOf(problem, piece)]?.push(piece)
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
      const own = pattern.items.flatMap((item, k) =>
        Array.from({ length: pattern.counts[k] ?? 0 }, () => waiting[item]?.pop()).filter(
          (piece) => piece !== undefined,
        ),
      )
      if (own.length === 0) continue
      const cuts = cutsOf(own, job.kerf, trim)
      const last = cuts.at(-1)
      const sawn = kerfAlong(job.kerf, last?.mitres?.ends[1] ?? 0)
      const offcut = Math.max(0, option.length - trim - (last?.to ?? trim) - sawn) as Ticks
      laid.push({ number: laid.length + 1, stockId: option.id, length: option.length, cuts, offcut })
    }
  }
  return laid
}

function itemOf({ items, measure }: Problem, { length, mitres }: ToCut): number {
  const size = length - measure.less(length, mitres)
  const kind = measure.mix?.kinds.indexOf(measure.kindOf(length, mitres)) ?? 0
  return items.findIndex((item) => item.size === size && item.kind === kind)
}

function cutsOf(pieces: readonly ToCut[], kerf: number, start: number): Cut[] {
  return chained(pieces, kerf, start).map(({ piece, turned, from, to }) => ({
    pieceId: piece.id,
    mark: piece.mark,
    length: piece.length,
    from: from as Ticks,
    to: to as Ticks,
    ...(piece.mitres === undefined ? {} : { mitres: asLaid(piece.mitres, turned) }),
    ...(turned && piece.mitres !== undefined ? { turned } : {}),
  }))
}

function comparePatterns(a: readonly number[], b: readonly number[]): number {
  for (let k = 0; k < Math.max(a.length, b.length); k++) {
    const difference = (a[k] ?? -1) - (b[k] ?? -1)
    if (difference !== 0) return difference
  }
  return 0
}
