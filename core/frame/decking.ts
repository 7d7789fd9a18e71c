import { sectionOf } from '../data/index.ts'
import { common, insetBy, type Polygon, twiceArea, without } from '../geometry/index.ts'
import type { Job } from '../job/index.ts'
import type { ZoneView } from '../layout/index.ts'
import { inches, type Ticks, ticks } from '../units/index.ts'
import { type Dimensions, productOf } from './dimensions.ts'
import { boundsOf, lengthUp } from './footprint.ts'
import type { ViewOpening } from './joist-places.ts'
import { type PlacedJoist, shapeFields } from './joists.ts'
import type { Member } from './types.ts'

/** A course narrower than this is left out: common practice, no source. */
const LEAST_COURSE = inches(1 / 4)

export interface Courses {
  /** finished width of each course, from the house outward */
  readonly widths: readonly Ticks[]
  /** what the overhang falls short where a sliver of a course is left out */
  readonly short: Ticks
}

/**
 * Courses n = ceil((cover + gap) ÷ (board + gap)). The last is ripped to what is left; under half a board, the
 * first is ripped with it and both are equal; under 1/4 in it is left out (common practice, no source).
 * @param cover what the decking has to reach over, from its first edge to its last
 */
export function courseWidths(cover: Ticks, board: Ticks, gap: Ticks): Courses {
  const count = Math.ceil((cover + gap) / (board + gap))
  const last = cover - (count - 1) * (board + gap)
  if (count === 1) return { widths: [ticks(Math.min(board, cover))], short: ticks(0) }
  const full = Array.from({ length: count - 1 }, () => board)
  if (last < LEAST_COURSE) return { widths: full, short: ticks(Math.max(0, last + gap)) }
  if (last >= board / 2) return { widths: [...full, ticks(last)], short: ticks(0) }
  // an odd tick goes to the overhang: two rips that differ by 1/32 in are not equal
  const equal = ticks(Math.floor((board + last) / 2))
  return { widths: [equal, ...full.slice(1), equal], short: ticks(0) }
}

/** A course of decking, or a part of one where the deck has a gap along it. */
export interface Course {
  readonly member: Member
  /** its left end in the view */
  readonly from: number
  readonly joists: readonly PlacedJoist[]
}

/**
 * Decking courses of a zone, across its joists, numbered from where the joists start. Each is what its strip covers of
 * the zone: past a rim or an end joist by the overhang on open sides, short of a wall by its gap, up to a seam.
 */
export function frameDecking(
  job: Job,
  d: Dimensions,
  view: ZoneView,
  joists: readonly PlacedJoist[],
  openings: readonly ViewOpening[],
  firstCourse: number,
): { readonly courses: readonly Course[]; readonly rows: number; readonly short: Ticks } {
  const { size, gap } = job.decking
  const board = sectionOf(size).depth
  const cover = coverOf(job, view)
  const bounds = boundsOf(cover)
  const { widths, short } = courseWidths(ticks(Math.round(bounds.y1 - bounds.y0)), board, gap)
  const isBox =
    openings.length === 0 && cover.length === 4 && cover.every(({ x, y }) => onBounds(bounds, x, y))
  let y = bounds.y0
  const courses = widths.flatMap((width, i): readonly Course[] => {
    const y0 = y
    y += width + gap
    const strip = [
      { x: bounds.x0, y: y0 },
      { x: bounds.x1, y: y0 },
      { x: bounds.x1, y: y0 + width },
      { x: bounds.x0, y: y0 + width },
    ]
    const parts = isBox ? [strip] : partsOf(strip, cover, openings)
    return parts.map((shape, part) =>
      courseOf(job, d, view, joists, shape, `${firstCourse + i}${part === 0 ? '' : letter(part)}`),
    )
  })
  return { courses, rows: widths.length, short }
}

/** Least extent of a part of a course that is laid: common practice, no source. */
function partsOf(strip: Polygon, cover: Polygon, openings: readonly ViewOpening[]): readonly Polygon[] {
  const holes = openings.map(({ x0, y0, x1, y1 }) => [
    { x: x0, y: y0 },
    { x: x1, y: y0 },
    { x: x1, y: y1 },
    { x: x0, y: y1 },
  ])
  const covered = common([strip], [cover])
  return (holes.length === 0 ? covered : without(covered, holes))
    .filter((shape) => {
      const { x0, x1, y0, y1 } = boundsOf(shape)
      return twiceArea(shape) > 0 && x1 - x0 >= inches(1) && y1 - y0 >= LEAST_COURSE
    })
    .sort((a, b) => boundsOf(a).x0 - boundsOf(b).x0)
}

function courseOf(
  job: Job,
  d: Dimensions,
  view: ZoneView,
  joists: readonly PlacedJoist[],
  shape: Polygon,
  name: string,
): Course {
  const { size } = job.decking
  const { x0, x1, y0, y1 } = boundsOf(shape)
  const board = sectionOf(size).depth
  const width = ticks(Math.round(y1 - y0))
  const plain = twiceArea(shape) / 2 >= (x1 - x0) * (y1 - y0) - 1
  // a course over a rim or a ledger alone is held by the boards that the joists end at
  const beyond = job.decking.overhang + d.joist.thickness
  const under = joists.filter(
    ({ place, from, to }) => place.centre > x0 && place.centre < x1 && from - beyond < y1 && to + beyond > y0,
  )
  const turned = shape.map((point) => view.turned({ x: point.x, y: point.y }))
  const middle = (y0 + y1) / 2
  return {
    from: x0,
    joists: under,
    member: {
      id: `decking-${name}`,
      mark: `D${name}`,
      role: 'decking',
      product: productOf(job, size),
      length: lengthUp(x1 - x0),
      ripTo: width < board ? width : null,
      box: { ...boundsOf(turned), z0: d.joistTop, z1: d.deckTop },
      ...(plain ? {} : { plan: turned }),
      ...(view.zone.joists === 'away'
        ? {}
        : { line: [view.turned({ x: x0, y: middle }), view.turned({ x: x1, y: middle })] as const }),
      bearings: under.map(({ member }) => member.id),
      cause: {
        fields: [
          'size.width',
          'size.depth',
          'decking.size',
          'decking.overhang',
          'decking.gap',
          'decking.wallGap',
          ...shapeFields(job),
        ],
        ids: [],
        rule: 'Courses = (depth + overhang − wall gap + gap) ÷ (board + gap), rounded up; the last ripped to what is left (common practice, no source)',
      },
    },
  }
}

/** What decking covers of a zone, in its view. */
export function coverOf(job: Job, view: ZoneView): Polygon {
  const { overhang, wallGap } = job.decking
  const widths = view.edges.map(({ edge }) =>
    edge.kind === 'wall' ? wallGap : edge.kind === 'open' ? -overhang : 0,
  )
  return insetBy(view.polygon, widths).polygon
}

function onBounds(bounds: ReturnType<typeof boundsOf>, x: number, y: number): boolean {
  return (x === bounds.x0 || x === bounds.x1) && (y === bounds.y0 || y === bounds.y1)
}

/** 1: b, 2: c. */
function letter(part: number): string {
  return String.fromCharCode(97 + part)
}
