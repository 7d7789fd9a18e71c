import { type Costs, costIn } from '../model/costs.ts'
import type { Problem, RunModel } from '../model/problem.ts'
import type { MasterColumn } from './master.ts'
import { type Boards, boardsUsed, demandOf, leftAfter, type Solution, solutionOf } from './solution.ts'
import { pack } from './start.ts'

/**
 * A plan near a fractional solution: members take the ways that carry most of the flow, boards are rounded down,
 * and what is then left to cut is packed as by hand. null where that breaks a cap or a supply.
 */
export function roundPlan(
  problem: Problem,
  costs: Costs,
  columns: readonly MasterColumn[],
  x: ArrayLike<number>,
): Solution | null {
  const flows = problem.runs.map((run) => new Array<number>(run.arcs.length).fill(0))
  const boards: Boards[] = []
  const tops: { at: number; fraction: number }[] = []
  columns.forEach((column, c) => {
    const value = x[c] ?? 0
    if (column.kind === 'arc') {
      const flow = flows[column.run]
      if (flow !== undefined) flow[column.arc] = value
    } else if (column.kind === 'pattern' && value > 1e-6) {
      const count = Math.floor(value + 1e-6)
      tops.push({ at: boards.length, fraction: value - count })
      boards.push({ pattern: column.pattern, count })
    }
  })
  const whole = problem.runs.map((run, r) => wholeFlow(run, flows[r] ?? []))
  const demand = demandOf(problem, whole)
  const left = leftAfter(demand, boards)
  let best: Solution | null = null
  const byCount = problem.stocks.some((stock) => stock.counts !== null)
  let least = Number.POSITIVE_INFINITY
  tops.sort((a, b) => b.fraction - a.fraction || a.at - b.at)
  const taken = boards.map((board) => board.count)
  for (let step = 0; ; step++) {
    const full = filled(problem, costs, boards, taken, left)
    const price = full === null ? least : priceOf(problem, costs, full)
    if (full !== null && (byCount || price < least)) {
      least = price
      const plan = solutionOf(problem, costs, full, whole)
      if (plan !== null && (best === null || plan.cost < best.cost)) best = plan
    }
    const next = tops[step]
    if (next === undefined || next.fraction < 0.3 || step >= 24) return best
    const pattern = boards[next.at]?.pattern
    if (
      pattern === undefined ||
      pattern.items.some((item, k) => (left[item] ?? 0) < (pattern.counts[k] ?? 0))
    )
      continue
    taken[next.at] = (taken[next.at] ?? 0) + 1
    pattern.items.forEach((item, k) => {
      left[item] = (left[item] ?? 0) - (pattern.counts[k] ?? 0)
    })
  }
}

function filled(
  problem: Problem,
  costs: Costs,
  boards: readonly Boards[],
  taken: readonly number[],
  left: readonly number[],
): Boards[] | null {
  const fixed = boards.map((board, b) => ({ pattern: board.pattern, count: taken[b] ?? 0 }))
  const used = boardsUsed(problem, fixed)
  const supply = problem.stocks.map((stock, s) => stock.supply - (used[s] ?? 0))
  if (supply.some((count) => count < 0)) return null
  const rest = pack(problem, costs, left, supply)
  return rest === null ? null : [...fixed, ...rest]
}

/** Boards alone: what joints cost is the same for every plan here; what boards bought by count cost is not. */
function priceOf(problem: Problem, costs: Costs, boards: readonly Boards[]): number {
  return boards.reduce((sum, { pattern, count }) => sum + count * costIn(problem, costs, pattern), 0)
}

/** Whole members one after another along the ways that carry most of what is left of a fractional flow. */
function wholeFlow(run: RunModel, fractional: readonly number[]): number[] {
  const left = [...fractional]
  const flow = new Array<number>(run.arcs.length).fill(0)
  for (let member = 0; member < run.members; member++) {
    const width = new Float64Array(run.nodes).fill(-1)
    const via = new Int32Array(run.nodes).fill(-1)
    width[0] = Number.POSITIVE_INFINITY
    run.arcs.forEach((arc, a) => {
      const carried = Math.min(width[arc.from] as number, Math.max(1e-9, left[a] ?? 0))
      if ((width[arc.from] as number) >= 0 && carried > (width[arc.to] as number)) {
        width[arc.to] = carried
        via[arc.to] = a
      }
    })
    for (let node = 1; node !== 0; ) {
      const a = via[node] ?? -1
      const arc = run.arcs[a]
      if (arc === undefined) break
      flow[a] = (flow[a] ?? 0) + 1
      left[a] = (left[a] ?? 0) - 1
      node = arc.from
    }
  }
  return flow
}
