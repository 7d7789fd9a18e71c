import {
  common,
  lengthOf,
  type PlanePoint,
  type Polygon,
  partsInside,
  type Rotation,
  rotate,
  rotateBack,
  rotationBy,
  twiceArea,
  without,
} from '../geometry/index.ts'
import type { Job } from '../job/index.ts'
import type { ZoneView } from '../layout/index.ts'
import { inches, type Ticks, ticks } from '../units/index.ts'
import { courseWidths, LEAST_COURSE, slantingWidths } from './course-widths.ts'
import { type Dimensions, fieldProduct } from './dimensions.ts'
import { boundsOf, cornersOf, lengthUp } from './footprint.ts'
import type { ViewOpening } from './joist-places.ts'
import { type PlacedJoist, shapeFields } from './joists.ts'
import type { Laying } from './laying.ts'
import type { Line } from './runs.ts'
import { slantOf } from './slant.ts'
import type { DeckedZone, Member } from './types.ts'

/** A board of decking with what it may be jointed over. */
export interface Course {
  readonly member: Member
  /** its left end, along itself, from the origin of its zone's courses */
  readonly from: number
  /** joists that it crosses, from its left end */
  readonly lines: readonly Line[]
  /** what a joint adds to both of its pieces, for it is cut along the joist */
  readonly lap: Ticks
}

/** What the decking of a zone covers and lies on. */
export interface Decked {
  readonly field: readonly Polygon[]
  readonly openings: readonly ViewOpening[]
  readonly joists: readonly PlacedJoist[]
}

interface FieldOfZone {
  readonly courses: readonly Course[]
  readonly field: DeckedZone
  /** what the overhang falls short where a sliver of a course is left out */
  readonly short: Ticks
}

/**
 * The field of a zone's decking, across its joists or at an angle, numbered from the house outward. Each course is
 * what its strip covers of the field: past a rim or an end joist by the overhang on open sides, or as far as a border,
 * short of a wall by its gap, up to a seam, mitred over a hip, and on both sides of a breaker.
 */
export function frameDecking(
  job: Job,
  d: Dimensions,
  view: ZoneView,
  laying: Laying,
  { field: cover, joists, openings }: Decked,
  firstCourse: number,
): FieldOfZone {
  const { board, gap, degrees } = laying
  const rotation = rotationBy(degrees)
  const toBoards = (shape: Polygon) => shape.map((point) => rotateBack(point, rotation))
  const laid = cover.map(toBoards)
  if (laid.length === 0)
    return {
      courses: [],
      field: { zone: view.zone.id, degrees, rows: 0, cover: ticks(0), area: 0 },
      short: ticks(0),
    }
  const holes = [...openings.map(cornersOf), ...breakerStrips(view, laying)].map(toBoards)
  const bounds = boundsOf(laid.flat())
  const extent = ticks(Math.round(bounds.y1 - bounds.y0))
  const { widths, short } =
    degrees === 0
      ? courseWidths(extent, board, gap)
      : { widths: slantingWidths(extent, board, gap), short: ticks(0) }
  const isBox = degrees === 0 && holes.length === 0 && laid.length === 1 && isRectangle(laid[0] ?? [], bounds)
  const fromFoot = degrees === 0 && startsAtFoot(view)
  let laidOver = 0
  const courses = widths.flatMap((width, i): readonly Course[] => {
    const y0 = fromFoot ? bounds.y1 - laidOver - width : bounds.y0 + laidOver
    laidOver += width + gap
    const strip = cornersOf({ ...bounds, y0, y1: y0 + width })
    const parts = isBox ? [strip] : partsOf(strip, laid, holes)
    return parts.map((shape, part) =>
      courseOf({ job, d, view, laying, rotation, joists }, shape, {
        name: `${firstCourse + i}${part === 0 ? '' : letter(part)}`,
        row: i + 1,
      }),
    )
  })
  const whole = holes.length === 0 ? laid : without(laid, holes)
  const area = whole.reduce((sum, shape) => sum + twiceArea(shape) / 2, 0)
  const field = { zone: view.zone.id, degrees, rows: widths.length, cover: extent, area: Math.abs(area) }
  return { courses, field, short }
}

/** Courses go from the house outward: from where the joists end, where a zone hangs on the house there alone. */
function startsAtFoot({ edges }: ZoneView): boolean {
  const hangs = (end: 'head' | 'foot') => edges.some(({ role, board }) => role === end && board === 'ledger')
  return hangs('foot') && !hangs('head')
}

