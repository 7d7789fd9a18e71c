import type { DualBound } from '../bound/dual-bound.ts'
import { capPricesByPoint } from '../bound/least-flow.ts'
import type { Costs } from '../model/costs.ts'
import type { Problem } from '../model/problem.ts'

/** The ways of one member through its run that a plan cheaper than a limit can take, by the bound's prices. */
export interface Ways {
  /** some such way has this piece */
  readonly has: (arc: number) => boolean
  /** one such way has both pieces */
  readonly haveBoth: (one: number, other: number) => boolean
}

/** Ways dearer than the cheapest by no more than what a plan cheaper than `below` has above the bound; one entry a run. */
export function waysWithin(problem: Problem, costs: Costs, bound: DualBound, below: number): readonly Ways[] {
  const slack = (below - 1) * bound.prices.scale - bound.exact
  return problem.runs.map(({ arcs, nodes }, r): Ways => {
    const prices = arcPrices(problem, costs, bound, r)
    const least = Array.from({ length: nodes }, (_, start) => {
      const reached = new Float64Array(nodes).fill(Number.POSITIVE_INFINITY)
      reached[start] = 0
      arcs.forEach(({ from, to }, a) => {
        const sum = (reached[from] as number) + (prices[a] as number)
        if (sum < (reached[to] as number)) reached[to] = sum
      })
      return reached
    })
    const between = (from: number, to: number): number => least[from]?.[to] ?? Number.POSITIVE_INFINITY
    const most = between(0, 1) + slack
    const through = (...chosen: readonly number[]): boolean => {
      let at = 0
      let sum = 0
      for (const a of chosen) {
        sum += between(at, arcs[a]?.from ?? 0) + (prices[a] ?? 0)
        at = arcs[a]?.to ?? 1
      }
      return sum + between(at, 1) <= most
    }
    return {
      has: (arc) => through(arc),
      haveBoth: (one, other) => through(one, other) || through(other, one),
    }
  })
}

/** What each arc of a run costs under the prices: its piece, its joint, and what that takes of the caps. */
function arcPrices(problem: Problem, costs: Costs, { prices }: DualBound, run: number): readonly number[] {
  const model = problem.runs[run]
  if (model === undefined) return []
  const capPrice = capPricesByPoint(model, prices.caps[run] ?? new Float64Array(model.caps.length))
  return model.arcs.map(
    (arc, a) =>
      (prices.items[arc.item] ?? 0) +
      (costs.arcs[run]?.[a] ?? 0) * prices.scale -
      (arc.point < 0 ? 0 : (capPrice[arc.point] ?? 0)),
  )
}
