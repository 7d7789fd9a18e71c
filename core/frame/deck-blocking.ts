import { convexOverlap, edgeAt, heightAt, movedLeft, type Segment } from '../geometry/index.ts'
import type { Job } from '../job/index.ts'
import type { ZoneView } from '../layout/index.ts'
import { feet } from '../units/index.ts'
import { clearOf, LEAST_CLEAR } from './blocking.ts'
import { type Dimensions, productOf } from './dimensions.ts'
import { fromAbove, placedBoard } from './footprint.ts'
import type { PlacedJoist } from './joists.ts'
import { coursesAlong, gapInside, HALF_UNDER, type Laying } from './laying.ts'
import type { Cause, Member } from './types.ts'

/** Blocks between the two joists under a breaker stand no further apart: common practice, no source. */
const LADDER = feet(2)

/** A row of blocks under boards that end between joists. */
interface Row {
  /** its middle line, in the view */
  readonly line: Segment
  readonly cause: Cause
}

/**
 * Blocks under the ends of boards that end between joists: along the inner edge of a border that lies across or askew
 * to the joists, along a seam at which slanting boards end, and between the two joists under a breaker.
 * @param others blocks that stand already: where one does, or a joist that laps into the bay, none is added
 */
export function frameDeckBlocking(
  job: Job,
  d: Dimensions,
  view: ZoneView,
  laying: Laying,
  joists: readonly PlacedJoist[],
  others: readonly Member[],
  first: number,
): readonly Member[] {
  const blocks: Member[] = []
  const standing = [...others, ...joists.map(({ member }) => member)].map(fromAbove)
  const put = (between: readonly [PlacedJoist, PlacedJoist], line: Segment, cause: Cause) => {
    const block = blockOn(job, d, view, between, line, cause, first + blocks.length)
    if (block === null) return
    const shape = fromAbove(block)
    if (standing.some((other) => convexOverlap(other, shape, 0.7))) return
    standing.push(shape)
    blocks.push(block)
  }
  for (const { line, cause } of rowsOf(job, view, laying)) {
    const [x0, x1] = [Math.min(line.from.x, line.to.x), Math.max(line.from.x, line.to.x)]
    for (const between of baysOn(joists, line)) {
      const middle = (between[0].place.centre + between[1].place.centre) / 2
      if (middle > x0 && middle < x1) put(between, line, cause)
    }
  }
  for (const at of laying.breakers)
    for (const rung of ladderOf(joists, at, laying)) put(rung.between, rung.line, rung.cause)
  return blocks
}

function rowsOf(job: Job, view: ZoneView, laying: Laying): readonly Row[] {
  return view.edges.flatMap(({ edge, role, board, width }, i): readonly Row[] => {
    const line = edgeAt(view.polygon, i)
    if (role === 'side') return []
    const isLevel = line.from.y === line.to.y
    if (edge.kind === 'seam') {
      if (board !== 'none' || laying.degrees === 0) return []
      const cause = because(['decking.angle', 'shape.zones'], 'boards at an angle end at the seam')
      return [{ line: movedLeft(line, HALF_UNDER), cause }]
    }
    if (edge.kind !== 'open' || (isLevel && laying.degrees === 0)) return []
    // border boards that lie straight across the joists rest on them
    const courses = isLevel ? coursesAlong(laying, edge).slice(-1) : coursesAlong(laying, edge)
    return courses.map((course) => ({
      line: movedLeft(line, gapInside(job, laying, course, width)),
      cause: because(['decking.border', 'decking.angle', 'decking.gap'], 'boards end at the border'),
    }))
  })
}

function because(fields: readonly string[], what: string): Cause {
  return {
    fields,
    ids: [],
    rule: `Length = the bay’s clear width; it carries the decking where ${what} (common practice, no source)`,
  }
}

/** Joists side by side where a line crosses them. */
function baysOn(
  joists: readonly PlacedJoist[],
  line: Segment,
): readonly (readonly [PlacedJoist, PlacedJoist])[] {
  const there = joists
    .filter(({ place, from, to }) => {
      const y = heightAt(line, place.centre)
      return from <= y && to >= y
    })
    .sort((a, b) => a.place.centre - b.place.centre)
  return there.slice(1).flatMap((right, i) => {
    const left = there[i]
    return left === undefined ? [] : [[left, right] as const]
  })
}

function ladderOf(joists: readonly PlacedJoist[], at: number, { board, gap }: Laying) {
  const half = (board + gap) / 2
  const standing = (centre: number) =>
    joists.filter(({ place }) => place.under === 'breaker' && Math.abs(place.centre - centre) < 1)
  return standing(at - half).flatMap((left) =>
    standing(at + half).flatMap((right) => {
      const low = Math.max(clearOf(left.place)[0], clearOf(right.place)[0])
      const high = Math.min(clearOf(left.place)[1], clearOf(right.place)[1])
      const count = Math.max(0, Math.ceil((high - low) / LADDER) - 1)
      return Array.from({ length: count }, (_, i) => {
        const y = Math.round(low + ((high - low) * (i + 1)) / (count + 1))
        const line = { from: { x: left.place.centre, y }, to: { x: right.place.centre, y } }
        const cause = because(['decking.breakers'], 'a breaker lies between its two joists')
        return { between: [left, right] as const, line, cause }
      })
    }),
  )
}

/** A block between two joists on a line, its ends cut along their faces; null where the bay has no room for it. */
function blockOn(
  job: Job,
  d: Dimensions,
  view: ZoneView,
  [left, right]: readonly [PlacedJoist, PlacedJoist],
  line: Segment,
  cause: Cause,
  number: number,
): Member | null {
  const x0 = left.place.centre + d.joist.thickness / 2
  const x1 = right.place.centre - d.joist.thickness / 2
  if (x1 - x0 < LEAST_CLEAR) return null
  const slope = (line.to.y - line.from.y) / (line.to.x - line.from.x)
  const half = (d.joist.thickness / 2) * Math.hypot(1, slope)
  const [y0, y1] = [heightAt(line, x0), heightAt(line, x1)]
  const fits = (place: PlacedJoist['place'], y: number) => {
    const [low, high] = clearOf(place)
    return y - half >= low - 0.01 && y + half <= high + 0.01
  }
  if (!fits(left.place, y0) || !fits(right.place, y1)) return null
  return {
    id: `blocking-decking-${number}`,
    mark: `KD${number}`,
    role: 'blocking',
    product: productOf(job, d.joist.size),
    ripTo: null,
    ...placedBoard(
      view,
      [
        { x: x0, y: y0 - half },
        { x: x1, y: y1 - half },
        { x: x1, y: y1 + half },
        { x: x0, y: y0 + half },
      ],
      { z0: d.joistBottom, z1: d.joistTop },
    ),
    bearings: [left.member.id, right.member.id],
    cause: { ...cause, ids: [left.member.id, right.member.id] },
  }
}
