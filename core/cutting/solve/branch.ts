import type { LpEngine, LpModel } from '../lp-port.ts'
import type { Costs } from '../model/costs.ts'
import type { Problem } from '../model/problem.ts'
import type { IntegerAnswer, IntegerQuestion } from './integer.ts'
import { type Program, programOf } from './program.ts'
import { roundPlan } from './round-plan.ts'
import { rounded } from './rounded.ts'
import type { Solution } from './solution.ts'
import type { Work } from './work.ts'

/** How far from whole a value must be to be branched on. */
const FRACTION = 1e-6
/** A relaxation must lie this far above the last useful cost before its branch is given up: far beyond the engine's own error. */
const SAFE = 0.01

interface Bounds {
  readonly column: number
  readonly lower: number
  readonly upper: number
}

interface Node {
  readonly bounds: readonly Bounds[]
  readonly depth: number
}

/**
 * Branch and bound over given patterns, on the sums that make up the cost before anything else: boards of each stock
 * length, joints of each run, then single arcs, then patterns. Depth first, nearest side first.
 */
export function branch(
  problem: Problem,
  costs: Costs,
  engine: LpEngine,
  question: IntegerQuestion,
  work: Work,
): IntegerAnswer {
  const program = programOf(problem, costs, question)
  const model = engine.create(program.rows, program.lp)
  try {
    return descend(problem, costs, program, model, question, work)
  } finally {
    model.dispose()
  }
}

function descend(
  problem: Problem,
  costs: Costs,
  program: Program,
  model: LpModel,
  question: IntegerQuestion,
  work: Work,
): IntegerAnswer {
  let best: Solution | null = null
  let below = question.below
  let applied: readonly Bounds[] = []
  const given = question.boards?.map((count, s) => ({ column: program.sums + s, lower: count, upper: count }))
  const open: Node[] = [{ bounds: given ?? [], depth: 0 }]
  const better = (plan: Solution | null): void => {
    if (plan !== null && plan.cost < below) {
      best = plan
      below = plan.cost
    }
  }
  for (let nodes = 0; open.length > 0; nodes++) {
    if (nodes >= question.nodes || work.stopped()) return { solution: best, proven: false }
    const node = open.pop() as Node
    work.nodes++
    apply(model, program, applied, node.bounds)
    applied = node.bounds
    const solution = model.solve()
    if (solution.status === 'infeasible') continue
    if (solution.status !== 'optimal') return { solution: best, proven: false }
    if (solution.objective + costs.constant > below - 1 + SAFE) continue
    const at = fractional(program, solution.x)
    if (at < 0) {
      const plan = rounded(problem, costs, program.columns, solution.x)
      if (plan === null) return { solution: best, proven: false }
      better(plan)
    } else {
      if (node.depth % 4 === 0) better(roundPlan(problem, costs, program.columns, solution.x))
      const value = solution.x[at] ?? 0
      const floor = Math.floor(value)
      const down = { bounds: tighten(node.bounds, at, 0, floor, program), depth: node.depth + 1 }
      const up = {
        bounds: tighten(node.bounds, at, floor + 1, Number.POSITIVE_INFINITY, program),
        depth: node.depth + 1,
      }
      if (value - floor >= 0.5) open.push(down, up)
      else open.push(up, down)
    }
    if (best !== null && below <= question.enough) return { solution: best, proven: true }
  }
  return { solution: best, proven: true }
}

function tighten(
  bounds: readonly Bounds[],
  column: number,
  lower: number,
  upper: number,
  program: Program,
): Bounds[] {
  const old = bounds.find((bound) => bound.column === column)
  const low = Math.max(lower, old?.lower ?? program.lp[column]?.lower ?? 0)
  const high = Math.min(upper, old?.upper ?? program.lp[column]?.upper ?? Number.POSITIVE_INFINITY)
  return [...bounds.filter((bound) => bound.column !== column), { column, lower: low, upper: high }]
}

function apply(model: LpModel, program: Program, old: readonly Bounds[], now: readonly Bounds[]): void {
  for (const { column } of old) {
    if (now.some((bound) => bound.column === column)) continue
    model.setBounds(
      column,
      program.lp[column]?.lower ?? 0,
      program.lp[column]?.upper ?? Number.POSITIVE_INFINITY,
    )
  }
  for (const { column, lower, upper } of now) model.setBounds(column, lower, upper)
}

/** The column to branch on: sums first, then arcs and count choices, then patterns; the one nearest to a half. */
function fractional(program: Program, x: ArrayLike<number>): number {
  let best = -1
  let bestScore = 0
  const consider = (column: number, weight: number): void => {
    const value = x[column] ?? 0
    const distance = Math.abs(value - Math.round(value))
    if (distance > FRACTION && distance * weight > bestScore) {
      best = column
      bestScore = distance * weight
    }
  }
  for (const kind of ['boards', 'joints', 'run'] as const) {
    program.kinds.forEach((sum, k) => {
      if (sum.kind === kind) consider(program.sums + k, 1)
    })
    if (best >= 0) return best
  }
  program.columns.forEach((column, c) => {
    if (column.kind !== 'pattern') consider(c, 1)
  })
  if (best >= 0) return best
  program.columns.forEach((column, c) => {
    if (column.kind === 'pattern') consider(c, 1 + (x[c] ?? 0))
  })
  return best
}
