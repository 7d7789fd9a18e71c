import type { LpColumn, LpRow } from '../lp-port.ts'
import type { Costs } from '../model/costs.ts'
import type { Problem } from '../model/problem.ts'
import type { IntegerQuestion } from './integer.ts'
import { fixedColumns, lpColumn, type MasterColumn, masterRows } from './master.ts'

/** A column for a sum: what a unit of it costs, and whether it stands for the cost of its parts. */
interface Sum {
  readonly cost: number
  readonly kind: 'boards' | 'joints' | 'run'
}

/** The master's rows over given patterns, and one column for every sum worth branching on. */
export interface Program {
  readonly columns: readonly MasterColumn[]
  readonly rows: readonly LpRow[]
  readonly lp: readonly LpColumn[]
  /** first column of the sums */
  readonly sums: number
  /** boards of each stock type, joints of each price, then joints of each run */
  readonly kinds: readonly Sum[]
}

export function programOf(problem: Problem, costs: Costs, question: IntegerQuestion): Program {
  const rows = masterRows(problem)
  const columns: MasterColumn[] = fixedColumns(problem, costs).filter(
    (column) => column.kind !== 'arc' || question.arcs === undefined || question.arcs(column.run, column.arc),
  )
  for (const pattern of question.patterns) columns.push({ kind: 'pattern', pattern })
  const prices = [...new Set(columns.flatMap((column) => jointPrice(problem, costs, column) ?? []))].sort(
    (a, b) => a - b,
  )
  const kinds: Sum[] = [
    ...problem.stocks.map((_, s): Sum => ({ kind: 'boards', cost: costs.board[s] ?? 0 })),
    ...prices.map((cost): Sum => ({ kind: 'joints', cost })),
    ...problem.runs.map((): Sum => ({ kind: 'run', cost: 0 })),
  ]
  const first = rows.rows.length
  const priceRow = first + problem.stocks.length
  const runRow = priceRow + prices.length
  const lp = columns.map((column): LpColumn => {
    const entry = lpColumn(problem, costs, rows, column, 0)
    if (column.kind === 'pattern') return withEntry(entry, first + column.pattern.stock, 1)
    const price = jointPrice(problem, costs, column)
    if (column.kind !== 'arc' || price === null) return entry
    return withEntry(withEntry(entry, priceRow + prices.indexOf(price), 1), runRow + column.run, 1)
  })
  const sums = lp.length
  const all: LpRow[] = [...rows.rows]
  for (const _ of kinds) {
    lp.push({ cost: 0, lower: 0, upper: Number.POSITIVE_INFINITY, rows: [all.length], values: [-1] })
    all.push({ lower: 0, upper: 0 })
  }
  return { columns, rows: all, lp, sums, kinds }
}

/** What the joint at the far end of a piece costs; null where the column is no piece that is jointed. */
function jointPrice(problem: Problem, costs: Costs, column: MasterColumn): number | null {
  if (column.kind !== 'arc') return null
  if ((problem.runs[column.run]?.arcs[column.arc]?.point ?? -1) < 0) return null
  return costs.arcs[column.run]?.[column.arc] ?? 0
}

function withEntry(column: LpColumn, row: number, value: number): LpColumn {
  return { ...column, rows: [...column.rows, row], values: [...column.values, value] }
}

/**
 * The same with a ceiling on the cost. Where boards cost the same however they are cut, the ceiling is stated in
 * boards per stock type and joints per price, which lets the engine reason about it as a small knapsack.
 */
export function withCeiling(problem: Problem, costs: Costs, program: Program, most: number): Program {
  const row = program.rows.length
  const lp = program.lp.map((column, c): LpColumn => {
    const master = program.columns[c]
    if (costs.savings > 0) return column.cost === 0 ? column : withEntry(column, row, column.cost)
    if (master === undefined) {
      const cost = program.kinds[c - program.sums]?.cost ?? 0
      return cost === 0 ? column : withEntry(column, row, cost)
    }
    const counted =
      master.kind === 'pattern'
        ? (costs.board[master.pattern.stock] ?? 0)
        : (jointPrice(problem, costs, master) ?? 0)
    const extra = column.cost - counted
    return extra === 0 ? column : withEntry(column, row, extra)
  })
  return { ...program, lp, rows: [...program.rows, { lower: Number.NEGATIVE_INFINITY, upper: most }] }
}
