import { sectionOf } from '../data/index.ts'
import { edgeAt } from '../geometry/index.ts'
import { deckPartList, type Job, lengthList } from '../job/index.ts'
import type { Zone, ZoneEdge, ZoneView } from '../layout/index.ts'
import type { Ticks } from '../units/index.ts'

/** How the decking of a zone is laid, as seen along its joists. */
export interface Laying {
  /** off square to the joists; positive: boards run along the joists' way as they go right */
  readonly degrees: number
  /** middles of breaker boards, across the joists */
  readonly breakers: readonly Ticks[]
  readonly border: number
  /** numbers of the outline's edges along which a higher level stands in the place of a border */
  readonly unbordered: readonly number[]
  readonly board: Ticks
  readonly gap: Ticks
}

/** A zone of the layout with how its decking is laid. */
export interface LaidZone {
  readonly zone: Zone
  readonly view: ZoneView
  readonly laying: Laying
}

/** A line along the joists under which one is added, for boards end there. */
export interface UnderLine {
  readonly centre: number
  readonly low: number
  readonly high: number
  readonly under: 'border' | 'breaker'
}

/** As the job states it for the whole deck, or for the zone's own number. */
export function layingOf(
  job: Job,
  { zone }: Pick<ZoneView, 'zone'>,
  unbordered: readonly number[] = [],
): Laying {
  const { size, gap, border, breakers, parts } = job.decking
  const own = deckPartList(parts).find(({ part }) => zone.id === `zone-${part}`)
  const { angle, leans } =
    own === undefined || own.angle === null ? job.decking : { angle: own.angle, leans: own.leans }
  return {
    degrees: leans === 'right' || angle === 0 ? angle : -angle,
    breakers: own?.breakers ?? lengthList(breakers),
    border,
    unbordered,
    board: sectionOf(size).depth,
    gap,
  }
}

/** What the courses of a border take in from the decking's edge, their gaps included. */
export function borderReach({ border, board, gap }: Pick<Laying, 'border' | 'board' | 'gap'>): number {
  return border * (board + gap)
}

/** Half of a joist or block that is added under a gap: framing lumber is 1-1/2 in thick. */
export const HALF_UNDER = 24

/** The middle of the gap inside a course of a border, from the frame's edge inward; clear of the board along the edge. */
export function gapInside(job: Job, { board, gap }: Laying, course: number, edgeBoard: number): number {
  return Math.max(course * (board + gap) - gap / 2 - job.decking.overhang, edgeBoard + HALF_UNDER)
}

/** 1 to the number of border courses, from the outside. */
export function borderCourses({ border }: Pick<Laying, 'border'>): readonly number[] {
  return Array.from({ length: border }, (_, i) => i + 1)
}

/** The same along one edge of a zone. */
export function coursesAlong(
  { border, unbordered }: Pick<Laying, 'border' | 'unbordered'>,
  { number }: Pick<ZoneEdge, 'number'>,
): readonly number[] {
  return number !== null && unbordered.includes(number) ? [] : borderCourses({ border })
}

/**
 * Where the decking asks for joists: under the gap inside each border course that lies along them, and under both gaps
 * beside a breaker (common practice, no source).
 */
export function linesUnder(job: Job, view: ZoneView, laying: Laying): readonly UnderLine[] {
  const { thickness } = sectionOf(job.frame.joists.size)
  const beside = view.edges.flatMap(({ role, edge }, i): readonly UnderLine[] => {
    if (role !== 'side' || edge.kind !== 'open') return []
    const { from, to } = edgeAt(view.polygon, i)
    const inward = to.y > from.y ? -1 : 1
    return coursesAlong(laying, edge).map((course) => ({
      centre: from.x + inward * gapInside(job, laying, course, thickness),
      low: Math.min(from.y, to.y),
      high: Math.max(from.y, to.y),
      under: 'border',
    }))
  })
  const ys = view.polygon.map(({ y }) => y)
  const half = (laying.board + laying.gap) / 2
  const under = laying.breakers.flatMap((at): readonly UnderLine[] =>
    [-half, half].map((off) => ({
      centre: at + off,
      low: Math.min(...ys),
      high: Math.max(...ys),
      under: 'breaker',
    })),
  )
  return [...beside, ...under]
}