/** Breakers with the gaps on both their sides, across all of a zone. */
function breakerStrips(view: ZoneView, { breakers, board, gap }: Laying): readonly Polygon[] {
  const bounds = boundsOf(view.polygon)
  const half = board / 2 + gap
  const beyond = inches(12)
  return breakers
    .filter((at) => at > bounds.x0 && at < bounds.x1)
    .map((at) => cornersOf({ x0: at - half, x1: at + half, y0: bounds.y0 - beyond, y1: bounds.y1 + beyond }))
}

/** What lies of a strip in the field, from its left end; a part of less than an inch is left out: common practice, no source. */
export function partsOf(
  strip: Polygon,
  cover: readonly Polygon[],
  holes: readonly Polygon[],
): readonly Polygon[] {
  const covered = common([strip], cover)
  return (holes.length === 0 ? covered : without(covered, holes))
    .filter((shape) => {
      const { x0, x1, y0, y1 } = boundsOf(shape)
      return twiceArea(shape) > 0 && x1 - x0 >= inches(1) && y1 - y0 >= LEAST_COURSE
    })
    .sort((a, b) => boundsOf(a).x0 - boundsOf(b).x0 || boundsOf(a).y0 - boundsOf(b).y0)
}

/** A zone's decking as its boards lie. */
interface Laid {
  readonly job: Job
  readonly d: Dimensions
  readonly view: ZoneView
  readonly laying: Laying
  readonly rotation: Rotation
  readonly joists: readonly PlacedJoist[]
}

function courseOf(
  zone: Laid,
  shape: Polygon,
  { name, row }: { readonly name: string; readonly row: number },
): Course {
  const { job, d, view, laying, rotation, joists } = zone
  const { degrees, board } = laying
  const bounds = boundsOf(shape)
  const { x0, x1, y0, y1 } = bounds
  const { width, ends, isSquare } = slantOf(shape)
  // seen from above the boards' far edge is the one nearest the house, which is the shape's near one unless mirrored
  const isFar = view.zone.joists === 'away' ? -1 : 1
  // a straight course is as wide as its strip, however it ends
  const across = degrees === 0 ? ticks(Math.round(y1 - y0)) : (width ?? board)
  const middle = (y0 + y1) / 2
  const heights = degrees === 0 ? [] : [middle, y0, y1]
  const isNotched = degrees === 0 && !isRectangle(shape, bounds)
  const outline: Outline = {
    bounds,
    spans: heights.map((y) => ({ y, span: spanAt(shape, y) })),
    across: isNotched ? shape.map(({ x, y }) => ({ x: y, y: x })) : null,
    shape,
  }
  const crossed = joists
    .flatMap((joist) => {
      const at = crossing(zone, joist, outline)
      return at === null ? [] : [{ joist, ...at }]
    })
    .sort((a, b) => a.at - b.at)
  const toPlan = (point: PlanePoint) => view.turned(rotate(point, rotation))
  const turned = shape.map(toPlan)
  return {
    from: x0,
    lap: ticks(Math.ceil((board / 2) * Math.abs(rotation.sin / rotation.cos) - 1e-6)),
    lines: crossed.map(({ joist: { member, place }, at, grazes }, i) => ({
      id: member.id,
      label: member.mark,
      at: ticks(Math.round(at - x0)),
      end:
        (member.role === 'end joist' || place.under !== undefined) && (i === 0 || i === crossed.length - 1),
      grazes,
    })),
    member: {
      id: `decking-${name}`,
      mark: `D${name}`,
      role: 'decking',
      product: fieldProduct(job),
      length: lengthUp(x1 - x0 - CLIPPED),
      ripTo: across < board ? across : null,
      box: { ...boundsOf(turned), z0: d.joistTop, z1: d.deckTop },
      ...(degrees === 0 && isSquare ? {} : { plan: turned }),
      ...(degrees === 0 && view.zone.joists === 'away'
        ? {}
        : { line: [toPlan({ x: x0, y: middle }), toPlan({ x: x1, y: middle })] as const }),
      ...(ends === null ? {} : { ends: [isFar * ends[0] + 0, isFar * ends[1] + 0] as const }),
      lay: { part: 'field', zone: view.zone.id, row, degrees: isFar * degrees + 0, alongJoists: false },
      bearings: crossed.map(({ joist }) => joist.member.id),
      cause: {
        fields: [
          'size.width',
          'size.depth',
          'decking.size',
          'decking.overhang',
          'decking.gap',
          'decking.wallGap',
          ...patternFields(laying),
          ...shapeFields(job),
        ],
        ids: [],
        rule:
          degrees === 0
            ? 'Courses = (depth + overhang − wall gap + gap) ÷ (board + gap), rounded up; the last ripped to what is left (common practice, no source)'
            : `Boards at ${Math.abs(degrees)}° off square, one beside the other from corner to corner; each cut where the field ends, its length to the long points (common practice, no source)`,
      },
    },
  }
}

