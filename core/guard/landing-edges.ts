import type { Level } from '../layout/index.ts'
import { type DeckEdge, onFlight, type PlacedFlight, type StairPlan, sideOf } from '../stairs/index.ts'
import { ticks } from '../units/index.ts'
import { besideHouse } from './beside-house.ts'
import type { EdgePart } from './types.ts'

/**
 * The four edges of a landing between two flights, in order round it, as one who stands on it sees them; along the house
 * they are walls.
 * @param room what a post takes
 */
export function landingEdges(plan: StairPlan, levels: readonly Level[], room: number): readonly DeckEdge[] {
  const { platform, number } = plan
  if (platform === null) return []
  const { corner, down, across, depth, width, level } = platform
  const at = (far: number, aside: number) => onFlight({ head: corner, down, across }, far, aside)
  const back = (way: { readonly x: number; readonly y: number }) => ({ x: 0 - way.x, y: 0 - way.y })
  const edge = (
    name: string,
    one: Pick<DeckEdge, 'near' | 'far' | 'length' | 'along' | 'out'>,
  ): DeckEdge => ({
    id: `landing-${number}-${name}`,
    number: 0,
    side: sideOf(one.out),
    ...one,
    wall: besideHouse(levels, plan, { from: one.near, to: one.far }, one.out, room) !== null,
    top: ticks(Math.round(level)),
  })
  return [
    edge('head', { near: at(0, 0), far: at(0, width), length: width, along: across, out: back(down) }),
    edge('far', { near: at(0, width), far: at(depth, width), length: depth, along: down, out: across }),
    edge('foot', { near: at(depth, 0), far: at(depth, width), length: width, along: across, out: down }),
    edge('near', { near: at(0, 0), far: at(depth, 0), length: depth, along: down, out: back(across) }),
  ]
}

/** Where a flight comes to a landing or leaves it: along all of an edge. */
export function flightsOff(edge: DeckEdge, { platform, flights }: StairPlan): readonly EdgePart[] {
  if (platform === null) return []
  const whole = { from: 0, to: edge.length }
  const lower = flights.at(-1)
  const comes = edge.out.x === 0 - platform.down.x && edge.out.y === 0 - platform.down.y
  return comes || (lower !== undefined && leaves(lower, edge)) ? [whole] : []
}

function leaves({ down }: PlacedFlight, { out }: DeckEdge): boolean {
  return down.x * out.x + down.y * out.y > 0.5
}
