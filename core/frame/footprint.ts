import { type Band, type PlanePoint, type Polygon, twiceArea } from '../geometry/index.ts'
import type { ZoneView } from '../layout/index.ts'
import { ceilTicks, type Ticks } from '../units/index.ts'
import type { Box, Member } from './types.ts'

/** Shorter differences are the noise of floating point, ticks. */
const NOISE = 1e-6

/** What a member says of its place: always a box, and where it is not square to the axes its shape from above. */
export type Placed = Pick<Member, 'box' | 'length' | 'plan' | 'line' | 'ends'>

/**
 * A board's place from its shape in the view: corners from its left end along the near long edge, then back along the
 * far one. Its length is that to the long points, rounded up; ends that are not square carry their angle.
 * @param upright whether it lies away from the house though its joists do too, and may be jointed
 */
export function placedBoard(
  view: Pick<ZoneView, 'turned'> & { readonly zone: Pick<ZoneView['zone'], 'joists'> },
  [a, b, c, d]: readonly [PlanePoint, PlanePoint, PlanePoint, PlanePoint],
  levels: Pick<Box, 'z0' | 'z1'>,
  upright = false,
): Placed {
  const length = Math.hypot(b.x - a.x, b.y - a.y)
  const way = { x: (b.x - a.x) / length, y: (b.y - a.y) / length }
  const along = ({ x, y }: PlanePoint) => (x - a.x) * way.x + (y - a.y) * way.y
  const reach = [a, b, c, d].map(along)
  const across = Math.hypot(...offOf(a, d, way))
  const shape = [a, b, c, d].map((point) => view.turned({ x: point.x, y: point.y }))
  const middle = (p: PlanePoint, q: PlanePoint) => view.turned({ x: (p.x + q.x) / 2, y: (p.y + q.y) / 2 })
  const box = { ...boundsOf(shape), ...levels }
  // seen from above what lies towards the house is far: the view's near edge is, but where the view is a mirror image
  const isFar = twiceArea(shape) > 0 ? -1 : 1
  const left = angleOf(isFar * (along(d) - along(a)), across)
  const right = angleOf(isFar * (along(c) - along(b)), across)
  const level = Math.abs(way.x) < NOISE || Math.abs(way.y) < NOISE
  return {
    length: lengthUp(Math.max(...reach) - Math.min(...reach)),
    box,
    ...(level && left === 0 && right === 0 ? {} : { plan: shape }),
    ...(level && !upright && view.zone.joists === 'away'
      ? {}
      : { line: [middle(a, d), middle(b, c)] as const }),
    ...(left === 0 && right === 0 ? {} : { ends: [left, right] as const }),
  }
}

function offOf(a: PlanePoint, d: PlanePoint, way: PlanePoint): readonly [number, number] {
  const along = (d.x - a.x) * way.x + (d.y - a.y) * way.y
  return [d.x - a.x - along * way.x, d.y - a.y - along * way.y]
}

/** Up to the next tick, past the noise of floating point. */
export function lengthUp(length: number): Ticks {
  return ceilTicks(length - NOISE)
}

/** Degrees off square in hundredths; positive where the far long edge ends further right. */
function angleOf(shift: number, across: number): number {
  return Math.round((Math.atan2(shift, across) * 18_000) / Math.PI) + 0
}

export function boundsOf(shape: Polygon): Pick<Box, 'x0' | 'x1' | 'y0' | 'y1'> {
  const xs = shape.map(({ x }) => x)
  const ys = shape.map(({ y }) => y)
  return { x0: Math.min(...xs), x1: Math.max(...xs), y0: Math.min(...ys), y1: Math.max(...ys) }
}

/** A member's shape from above. */
export function fromAbove({ plan, box }: Pick<Member, 'plan' | 'box'>): Polygon {
  return plan ?? cornersOf(box)
}

/** The four corners of what lies square to the house, in the order of a positive area. */
export function cornersOf({ x0, x1, y0, y1 }: Pick<Box, 'x0' | 'x1' | 'y0' | 'y1'>): Polygon {
  return [
    { x: x0, y: y0 },
    { x: x1, y: y0 },
    { x: x1, y: y1 },
    { x: x0, y: y1 },
  ]
}

/** The place of a board along an edge of a level's outline, and its corners as `fromLeft` turns them. */
export function placedAlongEdge(band: Band, levels: Pick<Box, 'z0' | 'z1'>) {
  const corners = fromLeft(band)
  const plan = { zone: { joists: 'away' as const }, turned: <P extends PlanePoint>(point: P): P => point }
  return { corners, placed: placedBoard(plan, corners, levels, isUpright(band)) }
}

/** The same corners from the left end, or that nearest the house, along the near long edge. */
function fromLeft([a, b, c, d]: Band): Band {
  const onward = isUpright([a, b, c, d]) ? b.y > a.y : b.x > a.x
  // from its own left, a board of a positive outline lies on the inner side
  return onward ? [a, b, c, d] : [c, d, a, b]
}

/** How far a direction must lean from 45° to count as running away from the house. */
const STEEPER = 1.01

/** Whether a board lies more away from the house than along it. */
function isUpright([a, b]: Band): boolean {
  return Math.abs(b.y - a.y) > STEEPER * Math.abs(b.x - a.x)
}

/** Whether two boxes share some of the plan. */
export function overlapOnPlan(a: Extent, b: Extent): boolean {
  return a.x0 < b.x1 && b.x0 < a.x1 && a.y0 < b.y1 && b.y0 < a.y1
}

type Extent = Pick<Box, 'x0' | 'x1' | 'y0' | 'y1'>
