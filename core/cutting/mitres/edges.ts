import { type Ticks, ticks } from '../../units/index.ts'
import type { Board, Cut } from '../types.ts'
import { slantOf } from './slants.ts'

/** Where a cut's left and right end meet the near and the far edge of its board, from the board's left end. */
export interface CutEdges {
  readonly near: readonly [Ticks, Ticks]
  readonly far: readonly [Ticks, Ticks]
}

/** Both edges of a piece as it lies on its board; its long points are its ends' outermost. */
export function edgesOf({ from, to, mitres }: Pick<Cut, 'from' | 'to' | 'mitres'>): CutEdges {
  const [left, right] =
    mitres === undefined ? [0, 0] : mitres.ends.map((hundredths) => slantOf(mitres, hundredths))
  const [a, b] = [left ?? 0, right ?? 0]
  return {
    near: [ticks(from + Math.max(0, -a)), ticks(to - Math.max(0, b))],
    far: [ticks(from + Math.max(0, a)), ticks(to - Math.max(0, -b))],
  }
}

/**
 * Lines to mark on a board, each where it meets the near edge: right of every piece, and left of one that begins with a
 * cut of its own. A line at an end of the board needs no saw.
 */
export function linesOf({ cuts, length }: Pick<Board, 'cuts' | 'length'>): readonly Ticks[] {
  return cuts.flatMap((cut, k) => {
    const { near } = edgesOf(cut)
    const before = cuts[k - 1]
    const begins = (cut.mitres?.ends[0] ?? 0) !== 0 && (before === undefined || cut.from >= before.to)
    const ends = near[1] < length || (cut.mitres?.ends[1] ?? 0) !== 0
    return [...(begins ? [near[0]] : []), ...(ends ? [near[1]] : [])]
  })
}

/** Length of a board that lies in its pieces; what two of them share at a slanting cut counts once. */
export function stretchOf({ cuts }: Pick<Board, 'cuts'>): Ticks {
  let used = 0
  let reached = 0
  for (const { from, to } of cuts) {
    used += to - Math.max(from, reached)
    reached = to
  }
  return ticks(used)
}