function patternFields({ degrees, border, breakers }: Laying): readonly string[] {
  return [
    ...(degrees === 0 ? [] : ['decking.angle', 'decking.leans']),
    ...(border === 0 ? [] : ['decking.border']),
    ...(breakers.length === 0 ? [] : ['decking.breakers']),
  ]
}

/** A board's shape as far as joists under it ask. */
interface Outline {
  readonly bounds: ReturnType<typeof boundsOf>
  /** of a board at an angle, on its middle line and its two long edges */
  readonly spans: readonly { readonly y: number; readonly span: readonly [number, number] }[]
  /** of a straight board that is not as wide everywhere: its shape with x and y changed about */
  readonly across: Polygon | null
  readonly shape: Polygon
}

/** Less of a board over a joist holds no end of it: common practice, no source. */
const LEAST_OVER = inches(1)

/** How much of a board lies over a joist's middle line. */
function lengthOver({ bounds: { y0, y1 }, shape }: Outline, along: (y: number) => number): number {
  const line = { from: { x: along(y0), y: y0 }, to: { x: along(y1), y: y1 } }
  return partsInside(shape, line).reduce((sum, part) => sum + lengthOf(part), 0)
}

/**
 * Where a board crosses a joist, along itself on its middle line, and whether that is past the joist's end and what it
 * ends at; null where the board does not lie on it.
 */
function crossing(
  { job, d, rotation }: Laid,
  { place, from, to }: PlacedJoist,
  outline: Outline,
): { readonly at: number; readonly grazes: boolean } | null {
  const { bounds, spans, across } = outline
  const { x0, x1, y0, y1 } = bounds
  const { cos, sin } = rotation
  // the joist's centre line is x cos − y sin = centre, as the boards lie
  const along = (y: number) => (place.centre + y * sin) / cos
  const middle = (y0 + y1) / 2
  const at = along(middle)
  // a joist added for the board's end lies half under it and half under what it ends at
  const beside = place.under === undefined ? 0 : d.joist.thickness / 2 / cos
  if (sin !== 0) {
    const reached = spans.some(
      ({ y, span: [left, right] }) => along(y) > left - beside && along(y) < right + beside,
    )
    if (!reached) return null
  } else if (at <= x0 - beside || at >= x1 + beside) return null
  const half = sin === 0 ? (y1 - y0) / 2 : (y1 - y0) / 2 / cos
  const on = rotate({ x: at, y: middle }, rotation).y
  // a course over a rim or a ledger alone is held by the boards that the joists end at
  const beyond = job.decking.overhang + d.joist.thickness
  // of two joists jointed over a beam the course lies on the one that is under its middle
  const [first, last] = place.joints
  const starts = first === null ? from - beyond < on + half : first.at <= on
  const ends = last === null ? to + beyond > on - half : last.at > on
  if (!starts || !ends) return null
  const behind = place.startsAt?.board === 'ledger' ? d.joist.thickness : 0
  const ahead = place.endsAt?.board === 'ledger' ? d.joist.thickness : 0
  const [low, high] = across === null ? [on, on] : spanAt(across, at)
  const isHung = (sin !== 0 || across !== null) && (high <= from - behind || low >= to + ahead)
  // a board round a corner may be next to nothing there
  const grazes = isHung || (sin !== 0 && lengthOver(outline, along) < LEAST_OVER)
  return { at: Math.max(x0, Math.min(x1, at)), grazes }
}

/** The least and the greatest x of a shape at a height. */
function spanAt(shape: Polygon, y: number): readonly [number, number] {
  const xs = shape.flatMap((a, i) => {
    const b = shape[(i + 1) % shape.length] ?? a
    if (Math.min(a.y, b.y) > y + NOISE || Math.max(a.y, b.y) < y - NOISE) return []
    if (Math.abs(b.y - a.y) < NOISE) return [a.x, b.x]
    return [a.x + (b.x - a.x) * Math.min(1, Math.max(0, (y - a.y) / (b.y - a.y)))]
  })
  return [Math.min(...xs), Math.max(...xs)]
}

/** Clipping leaves corners within a thousandth of a tick of a line; lengths are rounded past it. */
const NOISE = 0.01
const CLIPPED = 0.01

function isRectangle(shape: Polygon, { x0, x1, y0, y1 }: ReturnType<typeof boundsOf>): boolean {
  return shape.length === 4 && shape.every(({ x, y }) => (x === x0 || x === x1) && (y === y0 || y === y1))
}

/** 1: b, 2: c. */
function letter(part: number): string {
  return String.fromCharCode(97 + part)
}
