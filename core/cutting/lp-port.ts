/** A linear program that grows by columns: minimise cost·x, rows ≥ or = or ≤ their right side, 0 ≤ x ≤ upper. */
export interface LpRow {
  readonly lower: number
  readonly upper: number
}

export interface LpColumn {
  readonly cost: number
  readonly lower: number
  readonly upper: number
  readonly rows: readonly number[]
  readonly values: readonly number[]
}

export type LpStatus = 'optimal' | 'infeasible' | 'work limit' | 'error'

export interface LpSolution {
  readonly status: LpStatus
  readonly objective: number
  readonly x: readonly number[]
  /** one per row; empty for an integer program */
  readonly duals: readonly number[]
}

/** A model kept in the engine between solves, so that a solve after new columns starts from the last basis. */
export interface LpModel {
  addRow(row: LpRow): number
  addColumn(column: LpColumn): number
  setBounds(column: number, lower: number, upper: number): void
  solve(): LpSolution
  /** all columns integer, at most so many nodes; the model is continuous again afterwards */
  solveInteger(maxNodes: number, cutoff: number | null): LpSolution & { readonly bound: number; readonly nodes: number }
  dispose(): void
}

/** An engine is loaded by the caller and injected, so that core stays free of WASM, files and clocks. */
export interface LpEngine {
  readonly name: string
  create(): LpModel
}
