import { common, convexOverlap, twiceArea } from '../geometry/index.ts'
import { type Fault, furtherStairs, STAIR_BRANCHES } from '../job/index.ts'
import type { Layout } from '../layout/index.ts'
import { inches } from '../units/index.ts'
import { onFlight } from './place-flights.ts'
import type { Spot, StairPlan } from './types.ts'

/** Shapes that lie over each other by less touch: rounding, and boards' overhang. */
const SLACK = inches(1)

type Shape = readonly Spot[]

/** Stairs that stand where other stairs, or a level that they do not lead to, are. */
export function stairsInTheWay(layout: Layout, plans: readonly StairPlan[]): readonly Fault[] {
  return plans.flatMap((plan, i) => {
    const other = plans.slice(0, i).find((one) => meet(placesOf(one), placesOf(plan)))
    if (other !== undefined)
      return [
        at(
          plan,
          `they stand where the ${nameOf(other)} do`,
          'move them along their edge, or choose another edge',
        ),
      ]
    const level = levelInTheWay(layout, plan)
    if (level === null) return []
    const where = layout.levels.length > 1 ? `level ${level}` : 'the deck itself'
    return [
      at(
        plan,
        `they run into ${where}`,
        'move them along their edge, choose another edge, or let them end on a lower level by their last flight',
      ),
    ]
  })
}

/** A level that the stairs overlap; the last flight may stand on the one it comes down to. */
function levelInTheWay({ levels }: Layout, plan: StairPlan): number | null {
  const parts = flightsOf(plan).map((shape, i, all) => ({ shape, last: i === all.length - 1 }))
  const others = [...landingOf(plan), ...padOf(plan)].map((shape) => ({ shape, last: false }))
  const found = levels.find(({ number, outline }) =>
    [...parts, ...others].some(
      ({ shape, last }) =>
        !(last && number === plan.floor?.level) &&
        common([shape], [outline]).some((piece) => Math.abs(twiceArea(piece)) > 2 * SLACK * inches(12)),
    ),
  )
  return found?.number ?? null
}

function meet(a: readonly Shape[], b: readonly Shape[]): boolean {
  return a.some((one) => b.some((other) => convexOverlap(one, other, SLACK)))
}

function placesOf(plan: StairPlan): readonly Shape[] {
  return [...flightsOf(plan), ...landingOf(plan), ...padOf(plan)]
}

function flightsOf({ flights }: StairPlan): readonly Shape[] {
  return flights.map((flight) => rectangle(flight, flight.run, flight.width))
}

function landingOf({ platform }: StairPlan): readonly Shape[] {
  if (platform === null) return []
  return [rectangle({ ...platform, head: platform.corner }, platform.depth, platform.width)]
}

function padOf({ pad, flights }: StairPlan): readonly Shape[] {
  const last = flights.at(-1)
  return pad === null || last === undefined
    ? []
    : [rectangle({ ...last, head: pad.corner }, pad.depth, pad.width)]
}

function rectangle(frame: Parameters<typeof onFlight>[0], down: number, across: number): Shape {
  return [
    onFlight(frame, 0, 0),
    onFlight(frame, 0, across),
    onFlight(frame, down, across),
    onFlight(frame, down, 0),
  ]
}

function nameOf({ branch }: StairPlan): string {
  const name = STAIR_BRANCHES.find((one) => one.branch === branch)?.name ?? 'stairs'
  return branch === 'stairs' ? 'first stairs' : name.toLowerCase()
}

function at({ branch }: StairPlan, message: string, fix: string): Fault {
  return { path: furtherStairs(branch, 'stairs.align'), message, fix }
}
