import type { LpColumn, LpEngine, LpModel } from '../cutting/index.ts'
import { EFFORT, type Effort } from './effort.ts'

/**
 * An engine that counts what it is asked in effort, by the size of each program: what plans cost to make lies there, and a
 * question about thousands of columns takes a hundred times as long as one about a few.
 */
export function meteredEngine(engine: LpEngine, effort: Effort): LpEngine {
  return {
    name: engine.name,
    create: (rows, columns) => {
      effort.add(EFFORT.program + columns.length * EFFORT.programColumn)
      return meteredModel(engine.create(rows, columns), rows.length, columns.length, effort)
    },
    solveInteger: (program) => {
      const { rows, columns } = program
      const each =
        EFFORT.integerStep + rows.length * EFFORT.integerRow + columns.length * EFFORT.integerColumn
      const { stop } = program
      effort.add(each)
      return engine.solveInteger({
        ...program,
        stop: () => {
          effort.add(each)
          return stop?.() === true
        },
      })
    },
  }
}

function meteredModel(model: LpModel, rows: number, columns: number, effort: Effort): LpModel {
  let [tall, wide] = [rows, columns]
  return {
    addColumns: (added: readonly LpColumn[]) => {
      wide += added.length
      model.addColumns(added)
    },
    addRow: (lower, upper) => {
      tall += 1
      model.addRow(lower, upper)
    },
    setBounds: (column, lower, upper) => model.setBounds(column, lower, upper),
    setRowBounds: (row, lower, upper) => model.setRowBounds(row, lower, upper),
    solve: () => {
      effort.add(EFFORT.solve + tall * EFFORT.solveRow + wide * EFFORT.solveColumn)
      return model.solve()
    },
    dispose: () => model.dispose(),
  }
}
