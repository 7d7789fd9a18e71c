import type { Costs } from '../model/costs.ts'
import { costIn } from '../model/costs.ts'
import type { Pattern, Problem, RunArc } from '../model/problem.ts'

export interface Boards {
  readonly pattern: Pattern
  readonly count: number
}

/** A whole-numbered way to do the job: boards by pattern, members by arc. */
export interface Solution {
  readonly boards: readonly Boards[]
  /** per run, per arc: members whose piece it is */
  readonly flows: readonly (readonly number[])[]
  readonly cost: number
}

/** Pieces of each item that the flows ask for, fixed pieces included. */
export function demandOf(problem: Problem, flows: readonly (readonly number[])[]): number[] {
  const demand = problem.items.map((item) => item.demand)
  problem.runs.forEach((run, r) => {
    run.arcs.forEach((arc, a) => {
      demand[arc.item] = (demand[arc.item] ?? 0) + (flows[r]?.[a] ?? 0)
    })
  })
  return demand
}

/** Pieces of each item that are still wanted once these boards are cut. */
export function leftAfter(demand: readonly number[], boards: readonly Boards[]): number[] {
  const left = [...demand]
  for (const { pattern, count } of boards) {
    pattern.items.forEach((item, k) => {
      left[item] = (left[item] ?? 0) - count * (pattern.counts[k] ?? 0)
    })
  }
  return left
}

export function boardsUsed(problem: Problem, boards: readonly Boards[]): number[] {
  const used = problem.stocks.map(() => 0)
  for (const { pattern, count } of boards) used[pattern.stock] = (used[pattern.stock] ?? 0) + count
  return used
}

/** Members jointed at the points of a cap. */
export function jointedAt(problem: Problem, run: number, cap: number, flow: readonly number[]): number {
  const model = problem.runs[run]
  const points = model?.caps[cap]?.points ?? []
  let jointed = 0
  model?.arcs.forEach((arc, a) => {
    if (points.includes(arc.point)) jointed += flow[a] ?? 0
  })
  return jointed
}

/** The cheapest count choice that is enough, as an index; −1 where none is. */
export function choiceFor(problem: Problem, costs: Costs, stock: number, used: number): number {
  let best = -1
  problem.stocks[stock]?.counts?.forEach((choice, c) => {
    if (choice.count < used) return
    if (best < 0 || (costs.counts[stock]?.[c] ?? 0) < (costs.counts[stock]?.[best] ?? 0)) best = c
  })
  return best
}

/**
 * Checks that boards and flows do the job and reckons what they cost; null where a rule is broken.
 * Every plan that the search believes in passes through here in whole numbers.
 */
export function solutionOf(
  problem: Problem,
  costs: Costs,
  boards: readonly Boards[],
  flows: readonly (readonly number[])[],
): Solution | null {
  let cost = costs.constant
  const cut = problem.items.map(() => 0)
  for (const { pattern, count } of boards) {
    if (count < 0 || pattern.counts.some((pieces) => pieces < 0)) return null
    if (pattern.used > (problem.stocks[pattern.stock]?.capacity ?? 0)) return null
    cost += count * costIn(problem, costs, pattern)
    pattern.items.forEach((item, k) => {
      cut[item] = (cut[item] ?? 0) + count * (pattern.counts[k] ?? 0)
    })
  }
  if (demandOf(problem, flows).some((wanted, item) => (cut[item] ?? 0) < wanted)) return null
  const used = boardsUsed(problem, boards)
  for (let s = 0; s < problem.stocks.length; s++) {
    const stock = problem.stocks[s]
    if (stock === undefined || (used[s] ?? 0) > stock.supply) return null
    if (stock.counts !== null && (used[s] ?? 0) > 0) {
      const choice = choiceFor(problem, costs, s, used[s] ?? 0)
      if (choice < 0) return null
      cost += costs.counts[s]?.[choice] ?? 0
    }
  }
  for (let r = 0; r < problem.runs.length; r++) {
    const run = problem.runs[r]
    const flow = flows[r] ?? []
    if (run === undefined || !balanced(run.nodes, run.arcs, run.members, flow)) return null
    run.arcs.forEach((_, a) => {
      cost += (flow[a] ?? 0) * (costs.arcs[r]?.[a] ?? 0)
    })
    for (let c = 0; c < run.caps.length; c++) {
      const over = jointedAt(problem, r, c, flow) - (run.caps[c]?.cap ?? 0)
      if (over <= 0) continue
      const excess = costs.excess[r]?.[c] ?? null
      if (excess === null) return null
      cost += over * excess
    }
  }
  return { boards: boards.filter((board) => board.count > 0), flows, cost }
}

function balanced(nodes: number, arcs: readonly RunArc[], members: number, flow: readonly number[]): boolean {
  if (arcs.some((arc, a) => (flow[a] ?? 0) < 0 || (flow[a] ?? 0) > arc.most)) return false
  const balance = new Int32Array(nodes)
  arcs.forEach((arc, a) => {
    balance[arc.from] = (balance[arc.from] ?? 0) - (flow[a] ?? 0)
    balance[arc.to] = (balance[arc.to] ?? 0) + (flow[a] ?? 0)
  })
  return balance.every((sum, node) => sum === (node === 0 ? -members : node === 1 ? members : 0))
}
