import { sectionOf } from '../data/index.ts'
import {
  type Band,
  type BandEnd,
  bandAlong,
  convexOverlap,
  edgeAt,
  type PlanePoint,
  type Polygon,
  pointAt,
  type Segment,
  shareAt,
} from '../geometry/index.ts'
import type { Job } from '../job/index.ts'
import type { Level } from '../layout/index.ts'
import { inches, type Ticks, ticks } from '../units/index.ts'
import type { Course } from './decking.ts'
import { type Dimensions, productOf } from './dimensions.ts'
import { fromAbove, placedAlongEdge } from './footprint.ts'
import type { FreeStretch } from './free-edges.ts'
import { linesEvery } from './runs.ts'
import type { Member } from './types.ts'

/**
 * Fascia boards on the outside of a level's frame, flush with the joists' tops, mitred at corners where two of one height
 * meet; over a lower level ripped to what shows of the rim.
 * @param before boards along the levels' edges, decking, and fascia of the levels before it, at whose faces they end
 */
export function frameFascia(
  job: Job,
  d: Dimensions,
  level: Level,
  stretches: readonly FreeStretch[],
  first: number,
  before: readonly Member[],
): readonly Course[] {
  const { fascia } = job.decking
  if (fascia === 'none') return []
  const { thickness, depth } = sectionOf(fascia)
  const count = level.outline.length
  const shown = stretches
    .map((stretch) => ({ stretch, high: heightOver(d, stretch, depth) }))
    .filter(({ high }) => high >= LEAST_HIGH)
  return shown.map(({ stretch, high }, i): Course => {
    const meets = (other: number, end: 0 | 1) =>
      stretch.whole[end] &&
      shown.some(
        (one) =>
          one.stretch.index === (other + count) % count &&
          one.stretch.whole[end === 0 ? 1 : 0] &&
          one.high === high,
      )
    const endAt = (other: number, end: 0 | 1): BandEnd => ({ kind: meets(other, end) ? 'mitred' : 'square' })
    const band = bandAlong(
      level.outline,
      stretch.index,
      [-thickness, 0],
      [endAt(stretch.index - 1, 0), endAt(stretch.index + 1, 1)],
    )
    const levels = { z0: ticks(d.joistTop - high), z1: d.joistTop }
    const beside = before.filter(({ box }) => box.z0 < levels.z1 && levels.z0 < box.z1).map(fromAbove)
    const name = first + i
    const member: Member = {
      id: `fascia-${name}`,
      mark: `FB${name}`,
      role: 'fascia',
      product: productOf(job, fascia),
      ripTo: high < depth ? high : null,
      ...placedAlongEdge(endingBefore(shortened(band, stretch), beside), levels).placed,
      bearings: [],
      cause: {
        fields: [
          'decking.fascia',
          'size.width',
          'size.depth',
          ...(stretch.over === null ? [] : ['shape.levels']),
        ],
        ids: [],
        rule: `Length of the free stretch of edge ${stretch.number}${stretch.over === null ? '' : ` over level ${stretch.over.number}, 1/4 in off its boards`}, to the long points of its mitres (common practice, no source)`,
      },
    }
    return {
      member,
      from: 0,
      lap: ticks(0),
      lines: linesEvery(job.frame.joists.spacing, member.length, () => member),
    }
  })
}

/** Fascia keeps off a lower level's boards by this much, so that it dries: common practice, no source. */
const OFF_BOARDS = inches(0.25)

/** Narrower strips hold no pair of screws and are left out: common practice, no source. */
const LEAST_HIGH = inches(1.5)

/** How high a board stands on a stretch: all of it, or what shows over a lower level's boards. */
function heightOver({ joistTop }: Dimensions, { over }: FreeStretch, depth: Ticks): Ticks {
  return over === null ? depth : ticks(Math.min(depth, joistTop - over.deckTop - OFF_BOARDS))
}

/** A band cut off square where the stretch ends before the edge does. */
function shortened([a, b, c, d]: Band, { line, whole }: FreeStretch): Band {
  const length = Math.hypot(b.x - a.x, b.y - a.y)
  const way = { x: (b.x - a.x) / length, y: (b.y - a.y) / length }
  const out = { x: b.x - c.x, y: b.y - c.y }
  const across = out.x * way.y - out.y * way.x
  const outer = (point: PlanePoint) => ({ x: point.x + way.y * across, y: point.y - way.x * across })
  return [
    whole[0] ? a : outer(line.from),
    whole[1] ? b : outer(line.to),
    whole[1] ? c : line.to,
    whole[0] ? d : line.from,
  ]
}

/** By how much a board is cut shorter at a time, and what is left of it at least. */
const STEP = 8
const LEAST_LEFT = 64

/** A band cut shorter, at the end nearer to each in turn, until it lies in none of some others. */
function endingBefore(band: Band, others: readonly Polygon[]): Band {
  const clash = others.find((other) => convexOverlap(band, other, NOISE))
  if (clash === undefined) return band
  const [a, b] = band
  const length = Math.hypot(b.x - a.x, b.y - a.y)
  const way = { x: (b.x - a.x) / length, y: (b.y - a.y) / length }
  const off = (point: PlanePoint) => Math.min(...clash.map((_, i) => offEdge(edgeAt(clash, i), point)))
  const atStart = off(a) < off(b)
  for (let taken = STEP; taken <= length - LEAST_LEFT; taken += STEP) {
    const by = atStart ? taken : -taken
    const moved = ({ x, y }: PlanePoint) => ({ x: x + way.x * by, y: y + way.y * by })
    const [p, q, r, s] = band
    const cut: Band = atStart ? [moved(p), q, r, moved(s)] : [p, moved(q), moved(r), s]
    if (!convexOverlap(cut, clash, NOISE)) return endingBefore(cut, others)
  }
  return band
}

/** How far a point lies from an edge, its ends included. */
function offEdge(edge: Segment, point: PlanePoint): number {
  const { x, y } = pointAt(edge, Math.max(0, Math.min(1, shareAt(edge, point))))
  return Math.hypot(x - point.x, y - point.y)
}

/** Faces that touch do not lie in each other. */
const NOISE = 0.5
