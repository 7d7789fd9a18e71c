import type { RunGroup } from '../types.ts'

/** Places of a run in order: its start, its joint points, its end. */
function places(run: RunGroup): { at: number; lap: number; cost: number; point: number }[] {
  return [
    { at: 0, lap: 0, cost: 0, point: -1 },
    ...run.points.map((point, index) => ({ at: point.at, lap: point.lap, cost: point.cost, point: index })),
    { at: run.length, lap: 0, cost: 0, point: -1 },
  ]
}

/** Cut length of the piece between two places, or null where the run's rules or the stock forbid it. */
function pieceBetween(
  run: RunGroup,
  longest: number,
  from: { at: number; lap: number },
  to: { at: number; lap: number },
): number | null {
  const length = to.at - from.at + from.lap + to.lap
  if (length > longest) return null
  if (from.at === 0 && to.at === run.length) return length
  if (length < run.minPiece) return null
  let supports = 0
  for (const at of run.supports) if (from.at <= at && at <= to.at) supports++
  return supports < run.minSupports ? null : length
}

/** Least sum of piece prices, joint costs and tolls over all ways to make one member; in 1/scale cent. */
export function cheapestMember(
  run: RunGroup,
  longest: number,
  priceOf: (length: number, from: number, to: number) => number,
  toll: (point: number) => number,
  scale: number,
): number {
  const list = places(run)
  const last = list.length - 1
  const rounds = Math.min(run.maxJoints ?? last - 1, last - 1) + 1
  let reach: number[] = list.map((_, index) => (index === 0 ? 0 : Number.POSITIVE_INFINITY))
  let best = Number.POSITIVE_INFINITY
  for (let round = 0; round < rounds; round++) {
    const next = list.map(() => Number.POSITIVE_INFINITY)
    for (let i = 0; i < last; i++) {
      const from = list[i]
      if (from === undefined || reach[i] === Number.POSITIVE_INFINITY) continue
      for (let j = i + 1; j <= last; j++) {
        const to = list[j]
        if (to === undefined) continue
        const length = pieceBetween(run, longest, from, to)
        if (length === null) continue
        const joint = to.point < 0 ? 0 : to.cost * scale + toll(to.point)
        next[j] = Math.min(next[j] ?? 0, (reach[i] ?? 0) + priceOf(length, from.at, to.at) + joint)
      }
    }
    best = Math.min(best, next[last] ?? 0)
    reach = next
  }
  return best === Number.POSITIVE_INFINITY ? 0 : best
}

/** A piece that a run may be cut into. */
export interface PieceOfRun {
  readonly length: number
  readonly from: number
  readonly to: number
  /** most of it that one member can be made of: as many as fit its run with both laps taken off */
  readonly most: number
}

export function piecesOfRun(run: RunGroup, longest: number): PieceOfRun[] {
  const list = places(run)
  const lap = Math.max(0, ...run.points.map((point) => point.lap))
  return list.flatMap((from, i) =>
    list.slice(i + 1).flatMap((to) => {
      const length = pieceBetween(run, longest, from, to)
      if (length === null) return []
      const most = Math.max(1, Math.floor(run.length / Math.max(1, length - 2 * lap)))
      return [{ length, from: from.at, to: to.at, most }]
    }),
  )
}
