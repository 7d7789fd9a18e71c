import type { Design } from '../../estimate-types.ts'
import type { Member } from '../../frame/index.ts'
import { groundAt } from '../../layout/index.ts'
import { onFlight, type PlacedFlight, type Spot, type StairPlan } from '../../stairs/index.ts'
import { inches, nearestSixteenth, printLength } from '../../units/index.ts'
import type { Primitive } from '../types.ts'
import { memberFromAbove, text } from './shapes.ts'
import { onTheWayOut, padCorners, stairChains } from './stair-places.ts'

/** The stairs from above: treads, stringers hidden under them, landing, pad, and an arrow with the count of risers. */
export function planStairs({ stairs, job }: Design): readonly Primitive[] {
  const isOne = stairs.flatMap(({ flights }) => flights).length === 1
  return stairs.flatMap((one) => onePlan(one, job, isOne))
}

function onePlan(stairs: StairPlan, job: Design['job'], isOne: boolean): readonly Primitive[] {
  return [
    ...pad(stairs),
    ...stairs.footings.map(
      ({ id, x, y, tube }): Primitive => ({
        kind: 'circle',
        id,
        layer: 'stairs',
        cx: x,
        cy: y,
        r: tube / 2,
        weight: 'fine',
        stroke: 'hidden',
      }),
    ),
    ...stairs.members.flatMap(ofMember),
    ...stairs.flights.flatMap((flight) => arrow(flight, isOne)),
    ...landingWords(stairs, job),
    ...stairDimensions(stairs),
  ]
}

/** Where landing and pad lie, from the deck's edge out and along it. */
export function stairDimensions(stairs: StairPlan): readonly Primitive[] {
  return stairChains(stairs, onTheWayOut(stairs), stairShapes({ stairs: [stairs] }).flat())
}

/** Depth and width of the landing between flights, and how far its boards lie over the ground under its middle. */
function landingWords({ platform, members }: StairPlan, job: Design['job']): readonly Primitive[] {
  const joist = members.find(({ role }) => role === 'landing joist')
  if (platform === null || joist === undefined) return []
  const { corner, down, across, depth, width, level } = platform
  const x = corner.x + (down.x * depth + across.x * width) / 2
  const y = corner.y + (down.y * depth + across.y * width) / 2
  const up = nearestSixteenth(level - groundAt(job, x, y))
  // clear of the upper flight's words, which stand at its foot
  const [first, second] =
    Math.abs(down.x) > Math.abs(down.y)
      ? [-inches(10), inches(10)]
      : down.y > 0
        ? [0, inches(8)]
        : [-inches(8), 0]
  return [
    text(joist.id, 'stairs', x, y + first, `landing ${printLength(depth)} × ${printLength(width)}`),
    text(joist.id, 'stairs', x, y + second, `${printLength(up)} up`),
  ]
}

function ofMember(member: Member): readonly Primitive[] {
  const seen = (stroke: 'solid' | 'hidden', fill: 'wood' | 'none') => [
    memberFromAbove(member, { layer: 'stairs', weight: 'fine', stroke, fill }),
  ]
  switch (member.role) {
    case 'tread':
    case 'landing decking':
      return seen('solid', 'wood')
    case 'stringer':
    case 'landing post':
      return seen('hidden', 'none')
    default:
      return []
  }
}

function pad(plan: StairPlan): readonly Primitive[] {
  const corners = padCorners(plan)
  return corners.map((from, i) => line('stair-pad', from, corners[(i + 1) % 4] ?? from))
}

/** What the stairs take up on the plan, board by board and the pad: corners of each. */
export function stairShapes({ stairs }: Pick<Design, 'stairs'>): readonly (readonly Spot[])[] {
  return stairs.flatMap((one) => {
    const boards = one.members.map(
      ({ plan, box }) =>
        plan ?? [
          { x: box.x0, y: box.y0 },
          { x: box.x1, y: box.y0 },
          { x: box.x1, y: box.y1 },
          { x: box.x0, y: box.y1 },
        ],
    )
    const corners = padCorners(one)
    return corners.length === 0 ? boards : [...boards, corners]
  })
}

/** From the head to the foot, with the number of risers at the foot, and the flight's own where there are several. */
function arrow(flight: PlacedFlight, isOne: boolean): readonly Primitive[] {
  const id = `stringer-${flight.number}-1`
  const middle = flight.width / 2
  const barb = inches(4)
  const tip = onFlight(flight, flight.run - inches(2), middle)
  const label = onFlight(flight, flight.run + inches(7), middle)
  return [
    line(id, onFlight(flight, inches(2), middle), tip),
    ...[-1, 1].map((side) =>
      line(id, onFlight(flight, flight.run - inches(2) - barb, middle + (side * barb) / 2), tip),
    ),
    text(id, 'stairs', label.x, label.y, `${isOne ? '' : `flight ${flight.number}, `}down ${flight.risers}`),
  ]
}

function line(id: string, from: Spot, to: Spot): Primitive {
  return {
    kind: 'line',
    id,
    layer: 'stairs',
    x1: from.x,
    y1: from.y,
    x2: to.x,
    y2: to.y,
    weight: 'fine',
    stroke: 'solid',
  }
}

/** How far stairs and their pad reach past the deck on each side, so that dimensions stand clear of them. */
export function stairReach({ stairs, job }: Pick<Design, 'stairs' | 'job'>): {
  readonly left: number
  readonly right: number
  readonly front: number
} {
  const corners = stairs.flatMap(padCorners)
  const boxes = stairs.flatMap(({ members }) => members.map(({ box }) => box))
  const xs = [...boxes.flatMap(({ x0, x1 }) => [x0, x1]), ...corners.map(({ x }) => x)]
  const ys = [...boxes.map(({ y1 }) => y1), ...corners.map(({ y }) => y)]
  return {
    left: Math.max(0, -Math.min(...xs)),
    right: Math.max(0, Math.max(...xs) - job.size.width),
    front: Math.max(0, Math.max(...ys) - job.size.depth),
  }
}
