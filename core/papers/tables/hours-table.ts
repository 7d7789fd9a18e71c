import type { Estimate } from '../../estimate-types.ts'
import { labelOfLine } from '../../pricing/index.ts'
import { printMoney } from '../../units/index.ts'
import type { PaperTable } from '../types.ts'
import { hours, quantity, tableOf } from './table.ts'

/** Paid hours by task, joints last, with clock hours of the crew in the closing row. */
export function hoursTable({ pricing, takeoff }: Pick<Estimate, 'pricing' | 'takeoff'>): PaperTable {
  const tasks = new Map(takeoff.tasks.map((task) => [task.id, task]))
  const lines = pricing?.lines.filter((line) => line.part === 'labour') ?? []
  const rows = lines.map((line) => {
    const task = tasks.get(line.cause.ids[0] ?? '')
    return {
      stage: task?.stage ?? '',
      label: labelOfLine(line),
      quantity: quantity(task?.thousandths ?? line.thousandths),
      unit: task?.unit ?? line.unit,
      workerHours: task === undefined ? '' : quantity(line.thousandths),
      amount: printMoney(line.amount),
    }
  })
  const totals = pricing === null ? [] : [closing(pricing.totals)]
  return tableOf(
    'hours',
    'Hours',
    [
      ['stage', 'Stage', 'left'],
      ['label', 'Work', 'left'],
      ['quantity', 'Quantity', 'right'],
      ['unit', 'Unit', 'left'],
      ['workerHours', 'Worker hours', 'right'],
      ['amount', 'Wages', 'right'],
    ],
    [...rows, ...totals],
  )
}

function closing(totals: NonNullable<Estimate['pricing']>['totals']) {
  return {
    stage: '',
    label: `All, joints included; ${hours(totals.crewHours)} clock hours of the crew`,
    quantity: '',
    unit: '',
    workerHours: hours(totals.workerHours),
    amount: printMoney(totals.labour),
  }
}
