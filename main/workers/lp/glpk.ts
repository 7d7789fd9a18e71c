import GLPK, { type GLPK as Glpk, type LP, type Result } from 'glpk.js/node'
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

/** A safety net only, in seconds: GLPK counts neither nodes nor steps, so its integer programs are kept small instead. */
const MOST_SECONDS = 20

let loaded: Promise<LpEngine> | undefined

/** GLPK in WebAssembly: takes the whole problem at every call and keeps no basis. */
export function loadGlpk(): Promise<LpEngine> {
  loaded ??= GLPK().then(engineOf)
  return loaded
}

function engineOf(glpk: Glpk): LpEngine {
  return {
    name: `GLPK ${glpk.version}`,
    create: (rows, columns) => restated(glpk, rows, columns),
    solveInteger: (program) => solveInteger(glpk, program),
  }
}

function restated(glpk: Glpk, firstRows: readonly LpRow[], first: readonly LpColumn[]): LpModel {
  const rows = [...firstRows]
  const columns = [...first]
  return {
    addColumns: (added) => {
      columns.push(...added)
    },
    setBounds: (column, lower, upper) => {
      const old = columns[column]
      if (old !== undefined) columns[column] = { ...old, lower, upper }
    },
    addRow: (lower, upper) => void rows.push({ lower, upper }),
    setRowBounds: (row, lower, upper) => {
      rows[row] = { lower, upper }
    },
    solve: () => solveContinuous(glpk, rows, columns),
    dispose: () => {
      columns.length = 0
    },
  }
}

function boundsOf(glpk: Glpk, lower: number, upper: number): { type: number; lb: number; ub: number } {
  const low = lower !== Number.NEGATIVE_INFINITY
  const high = upper !== Number.POSITIVE_INFINITY
  const lb = low ? lower : 0
  const ub = high ? upper : 0
  if (low && high) return { type: lower === upper ? glpk.GLP_FX : glpk.GLP_DB, lb, ub }
  if (low) return { type: glpk.GLP_LO, lb, ub }
  return { type: high ? glpk.GLP_UP : glpk.GLP_FR, lb, ub }
}

/** GLPK refuses empty rows, so a column fixed at nothing stands in each of them. */
function problemOf(glpk: Glpk, rows: readonly LpRow[], columns: readonly LpColumn[]): LP {
  const entries = rows.map(() => [] as { name: string; coef: number }[])
  columns.forEach((column, c) => {
    column.rows.forEach((row, k) => {
      entries[row]?.push({ name: `x${c}`, coef: column.values[k] ?? 0 })
    })
  })
  for (const row of entries) if (row.length === 0) row.push({ name: 'none', coef: 1 })
  return {
    name: 'cutting',
    objective: {
      direction: glpk.GLP_MIN,
      name: 'cost',
      vars: [
        ...columns.map((column, c) => ({ name: `x${c}`, coef: column.cost })),
        { name: 'none', coef: 0 },
      ],
    },
    subjectTo: rows.map((row, r) => ({
      name: `r${r}`,
      vars: entries[r] ?? [],
      bnds: boundsOf(glpk, row.lower, row.upper),
    })),
    bounds: [
      ...columns.map((column, c) => ({ name: `x${c}`, ...boundsOf(glpk, column.lower, column.upper) })),
      { name: 'none', type: glpk.GLP_FX, lb: 0, ub: 0 },
    ],
  }
}

function statusOf(glpk: Glpk, result: Result): LpStatus {
  switch (result.result.status) {
    case glpk.GLP_OPT:
      return 'optimal'
    case glpk.GLP_NOFEAS:
    case glpk.GLP_INFEAS:
      return 'infeasible'
    case glpk.GLP_FEAS:
      return 'work limit'
    default:
      return 'error'
  }
}

function valuesOf(result: Result, count: number): Float64Array {
  return Float64Array.from({ length: count }, (_, c) => result.result.vars[`x${c}`] ?? 0)
}

function solveContinuous(glpk: Glpk, rows: readonly LpRow[], columns: readonly LpColumn[]): LpSolution {
  const result = glpk.solve(problemOf(glpk, rows, columns), {
    msglev: glpk.GLP_MSG_OFF,
    presol: false,
    tmlim: MOST_SECONDS,
  })
  const status = statusOf(glpk, result)
  if (status !== 'optimal') return { status, objective: Number.NaN, x: [], duals: [] }
  const duals = Float64Array.from(rows, (_, r) => result.result.dual?.[`r${r}`] ?? 0)
  return { status, objective: result.result.z, x: valuesOf(result, columns.length), duals }
}

function solveInteger(glpk: Glpk, program: IntegerProgram): IntegerSolution {
  const { rows, columns } = program
  const problem = { ...problemOf(glpk, rows, columns), generals: columns.map((_, c) => `x${c}`) }
  const result = glpk.solve(problem, {
    msglev: glpk.GLP_MSG_OFF,
    presol: true,
    mipgap: 0,
    tmlim: MOST_SECONDS,
  })
  const status = statusOf(glpk, result)
  if (status !== 'optimal' && status !== 'work limit') return { status, objective: Number.NaN, x: [] }
  return { status, objective: result.result.z, x: valuesOf(result, columns.length) }
}
