import type { LpEngine } from '../lp-port.ts'
import type { Costs } from '../model/costs.ts'
import type { Problem, RunModel } from '../model/problem.ts'
import { arrange, type MemberPath, pathsOf } from './arrange.ts'
import { type Outcome, search, type SearchOptions } from './search.ts'
import type { Solution } from './solution.ts'
import type { Work } from './work.ts'

/** Most times a choice of joints without an order is cut off. */
const MOST_CUTS = 40

export interface ArrangedOutcome extends Outcome {
  /** per run, per member */
  readonly paths: readonly (readonly MemberPath[])[]
}

/** The members of every run in an order that keeps neighbours apart where asked, or the first run that has none. */
function arrangeAll(problem: Problem, solution: Solution): { paths: MemberPath[][] } | { stuck: number } {
  const paths: MemberPath[][] = []
  for (let r = 0; r < problem.runs.length; r++) {
    const run = problem.runs[r] as RunModel
    const flow = solution.flows[r] ?? []
    if (!run.group.neighboursApart) paths.push(pathsOf(run, flow))
    else {
      const arrangement = arrange(run, flow)
      if (arrangement.kind !== 'arranged') return { stuck: r }
      paths.push(arrangement.paths)
    }
  }
  return { paths }
}

/**
 * Least cost with neighbours apart. The search knows only that half the members at most are jointed at one point.
 * Where its choice has no order, some piece of that choice must be used less often: one branch for each piece.
 * (Flows of equal size in a graph without circles differ only if one arc carries less.)
 */
export function searchArranged(
  problem: Problem,
  costs: Costs,
  engine: LpEngine,
  work: Work,
  options: SearchOptions,
): ArrangedOutcome {
  const root = search(problem, costs, engine, work, options)
  if (root.best === null) return { ...root, paths: [] }
  const first = arrangeAll(problem, root.best)
  if ('paths' in first) return { ...root, paths: first.paths }
  let best: { solution: Solution; paths: MemberPath[][] } | null = null
  const open = [{ problem, bound: root.bound, solution: root.best, stuck: first.stuck }]
  let cuts = 0
  let complete = root.best.cost <= root.bound
  while (open.length > 0) {
    open.sort((a, b) => b.bound - a.bound)
    const node = open.pop()
    if (node === undefined || (best !== null && node.bound >= best.solution.cost)) break
    if (cuts >= MOST_CUTS || work.stopped()) {
      open.push(node)
      break
    }
    cuts++
    const flow = node.solution.flows[node.stuck] ?? []
    for (let a = 0; a < flow.length; a++) {
      const carried = flow[a] ?? 0
      if (carried === 0) continue
      const child = withArcLimit(node.problem, node.stuck, a, carried - 1)
      const outcome = search(child, costs, engine, work, options)
      if (outcome.best === null) continue
      const bound = Math.max(node.bound, outcome.bound)
      const arranged = arrangeAll(child, outcome.best)
      if ('paths' in arranged) {
        if (best === null || outcome.best.cost < best.solution.cost) best = { solution: outcome.best, paths: arranged.paths }
        if (outcome.best.cost > bound) complete = false
      } else open.push({ problem: child, bound, solution: outcome.best, stuck: arranged.stuck })
    }
  }
  if (best === null) return { ...root, best: null, paths: [] }
  const openBound = open.reduce((least, node) => Math.min(least, node.bound), best.solution.cost)
  const bound = complete ? Math.max(root.bound, openBound) : root.bound
  const searched = bound > root.dual.cents ? { nodes: work.nodes, patterns: work.patterns } : root.searched
  return { ...root, best: best.solution, bound, searched, paths: best.paths }
}

function withArcLimit(problem: Problem, run: number, arc: number, most: number): Problem {
  const runs = problem.runs.map((model, r) =>
    r === run ? { ...model, arcs: model.arcs.map((entry, a) => (a === arc ? { ...entry, most } : entry)) } : model,
  )
  return { ...problem, runs }
}
