import type { LpColumn, LpRow } from '../lp-port.ts'
import type { Costs } from '../model/costs.ts'
import type { Problem } from '../model/problem.ts'
import type { IntegerQuestion } from './integer.ts'
import { fixedColumns, lpColumn, type MasterColumn, masterRows } from './master.ts'

/** The master's rows over given patterns, and one column for every sum worth branching on. */
export interface Program {
  readonly columns: readonly MasterColumn[]
  readonly rows: readonly LpRow[]
  readonly lp: readonly LpColumn[]
  /** first column of the sums: boards per stock type, then joints per run */
  readonly sums: number
}

export function programOf(problem: Problem, costs: Costs, question: IntegerQuestion): Program {
  const rows = masterRows(problem)
  const columns: MasterColumn[] = fixedColumns(problem, costs).filter(
    (column) => column.kind !== 'arc' || question.arcs === undefined || question.arcs(column.run, column.arc),
  )
  for (const pattern of question.patterns) columns.push({ kind: 'pattern', pattern })
  const stockRow = rows.rows.length
  const runRow = stockRow + problem.stocks.length
  const lp = columns.map((column): LpColumn => {
    const entry = lpColumn(problem, costs, rows, column, 0)
    if (column.kind === 'pattern') return withEntry(entry, stockRow + column.pattern.stock, 1)
    if (column.kind === 'arc' && (problem.runs[column.run]?.arcs[column.arc]?.point ?? -1) >= 0) {
      return withEntry(entry, runRow + column.run, 1)
    }
    return entry
  })
  const sums = lp.length
  const all: LpRow[] = [...rows.rows]
  for (let k = 0; k < problem.stocks.length + problem.runs.length; k++) {
    lp.push({ cost: 0, lower: 0, upper: Number.POSITIVE_INFINITY, rows: [all.length], values: [-1] })
    all.push({ lower: 0, upper: 0 })
  }
  return { columns, rows: all, lp, sums }
}

function withEntry(column: LpColumn, row: number, value: number): LpColumn {
  return { ...column, rows: [...column.rows, row], values: [...column.values, value] }
}

/**
 * The same with a ceiling on the cost. Where boards cost the same however they are cut, the ceiling is stated in
 * boards per stock type, which lets the engine reason about it as a small knapsack.
 */
export function withCeiling(problem: Problem, costs: Costs, program: Program, most: number): Program {
  const row = program.rows.length
  const lp = program.lp.map((column, c): LpColumn => {
    const master = program.columns[c]
    if (master?.kind === 'pattern' && costs.savings === 0) {
      const extra = column.cost - (costs.board[master.pattern.stock] ?? 0)
      return extra === 0 ? column : withEntry(column, row, extra)
    }
    const stock = c - program.sums
    if (master === undefined && stock < problem.stocks.length && costs.savings === 0) {
      const cost = costs.board[stock] ?? 0
      return cost === 0 ? column : withEntry(column, row, cost)
    }
    return column.cost === 0 ? column : withEntry(column, row, column.cost)
  })
  return { ...program, lp, rows: [...program.rows, { lower: Number.NEGATIVE_INFINITY, upper: most }] }
}
