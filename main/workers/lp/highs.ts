import highsLoader, { type Highs, type Model, type ModelData } from 'highs'
import type {
  IntegerProgram,
  IntegerSolution,
  LpColumn,
  LpEngine,
  LpModel,
  LpRow,
  LpSolution,
  LpStatus,
} from '../../../core/cutting/index.ts'

/** A safety net against a run that never ends; work limits, not this, decide results. */
const MOST_SIMPLEX_STEPS = 2_000_000

/** Halves the time of questions that are answered by no (110 to 57 ms for those of one deck's 2x10). */
const NO_HEURISTICS = {
  mip_heuristic_effort: 0,
  mip_heuristic_run_feasibility_jump: false,
  mip_heuristic_run_rins: false,
  mip_heuristic_run_rens: false,
  mip_heuristic_run_root_reduced_cost: false,
  mip_heuristic_run_zi_round: false,
} as const

let loaded: Promise<LpEngine> | undefined

/** HiGHS in WebAssembly, loaded once per thread; the model stays inside and keeps its basis between solves. */
export function loadHighs(): Promise<LpEngine> {
  loaded ??= highsLoader().then(engineOf)
  return loaded
}

function engineOf(highs: Highs): LpEngine {
  return {
    name: `HiGHS ${highs.version.string}`,
    create: (rows, columns) => guarded(() => keptModel(highs, rows, columns)),
    solveInteger: (program) => guarded(() => solveInteger(highs, program)),
  }
}

/** The package is one long line of source; an error that escapes prints all of it. */
function guarded<T>(action: () => T): T {
  try {
    return action()
  } catch (error) {
    throw new Error(`HiGHS: ${error instanceof Error ? error.message.slice(0, 300) : 'unknown fault'}`)
  }
}

function modelData(rows: readonly LpRow[], columns: readonly LpColumn[], integer: boolean): ModelData {
  const { starts, indices, values } = packed(columns)
  const data = {
    numCols: columns.length,
    numRows: rows.length,
    colCost: Float64Array.from(columns, (column) => column.cost),
    colLower: Float64Array.from(columns, (column) => column.lower),
    colUpper: Float64Array.from(columns, (column) => column.upper),
    rowLower: Float64Array.from(rows, (row) => row.lower),
    rowUpper: Float64Array.from(rows, (row) => row.upper),
    matrix: {
      format: 'csc' as const,
      numRows: rows.length,
      numCols: columns.length,
      starts,
      indices,
      values,
    },
  }
  return integer ? { ...data, integrality: new Int32Array(columns.length).fill(1) } : data
}

function packed(columns: readonly LpColumn[]): {
  starts: Int32Array
  indices: Int32Array
  values: Float64Array
} {
  const starts = new Int32Array(columns.length + 1)
  columns.forEach((column, c) => {
    starts[c + 1] = (starts[c] ?? 0) + column.rows.length
  })
  const size = starts[columns.length] ?? 0
  const indices = new Int32Array(size)
  const values = new Float64Array(size)
  columns.forEach((column, c) => {
    indices.set(column.rows, starts[c])
    values.set(column.values, starts[c])
  })
  return { starts, indices, values }
}

function statusOf(highs: Highs, code: number): LpStatus {
  const { modelStatus } = highs.constants
  switch (code) {
    case modelStatus.optimal:
    case modelStatus.empty:
    case modelStatus.objectiveTarget:
      return 'optimal'
    case modelStatus.infeasible:
    case modelStatus.unboundedOrInfeasible:
      return 'infeasible'
    case modelStatus.interrupted:
      return 'stopped'
    case modelStatus.solutionLimit:
    case modelStatus.iterationLimit:
    case modelStatus.timeLimit:
      return 'work limit'
    default:
      return 'error'
  }
}

function keptModel(highs: Highs, rows: readonly LpRow[], columns: readonly LpColumn[]): LpModel {
  const model: Model = highs.createModel(modelData(rows, columns, false))
  model.options.set({
    output_flag: false,
    presolve: 'off',
    solver: 'simplex',
    random_seed: 0,
    simplex_iteration_limit: MOST_SIMPLEX_STEPS,
  })
  let rowCount = rows.length
  return {
    addColumns: (added) =>
      guarded(() => {
        const { starts, indices, values } = packed(added)
        model.addCols({
          cost: Float64Array.from(added, (column) => column.cost),
          lower: Float64Array.from(added, (column) => column.lower),
          upper: Float64Array.from(added, (column) => column.upper),
          matrix: { format: 'csc', numRows: rowCount, numCols: added.length, starts, indices, values },
        })
      }),
    setBounds: (column, lower, upper) => guarded(() => void model.changeColBounds(column, lower, upper)),
    addRow: (lower, upper) =>
      guarded(() => {
        model.addRow(lower, upper, { indices: [], values: [] })
        rowCount++
      }),
    setRowBounds: (row, lower, upper) => guarded(() => void model.changeRowBounds(row, lower, upper)),
    solve: () => guarded(() => solveKept(highs, model)),
    dispose: () => guarded(() => model.dispose()),
  }
}

function solveKept(highs: Highs, model: Model): LpSolution {
  let status = statusOf(highs, model.run().modelStatus)
  if (status === 'error') {
    model.clearSolver()
    status = statusOf(highs, model.run().modelStatus)
  }
  if (status !== 'optimal') return { status, objective: Number.NaN, x: [], duals: [] }
  const solution = model.getSolution()
  return { status, objective: model.getObjectiveValue(), x: solution.colValue, duals: solution.rowDual }
}

function solveInteger(highs: Highs, program: IntegerProgram): IntegerSolution {
  const model = highs.createModel(modelData(program.rows, program.columns, true))
  try {
    model.options.set({
      output_flag: false,
      random_seed: 0,
      mip_rel_gap: 0,
      mip_abs_gap: program.gap,
      mip_max_nodes: program.maxNodes,
      ...(program.seek === false ? NO_HEURISTICS : {}),
      ...(program.target === null ? {} : { objective_target: program.target }),
    })
    if (program.start !== undefined) model.setSolution({ colValue: Float64Array.from(program.start) })
    const { stop } = program
    const interrupt = (event: { interrupt(): void }): undefined => {
      if (stop?.() === true) event.interrupt()
    }
    const { mipInterrupt, simplexInterrupt } = highs.constants.callbackType
    const callbacks =
      stop === undefined ? undefined : { [mipInterrupt]: interrupt, [simplexInterrupt]: interrupt }
    const status = statusOf(highs, model.run(callbacks).modelStatus)
    const found = Number(model.info.get('primal_solution_status')) === highs.constants.solutionStatus.feasible
    if (!found) return { status: status === 'optimal' ? 'error' : status, objective: Number.NaN, x: [] }
    return {
      status,
      objective: model.getObjectiveValue(),
      x: Float64Array.from(model.getSolution().colValue),
    }
  } finally {
    model.dispose()
  }
}
