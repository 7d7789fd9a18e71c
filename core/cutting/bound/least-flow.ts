import type { RunModel } from '../model/problem.ts'
import type { Prices } from './dual-bound.ts'

/** Cheapest way of one member through its run under the prices, in 1/scale cent; arcs go from lower to higher nodes. */
export function leastFlow(
  run: RunModel,
  arcCosts: ArrayLike<number>,
  prices: Prices,
  caps: Float64Array,
): number {
  const capPrice = capPricesByPoint(run, caps)
  const distance = new Float64Array(run.nodes).fill(Number.POSITIVE_INFINITY)
  distance[0] = 0
  run.arcs.forEach((arc, a) => {
    if (arc.most === 0) return
    const price = (prices.items[arc.item] ?? 0) + (arcCosts[a] ?? 0) * prices.scale
    const joint = arc.point < 0 ? 0 : -(capPrice[arc.point] ?? 0)
    const reach = (distance[arc.from] ?? 0) + price + joint
    if (reach < (distance[arc.to] as number)) distance[arc.to] = reach
  })
  return distance[1] ?? 0
}

/** Sum of the cap prices that a joint at each point bears. */
export function capPricesByPoint(run: RunModel, caps: Float64Array): Float64Array {
  const sum = new Float64Array(run.group.points.length)
  run.caps.forEach((cap, c) => {
    for (const point of cap.points) sum[point] = (sum[point] ?? 0) + (caps[c] ?? 0)
  })
  return sum
}
