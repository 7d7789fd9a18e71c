import { onFlight, type Spot, type StairPlan } from '../../stairs/index.ts'
import { inches } from '../../units/index.ts'
import type { Primitive } from '../types.ts'
import { levelDimension, uprightDimension } from './shapes.ts'

/** From the stairs' side to the chain beside them, and from their foot to the one before it. */
const BESIDE = inches(12)
const BEFORE = inches(8)

/** The corners of the pad at the foot; none where there is none. */
export function padCorners({ pad: one, flights }: StairPlan): readonly Spot[] {
  const last = flights.at(-1)
  if (one === null || last === undefined) return []
  return cornersOf({ ...last, head: one.corner }, one.depth, one.width)
}

/** Pads on the ground with the names of their corners, counted through all stairs; none under stairs to a lower level. */
export function padSpots(stairs: readonly StairPlan[]): readonly {
  readonly plan: StairPlan
  readonly corners: readonly { readonly name: string; readonly spot: Spot }[]
}[] {
  return stairs
    .filter(({ pad, floor }) => pad !== null && floor === null)
    .map((plan, at) => ({
      plan,
      corners: padCorners(plan).map((spot, i) => ({ name: `Q${4 * at + i + 1}`, spot })),
    }))
}

/** The corners of the landing's frame; none where there is none. */
export function landingCorners({ platform }: StairPlan): readonly Spot[] {
  if (platform === null) return []
  return cornersOf({ ...platform, head: platform.corner }, platform.depth, platform.width)
}

function cornersOf(
  frame: { readonly head: Spot; readonly down: Spot; readonly across: Spot },
  depth: number,
  width: number,
): readonly Spot[] {
  return [
    onFlight(frame, 0, 0),
    onFlight(frame, 0, width),
    onFlight(frame, depth, width),
    onFlight(frame, depth, 0),
  ]
}

/** Places away from the deck's edge at which something of the stairs begins or ends, the edge first; none of an edge that slants. */
export function stairOuts(plan: StairPlan, corners: readonly Spot[]): readonly number[] {
  const { near, out } = plan.edge
  return corners.length === 0 || slants(plan)
    ? []
    : stops([0, ...corners.map(({ x, y }) => (x - near.x) * out.x + (y - near.y) * out.y)])
}

/** Landing and pad, as far as the pad lies on the way out and not at the side of a flight that turned. */
export function onTheWayOut(plan: StairPlan): readonly Spot[] {
  const { out } = plan.edge
  const last = plan.flights.at(-1)
  const turned = last === undefined || last.down.x * out.x + last.down.y * out.y < 0.5
  return [...landingCorners(plan), ...(turned ? [] : padCorners(plan))]
}

/**
 * Two chains on a plan: out from the deck's edge, beside the stairs on the side of the edge's nearer end, and along the edge
 * before the foot.
 * @param corners of what is measured
 * @param all of the stairs, which the chains keep clear of
 */
export function stairChains(
  plan: StairPlan,
  corners: readonly Spot[],
  all: readonly Spot[],
): readonly Primitive[] {
  const outs = stairOuts(plan, corners)
  if (outs.length === 0) return []
  const { near, out, along, length } = plan.edge
  const alongOf = ({ x, y }: Spot) => (x - near.x) * along.x + (y - near.y) * along.y
  const outOf = ({ x, y }: Spot) => (x - near.x) * out.x + (y - near.y) * out.y
  const alongs = stops([...corners.map(alongOf)])
  const reach = [...corners, ...all].map(alongOf)
  const [low, high] = [Math.min(...reach), Math.max(...reach)]
  const isLow = low + high < length
  const side = isLow ? low : high
  const foot = Math.max(...[...corners, ...all].map(outOf))
  const at = (o: number, a: number): Spot => ({
    x: near.x + out.x * o + along.x * a,
    y: near.y + out.y * o + along.y * a,
  })
  const dimension = (id: string, from: Spot, to: Spot, way: Spot, off: number): Primitive =>
    Math.abs(way.x) > 0.5
      ? uprightDimension(id, from.y, to.y, from.x, Math.sign(way.x) * off)
      : levelDimension(id, from.x, to.x, from.y, Math.sign(way.y) * off)
  const away = isLow ? { x: -along.x, y: -along.y } : along
  const startsAtEnd = alongs[0] !== undefined && alongs[0] > 0 ? [0, ...alongs] : alongs
  return [
    ...pairs(outs).map(([a, b], i) =>
      dimension(`stair-out-${plan.number}-${i + 1}`, at(a, side), at(b, side), away, BESIDE),
    ),
    ...pairs(startsAtEnd).map(([a, b], i) =>
      dimension(`stair-along-${plan.number}-${i + 1}`, at(foot, a), at(foot, b), out, BEFORE),
    ),
  ]
}

function slants({ edge: { out } }: StairPlan): boolean {
  return Math.abs(out.x) > 1e-6 && Math.abs(out.y) > 1e-6
}

/** In order, each once, to whole ticks. */
function stops(places: readonly number[]): readonly number[] {
  return [...new Set(places.map((place) => Math.round(place) + 0))].sort((a, b) => a - b)
}

export function pairs(places: readonly number[]): readonly (readonly [number, number])[] {
  return places.slice(1).map((to, i) => [places[i] ?? 0, to])
}
