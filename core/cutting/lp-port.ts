/** A row of a linear program: lower ≤ sum ≤ upper. */
export interface LpRow {
  readonly lower: number
  readonly upper: number
}

/** A column: its cost, its bounds and its entries in rows that are there already. */
export interface LpColumn {
  readonly cost: number
  readonly lower: number
  readonly upper: number
  readonly rows: readonly number[]
  readonly values: readonly number[]
}

export type LpStatus = 'optimal' | 'infeasible' | 'work limit' | 'stopped' | 'error'

export interface LpSolution {
  readonly status: LpStatus
  readonly objective: number
  readonly x: ArrayLike<number>
  /** one per row: what one unit more of its right side costs */
  readonly duals: ArrayLike<number>
}

/** An integer program: every column whole. */
export interface IntegerProgram {
  readonly rows: readonly LpRow[]
  readonly columns: readonly LpColumn[]
  /** branching nodes after which the engine gives up; an engine that cannot count them bounds its work another way */
  readonly maxNodes: number
  /** a solution this good ends the search; null: search to the end */
  readonly target: number | null
  /** solutions that differ by less than this count as equal */
  readonly gap: number
  /** false: the answer is likely no, so that the engine need not look for solutions beside its proof; true by default */
  readonly seek?: boolean
  /** a feasible solution to start from */
  readonly start?: ArrayLike<number>
  /** asked now and then: true ends the search */
  readonly stop?: () => boolean
}

export interface IntegerSolution {
  /** 'optimal' and 'infeasible' are proofs; 'work limit' and 'stopped' are not */
  readonly status: LpStatus
  readonly objective: number
  /** the best solution found, empty if none */
  readonly x: ArrayLike<number>
}

/** A linear program kept in the engine between solves, so that a solve after new columns starts from the last basis. */
export interface LpModel {
  addColumns(columns: readonly LpColumn[]): void
  setBounds(column: number, lower: number, upper: number): void
  /** a row without entries; columns added later may have some in it */
  addRow(lower: number, upper: number): void
  setRowBounds(row: number, lower: number, upper: number): void
  solve(): LpSolution
  dispose(): void
}

/** An engine is loaded by the caller and injected, so that core stays free of WASM, files and clocks. */
export interface LpEngine {
  readonly name: string
  /** a linear program of rows and first columns; minimised */
  create(rows: readonly LpRow[], columns: readonly LpColumn[]): LpModel
  solveInteger(program: IntegerProgram): IntegerSolution
}
