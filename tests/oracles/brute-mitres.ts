import type { CutJob, Mitres, RunGroup } from '../../core/cutting/index.ts'
import { staggerCost, waysOf } from './brute-cutting.ts'

/** A piece as the saw sees it: its length to the long points, and the cuts of its two ends. */
interface Slanting {
  readonly length: number
  readonly across: number
  readonly ends: readonly [number, number]
}

/**
 * Least cost of a small job with slanting cuts by trying everything: every way to joint every member, every way to share
 * the pieces out, every order on a board and every piece either way round. Two neighbours share a cut where both slant
 * alike; the saw takes kerf ÷ cos along the board. Written from the rules, not from the program. null: nothing does it.
 */
export function bruteMitredCost(job: CutJob): number | null {
  const fixed = job.pieces.map(({ length, mitres }) => slanting(length, mitres))
  let choices: { readonly pieces: Slanting[]; readonly cost: number }[] = [{ pieces: fixed, cost: 0 }]
  for (const run of job.runs) {
    const ways = membersOf(run)
    choices = choices.flatMap((before) =>
      ways.map(({ pieces, cost }) => ({ pieces: [...before.pieces, ...pieces], cost: before.cost + cost })),
    )
  }
  const known = new Map<string, number>()
  let best: number | null = null
  for (const { pieces, cost } of choices) {
    const boards = shareOut(job, pieces, known)
    if (boards !== null && (best === null || boards + cost < best)) best = boards + cost
  }
  return best
}

function slanting(length: number, mitres: Mitres | undefined): Slanting {
  return { length, across: mitres?.across ?? 0, ends: mitres?.ends ?? [0, 0] }
}

function membersOf(run: RunGroup): { pieces: Slanting[]; cost: number }[] {
  const ways = waysOf(run)
  const sets = run.members.reduce<number[][][]>(
    (rows) => rows.flatMap((row) => ways.map((way) => [...row, way])),
    [[]],
  )
  return sets.flatMap((chosen) => {
    const stagger = staggerCost(run, chosen)
    if (stagger === null) return []
    const joints = chosen.flat().reduce((sum, point) => sum + (run.points[point]?.cost ?? 0), 0)
    const pieces = chosen.flatMap((joined) => {
      const places = [
        { at: 0, lap: 0, angle: run.mitres?.ends[0] ?? 0 },
        ...joined.map((point) => ({
          at: run.points[point]?.at ?? 0,
          lap: run.points[point]?.lap ?? 0,
          angle: run.mitres?.joint ?? 0,
        })),
        { at: run.length, lap: 0, angle: run.mitres?.ends[1] ?? 0 },
      ]
      return places.slice(1).map((to, k): Slanting => {
        const from = places[k] ?? to
        const length = to.at - from.at + from.lap + to.lap
        return { length, across: run.mitres?.across ?? 0, ends: [from.angle, to.angle] }
      })
    })
    return [{ pieces, cost: stagger + joints }]
  })
}

function shareOut(job: CutJob, pieces: readonly Slanting[], known: Map<string, number>): number | null {
  const open: Slanting[][] = []
  let best: number | null = null
  const place = (k: number): void => {
    const piece = pieces[k]
    if (piece === undefined) {
      let sum = 0
      for (const board of open) {
        const price = cheapest(job, shortest(job.kerf, board, known))
        if (price === null) return
        sum += price
      }
      if (best === null || sum < best) best = sum
      return
    }
    for (const board of [...open]) {
      board.push(piece)
      place(k + 1)
      board.pop()
    }
    open.push([piece])
    place(k + 1)
    open.pop()
  }
  place(0)
  return best
}

/** All stock is endless here. */
function cheapest(job: CutJob, needed: number): number | null {
  const fitting = job.stock.filter(({ length }) => length - 2 * job.endTrim >= needed)
  return fitting.length === 0 ? null : Math.min(...fitting.map(({ price }) => price)) + job.handling
}

/** The shortest stretch of board that holds the pieces, over every order and every piece either way round. */
function shortest(kerf: number, pieces: readonly Slanting[], known: Map<string, number>): number {
  const key = pieces
    .map(({ length, across, ends }) => `${length} ${across} ${ends}`)
    .sort()
    .join(';')
  const before = known.get(key)
  if (before !== undefined) return before
  let best = Number.POSITIVE_INFINITY
  const next = (left: readonly Slanting[], last: Slanting | null, reached: number): void => {
    if (reached >= best) return
    if (left.length === 0) best = reached
    left.forEach((piece, k) => {
      const rest = left.filter((_, other) => other !== k)
      const [from, to] = piece.ends
      const turned: Slanting = { ...piece, ends: [to, from] }
      for (const one of from === to ? [piece] : [piece, turned])
        next(rest, one, reached + (last === null ? 0 : between(kerf, last, one)) + one.length)
    })
  }
  next(pieces, null, 0)
  known.set(key, best)
  return best
}

function tangent(angle: number, across: number): number {
  return Math.floor(across * Math.tan((Math.abs(angle) * Math.PI) / 18_000) + 1e-6)
}

function between(kerf: number, left: Slanting, right: Slanting): number {
  const [a, b] = [left.ends[1], right.ends[0]]
  const along = (angle: number): number => Math.ceil(kerf / Math.cos((angle * Math.PI) / 18_000) - 1e-6)
  const alike = a === b && left.across === right.across && isWhole(left) && isWhole(right)
  return Math.max(along(a), along(b)) - (alike ? tangent(a, left.across) : 0)
}

/** Both long edges of the piece are there: its two cuts do not meet within the board. */
function isWhole({ length, across, ends: [a, b] }: Slanting): boolean {
  const [left, right] = [Math.sign(a) * tangent(a, across), Math.sign(b) * tangent(b, across)]
  const near = length + Math.min(0, left) - Math.max(0, right)
  const far = length - Math.max(0, left) + Math.min(0, right)
  return near >= 2 && far >= 2
}
