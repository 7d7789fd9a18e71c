import type { Costs } from '../model/costs.ts'
import type { Problem } from '../model/problem.ts'
import type { MasterColumn } from './master.ts'
import { type Boards, type Solution, solutionOf } from './solution.ts'

/** A whole-numbered solution from the engine's nearly whole numbers; null where rounding breaks a rule. */
export function rounded(
  problem: Problem,
  costs: Costs,
  columns: readonly MasterColumn[],
  x: ArrayLike<number>,
): Solution | null {
  const boards: Boards[] = []
  const flows = problem.runs.map((run) => new Array<number>(run.arcs.length).fill(0))
  for (let c = 0; c < columns.length; c++) {
    const column = columns[c]
    const count = Math.round(x[c] ?? 0)
    if (column === undefined || count === 0) continue
    if (column.kind === 'pattern') boards.push({ pattern: column.pattern, count })
    else if (column.kind === 'arc') {
      const flow = flows[column.run]
      if (flow !== undefined) flow[column.arc] = count
    }
  }
  return solutionOf(problem, costs, boards, flows)
}
