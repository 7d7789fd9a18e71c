import type { LpColumn, LpEngine, LpRow } from '../lp-port.ts'
import type { Costs } from '../model/costs.ts'
import type { Pattern, Problem } from '../model/problem.ts'
import { fixedColumns, lpColumn, type MasterColumn, masterRows } from './master.ts'
import { type Boards, type Solution, solutionOf } from './solution.ts'
import type { Work } from './work.ts'

export interface IntegerQuestion {
  readonly patterns: readonly Pattern[]
  /** only plans cheaper than this are of interest */
  readonly below: number
  /** a plan this cheap ends the search */
  readonly enough: number
  readonly nodes: number
  /** arcs that may be used; all where absent */
  readonly arcs?: (run: number, arc: number) => boolean
}

export interface IntegerAnswer {
  readonly solution: Solution | null
  /** true: no plan from these patterns is cheaper than `solution`, or than `below` where there is none */
  readonly proven: boolean
}

/** The best plan made of the given patterns, by the engine's branch and bound; costs are whole, so a gap under 1 is none. */
export function bestOf(
  problem: Problem,
  costs: Costs,
  engine: LpEngine,
  question: IntegerQuestion,
  work: Work,
): IntegerAnswer {
  const rows = masterRows(problem)
  const columns: MasterColumn[] = fixedColumns(problem, costs).filter(
    column => column.kind !== 'arc' || question.arcs === undefined || question.arcs(column.run, column.arc),
  )
  for (const pattern of question.patterns) columns.push({ kind: 'pattern', pattern })
  const budget = rows.rows.length
  const limited = question.below < Number.POSITIVE_INFINITY
  const programRows: LpRow[] = limited
    ? [...rows.rows, { lower: Number.NEGATIVE_INFINITY, upper: question.below - 1 - costs.constant + 1e-4 }]
    : [...rows.rows]
  const program: LpColumn[] = columns.map(column => {
    const entry = lpColumn(problem, costs, rows, column, 0)
    if (!limited || entry.cost === 0) return entry
    return { ...entry, rows: [...entry.rows, budget], values: [...entry.values, entry.cost] }
  })
  const answer = engine.solveInteger({
    rows: programRows,
    columns: program,
    maxNodes: question.nodes,
    target: question.enough + 1e-4 - costs.constant,
    gap: 0.99,
    stop: () => work.stopped(),
  })
  work.nodes += 1
  const solution = answer.x.length === 0 ? null : rounded(problem, costs, columns, answer.x)
  if (answer.x.length > 0 && solution === null) return { solution: null, proven: false }
  return { solution, proven: answer.status === 'optimal' || answer.status === 'infeasible' }
}

/** A whole-numbered solution from the engine's nearly whole numbers; null where rounding breaks a rule. */
export function rounded(
  problem: Problem,
  costs: Costs,
  columns: readonly MasterColumn[],
  x: ArrayLike<number>,
): Solution | null {
  const boards: Boards[] = []
  const flows = problem.runs.map(run => new Array<number>(run.arcs.length).fill(0))
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
