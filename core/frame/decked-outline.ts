import {
  common,
  edgeAt,
  insetBy,
  lengthOf,
  movedLeft,
  type PlanePoint,
  type Polygon,
  partsInside,
  pointAt,
  type Segment,
  shareAt,
  turn,
  twiceArea,
  without,
} from '../geometry/index.ts'
import type { Job } from '../job/index.ts'
import type { Level, OutlineEdge } from '../layout/index.ts'
import { inches } from '../units/index.ts'

/** What decking covers of a level, and the outline's edge that each edge of it goes along; null along none. */
export interface DeckedOutline {
  readonly polygon: Polygon
  readonly edges: readonly (OutlineEdge | null)[]
  /** whether no higher level takes anything of it */
  readonly isWhole: boolean
}

/** Just outside of an edge, where another level would lie. */
const BEYOND = 4

/** Places nearer to a line than this, in ticks, lie on it: clipping rounds them. */
const NOISE = 0.05

/** Smaller rests between levels are not decked, square ticks. */
const LEAST_AREA = inches(3) ** 2

/**
 * What decking covers of a level: past its open edges by the overhang, and short of a wall or of a higher level, against
 * whose rim it ends, by their gaps.
 */
export function deckedOutlines(job: Job, level: Level, levels: readonly Level[]): readonly DeckedOutline[] {
  const { overhang, wallGap } = job.decking
  const { polygon, edgeOf } = insetBy(
    level.outline,
    level.edges.map(({ kind }) => (kind === 'wall' ? wallGap : -overhang)),
  )
  const edges = edgeOf.map((own) => (own === null ? null : (level.edges[own] ?? null)))
  const taken = takenByHigher(job, level, levels)
  if (taken.length === 0 || common([polygon], taken).length === 0) return [{ polygon, edges, isWhole: true }]
  return without([polygon], taken)
    .filter((shape) => twiceArea(shape) > 2 * LEAST_AREA)
    .map((shape) => {
      const along = shape.map((_, i) => edgeUnder(polygon, edges, edgeAt(shape, i)))
      // clipping may leave a corner on a straight edge
      const kept = shape.flatMap((corner, i) => {
        const own = along[i] ?? null
        const before = along[(i + shape.length - 1) % shape.length] ?? null
        return own === before && (own !== null || isStraightAt(shape, i)) ? [] : [{ corner, own }]
      })
      return {
        polygon: kept.map(({ corner }) => corner),
        edges: kept.map(({ own }) => own),
        isWhole: false,
      }
    })
}

/** Where levels that are higher stand, a gap round them, and along an edge beside one the overhang too. */
function takenByHigher(job: Job, level: Level, levels: readonly Level[]): readonly Polygon[] {
  const { gap } = job.decking
  const higher = levels.filter(({ deckTop }) => deckTop > level.deckTop)
  return higher.flatMap(({ outline }) => [
    insetBy(outline, Array(outline.length).fill(-gap)).polygon,
    ...level.edges.flatMap(({ kind }, i) => (kind === 'open' ? besideEdge(job, level, i, outline) : [])),
  ])
}

/** Strips over an edge where a higher level runs beside it, round a corner of the deck that both share too. */
function besideEdge(job: Job, { outline }: Level, i: number, higher: Polygon): readonly Polygon[] {
  const { overhang, gap } = job.decking
  const edge = edgeAt(outline, i)
  const length = lengthOf(edge)
  const outside = movedLeft(edge, -BEYOND)
  const far = overhang + inches(1)
  const juts = (corner: number) => {
    const { from, to } = edgeAt(outline, corner - 1)
    return turn(from, to, edgeAt(outline, corner).to) > 0
  }
  return partsInside(higher, outside).map(({ from, to }): Polygon => {
    const [a, b] = [shareAt(outside, from) * length, shareAt(outside, to) * length]
    const start = a <= overhang + gap && juts(i) ? -far : a - gap
    const end = b >= length - overhang - gap && juts(i + 1) ? length + far : b + gap
    const at = (line: Segment, along: number): PlanePoint => pointAt(line, along / length)
    const [outer, inner] = [movedLeft(edge, -far), movedLeft(edge, gap)]
    return [at(outer, start), at(outer, end), at(inner, end), at(inner, start)]
  })
}

/** Whether a shape goes straight on at a corner. */
function isStraightAt(shape: Polygon, i: number): boolean {
  const [before, after] = [edgeAt(shape, i - 1), edgeAt(shape, i)]
  return Math.abs(turn(before.from, before.to, after.to)) / lengthOf(before) < NOISE
}

/** The outline's edge on whose line a part of an edge lies, between its ends. */
function edgeUnder(
  polygon: Polygon,
  edges: readonly (OutlineEdge | null)[],
  part: Segment,
): OutlineEdge | null {
  const found = polygon.findIndex((_, i) => {
    const edge = edgeAt(polygon, i)
    const length = lengthOf(edge)
    return [part.from, part.to].every((point) => {
      const share = shareAt(edge, point)
      const off = Math.abs(turn(edge.from, edge.to, point)) / length
      return off < NOISE && share * length > -NOISE && share * length < length + NOISE
    })
  })
  return edges[found] ?? null
}

/** Numbers of the level's edges along which a higher level takes the place of a border. */
export function edgesBesideHigher(job: Job, level: Level, levels: readonly Level[]): readonly number[] {
  const free = new Set(
    deckedOutlines(job, level, levels).flatMap(({ edges }) => edges.flatMap((edge) => edge?.number ?? [])),
  )
  return level.edges.flatMap(({ kind, number }) => (kind === 'open' && !free.has(number) ? [number] : []))
}
