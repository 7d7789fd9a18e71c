import type { Problem, RunModel } from '../model/problem.ts'

/** Joints that no plan can do without: of every member the fewest that the stock lengths leave. */
export function fewestJoints(problem: Problem): number {
  return problem.runs.reduce((sum, run) => sum + run.members * (jointsTo(run)[1] ?? 0), 0)
}

/** The problem with only such pieces as lie on a way of fewest joints: a plan with that number uses no others. */
export function onFewestJoints(problem: Problem): Problem {
  const runs = problem.runs.map((run) => {
    const before = jointsTo(run)
    const after = jointsFrom(run)
    const fewest = before[1] ?? 0
    const arcs = run.arcs.map((arc) => {
      const through = (before[arc.from] ?? 0) + (arc.point < 0 ? 0 : 1) + (after[arc.to] ?? 0)
      return through > fewest ? { ...arc, most: 0 } : arc
    })
    return { ...run, arcs }
  })
  return { ...problem, runs }
}

/** Fewest joints of a way from the start to each node; arcs come after all that lead to where they begin. */
function jointsTo({ nodes, arcs }: RunModel): number[] {
  const fewest = unreached(nodes)
  fewest[0] = 0
  for (const { from, to, point } of arcs)
    fewest[to] = Math.min(fewest[to] ?? 0, (fewest[from] ?? 0) + (point < 0 ? 0 : 1))
  return fewest
}

/** The same from each node to the end. */
function jointsFrom({ nodes, arcs }: RunModel): number[] {
  const fewest = unreached(nodes)
  fewest[1] = 0
  for (const { from, to, point } of arcs.toReversed())
    fewest[from] = Math.min(fewest[from] ?? 0, (fewest[to] ?? 0) + (point < 0 ? 0 : 1))
  return fewest
}

function unreached(nodes: number): number[] {
  return Array.from({ length: nodes }, () => Number.POSITIVE_INFINITY)
}
