import {
  type CutJob,
  type FixedPiece,
  type LpEngine,
  planCuts,
  type RunGroup,
} from '../../core/cutting/index.ts'
import type { Ticks } from '../../core/units/index.ts'

/** What an order costs as people make it without a solver, in cents; null where the method does not apply. */
export interface ByHand {
  /** fewest joints; longest pieces first, each on the open board that it fits best, else on the shortest that holds it */
  readonly bestFit: number | null
  /** the same with one stock length for everything, the cheapest such length */
  readonly oneLength: number | null
  /** fewest joints, then the boards cut at the least cost, proven; null where nothing is to be jointed */
  readonly jointsFirst: number | null
}

interface Split {
  readonly lengths: readonly number[]
  readonly joints: number
}

export function byHand(job: CutJob, engine: LpEngine): ByHand {
  const endless = job.stock.filter((option) => option.supply === null && !option.offcut)
  const single = endless.flatMap((option) => filled(job, [option]) ?? [])
  return {
    bestFit: filled(job, job.stock),
    oneLength: single.length === 0 ? null : Math.min(...single),
    jointsFirst: job.runs.length === 0 ? null : cutAfterJoints(job, engine),
  }
}

function filled(job: CutJob, stock: CutJob['stock']): number | null {
  const split = splitRuns(job, Math.max(0, ...stock.map((option) => option.length - 2 * job.endTrim)))
  if (split === null) return null
  const lengths = [...job.pieces.map((piece) => piece.length), ...split.lengths].sort((a, b) => b - a)
  const rooms: number[] = []
  const left = new Map(stock.map((option) => [option.id, option.supply ?? Number.POSITIVE_INFINITY]))
  let cost = split.joints
  for (const length of lengths) {
    const width = length + job.kerf
    let at = -1
    rooms.forEach((room, board) => {
      if (room >= width && (at < 0 || room < (rooms[at] ?? 0))) at = board
    })
    if (at >= 0) {
      rooms[at] = (rooms[at] ?? 0) - width
      continue
    }
    const roomOf = (option: CutJob['stock'][number]): number =>
      option.length - (option.offcut ? 0 : 2 * job.endTrim) + job.kerf
    const [shortest] = stock
      .filter((option) => roomOf(option) >= width && (left.get(option.id) ?? 0) > 0)
      .sort((a, b) => a.length - b.length)
    if (shortest === undefined) return null
    left.set(shortest.id, (left.get(shortest.id) ?? 0) - 1)
    rooms.push(roomOf(shortest) - width)
    cost += shortest.price
  }
  return cost
}

function cutAfterJoints(job: CutJob, engine: LpEngine): number | null {
  const split = splitRuns(job, Math.max(...job.stock.map((option) => option.length - 2 * job.endTrim)))
  if (split === null) return null
  const pieces = split.lengths.map((length, k): FixedPiece => {
    return { id: `run-${k}`, mark: `R${k + 1}`, length: length as Ticks }
  })
  const planned = planCuts({ ...job, pieces: [...job.pieces, ...pieces], runs: [] }, engine)
  return planned.ok ? planned.value.cost + split.joints : null
}

/** Every member with the fewest joints that boards of `longest` and the caps allow, its longest pieces first. */
function splitRuns(job: CutJob, longest: number): Split | null {
  const lengths: number[] = []
  let joints = 0
  for (const run of job.runs) {
    const jointed = run.points.map(() => 0)
    for (const _ of run.members) {
      const way = fewestJoints(run, longest, jointed)
      if (way === null) return null
      lengths.push(...way.lengths)
      for (const point of way.points) {
        jointed[point] = (jointed[point] ?? 0) + 1
        joints += run.points[point]?.cost ?? 0
      }
    }
  }
  return { lengths, joints }
}

interface Way {
  readonly lengths: readonly number[]
  readonly points: readonly number[]
}

function fewestJoints(run: RunGroup, longest: number, jointed: readonly number[]): Way | null {
  const end = run.points.length
  const best: (Way | null)[] = Array.from({ length: end + 1 }, () => null)
  for (let to = 0; to <= end; to++) {
    const cap = run.points[to]?.cap ?? null
    if (cap !== null && (jointed[to] ?? 0) >= cap) continue
    for (let from = -1; from < to; from++) {
      const before: Way | null = from < 0 ? { lengths: [], points: [] } : (best[from] ?? null)
      const length = pieceBetween(run, from, to)
      if (before === null || length === null || length > longest) continue
      const now = best[to]
      // a later last joint means longer pieces before it
      if (
        now === null ||
        now === undefined ||
        before.points.length + (to < end ? 1 : 0) <= now.points.length
      ) {
        best[to] = {
          lengths: [...before.lengths, length],
          points: to < end ? [...before.points, to] : before.points,
        }
      }
    }
  }
  return best[end] ?? null
}

/** Length of the piece between two points, −1 the start and points.length the end; null where a rule forbids it. */
function pieceBetween(run: RunGroup, from: number, to: number): number | null {
  const left = run.points[from]
  const right = run.points[to]
  const start = left?.at ?? 0
  const end = right?.at ?? run.length
  const length = end - start + (left?.lap ?? 0) + (right?.lap ?? 0)
  if (left === undefined && right === undefined) return length
  const supports = run.supports.filter((support) => support >= start && support <= end).length
  return length < run.minPiece || supports < run.minSupports ? null : length
}
