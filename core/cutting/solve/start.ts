import { mayFit } from '../mitres/may-fit.ts'
import { patternOf } from '../model/board-cost.ts'
import type { Costs } from '../model/costs.ts'
import { costIn } from '../model/costs.ts'
import type { Pattern, Problem, RunModel } from '../model/problem.ts'
import { type Boards, demandOf, type Solution, solutionOf } from './solution.ts'

/** Cents per unit of width on the stock that gives it cheapest. */
export function bestRate(problem: Problem): number {
  let rate = Number.POSITIVE_INFINITY
  for (const stock of problem.stocks) {
    if (stock.supply === Number.POSITIVE_INFINITY)
      rate = Math.min(rate, (stock.base || stock.option.price) / stock.capacity)
  }
  if (rate !== Number.POSITIVE_INFINITY) return rate
  for (const stock of problem.stocks)
    rate = Math.min(rate, (stock.base || stock.option.price) / stock.capacity)
  return rate
}

/** Cents no plan costs: what costs so much is done only where there is no other way. */
const FORBIDDEN = 1e9

/** Chooses a way through a run for each member in turn, keeping caps where it can, and apart from its neighbour's joints. */
function splitRun(run: RunModel, arcCost: (arc: number) => number): number[] {
  const flow = new Array<number>(run.arcs.length).fill(0)
  const jointed = run.caps.map(() => 0)
  let beside: ReadonlySet<number> = new Set()
  for (let member = 0; member < run.members; member++) {
    const distance = new Float64Array(run.nodes).fill(Number.POSITIVE_INFINITY)
    const via = new Int32Array(run.nodes).fill(-1)
    distance[0] = 0
    run.arcs.forEach((arc, a) => {
      if (arc.most === 0) return
      let cost = arcCost(a) + (beside.has(arc.point) ? FORBIDDEN : 0)
      run.caps.forEach((cap, c) => {
        if (cap.points.includes(arc.point) && (jointed[c] ?? 0) >= cap.cap) cost += cap.excess ?? FORBIDDEN
      })
      const reach = (distance[arc.from] ?? 0) + cost
      if (reach < (distance[arc.to] as number)) {
        distance[arc.to] = reach
        via[arc.to] = a
      }
    })
    const points = new Set<number>()
    for (let node = 1; node !== 0; ) {
      const a = via[node] ?? -1
      const arc = run.arcs[a]
      if (arc === undefined) break
      flow[a] = (flow[a] ?? 0) + 1
      run.caps.forEach((cap, c) => {
        if (cap.points.includes(arc.point)) jointed[c] = (jointed[c] ?? 0) + 1
      })
      if (arc.point >= 0) points.add(arc.point)
      node = arc.from
    }
    if (run.group.neighboursApart) beside = points
  }
  return flow
}

/** Fills boards one after another: the widest piece left on the board that then costs least per width used. */
export function pack(
  problem: Problem,
  costs: Costs,
  demand: readonly number[],
  supplies: readonly number[] = problem.stocks.map((stock) => stock.supply),
): Boards[] | null {
  const left = [...demand]
  const supply = [...supplies]
  const boards: Boards[] = []
  for (let first = 0; first < left.length; ) {
    if ((left[first] ?? 0) <= 0) {
      first++
      continue
    }
    let best: Pattern | null = null
    let bestRatio = Number.POSITIVE_INFINITY
    for (let s = 0; s < problem.stocks.length; s++) {
      if ((supply[s] ?? 0) <= 0) continue
      const pattern = firstFit(problem, s, left, first)
      if (pattern === null) continue
      const extra = problem.stocks[s]?.counts === null ? 0 : (problem.stocks[s]?.option.price ?? 0)
      const ratio = (costIn(problem, costs, pattern) + extra) / pattern.used
      if (ratio < bestRatio) {
        bestRatio = ratio
        best = pattern
      }
    }
    if (best === null) return null
    let times = supply[best.stock] ?? 0
    const chosen = best
    chosen.items.forEach((item, k) => {
      times = Math.min(times, Math.floor((left[item] ?? 0) / (chosen.counts[k] ?? 1)))
    })
    chosen.items.forEach((item, k) => {
      left[item] = (left[item] ?? 0) - times * (chosen.counts[k] ?? 0)
    })
    supply[chosen.stock] = (supply[chosen.stock] ?? 0) - times
    boards.push({ pattern: chosen, count: times })
  }
  return boards
}

function firstFit(problem: Problem, stock: number, left: readonly number[], first: number): Pattern | null {
  let room = problem.stocks[stock]?.capacity ?? 0
  const items: number[] = []
  const counts: number[] = []
  for (let i = first; i < problem.items.length; i++) {
    const width = problem.items[i]?.width ?? 1
    const most = Math.min(left[i] ?? 0, Math.floor(room / width))
    const count = mostThatFit(problem, stock, { items, counts }, i, most)
    if (count <= 0) {
      if (i === first) return null
      continue
    }
    items.push(i)
    counts.push(count)
    room -= count * width
  }
  return items.length === 0 ? null : patternOf(problem, stock, items, counts)
}

/** Copies of an item beside the others on a board: where ends share cuts, as many as still fit with what those leave. */
function mostThatFit(
  problem: Problem,
  stock: number,
  { items, counts }: Pick<Pattern, 'items' | 'counts'>,
  item: number,
  most: number,
): number {
  if (problem.measure.mix === null) return most
  const capacity = problem.stocks[stock]?.capacity ?? 0
  for (let count = most; count > 0; count--) {
    const pattern = patternOf(problem, stock, [...items, item], [...counts, count])
    if (pattern.used <= capacity && mayFit(problem, pattern)) return count
  }
  return 0
}

/** Plans by hand's methods: joints chosen first (fewest; then cheapest by the foot), boards filled after. */
export function startingPlans(problem: Problem, costs: Costs): Solution[] {
  const rate = bestRate(problem)
  const ways = problem.runs.length === 0 ? [0] : [0, 1, 2]
  return ways.flatMap((way) => {
    const flows = problem.runs.map((run, r) =>
      splitRun(run, (a) => {
        const arc = run.arcs[a]
        if (arc === undefined) return 0
        const joint = costs.arcs[r]?.[a] ?? 0
        if (way === 0) return 1e6 + joint
        const width = problem.items[arc.item]?.width ?? 0
        if (way === 1) return joint + width * rate
        return joint + cheapestAlone(problem, costs, width)
      }),
    )
    const boards = pack(problem, costs, demandOf(problem, flows))
    const solution = boards === null ? null : solutionOf(problem, costs, boards, flows)
    return solution === null ? [] : [solution]
  })
}

function cheapestAlone(problem: Problem, costs: Costs, width: number): number {
  let best = Number.POSITIVE_INFINITY
  problem.stocks.forEach((stock, s) => {
    if (stock.capacity >= width) {
      const times = Math.max(1, Math.floor(stock.capacity / width))
      best = Math.min(best, (costs.board[s] ?? 0) / times)
    }
  })
  return best
}
