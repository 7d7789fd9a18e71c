import type { CompareRow } from '../../compare/index.ts'
import { type Cents, printLength, printMoney, printMoneyChange } from '../../units/index.ts'
import type { PaperTable } from '../types.ts'
import { tableOf } from './table.ts'

/** Widths side by side, with what made each cost more or less than the one before. */
export function compareTable(rows: readonly CompareRow[]): PaperTable {
  return tableOf(
    'widths',
    'Widths compared',
    [
      ['width', 'Width', 'right'],
      ['cost', 'Cost', 'right'],
      ['price', 'Price', 'right'],
      ['perSquareFoot', 'Per sq ft', 'right'],
      ['lumber', 'Lumber', 'right'],
      ['framingJoints', 'Framing joints', 'right'],
      ['joints', 'All joints', 'right'],
      ['boards', 'Boards', 'right'],
      ['waste', 'Waste', 'right'],
      ['fit', 'Fits', 'left'],
      ['why', 'Why it differs', 'left'],
    ],
    rows.map((row) => ({
      width: printLength(row.width),
      cost: figure(row, row.cost),
      price: figure(row, row.price),
      perSquareFoot: figure(row, row.perSquareFoot),
      lumber: figure(row, row.lumber),
      framingJoints: row.fault === null ? `${row.framingJoints}` : '',
      joints: row.fault === null ? `${row.joints}` : '',
      boards: row.fault === null ? `${row.boards}` : '',
      waste: row.fault === null ? `${(row.waste / 100).toFixed(1)} %` : '',
      fit: row.fitsWithDecking ? 'stock, with decking' : row.fitsStock ? 'stock' : '',
      why: row.fault ?? row.changes.slice(0, 3).map(change).join('; '),
    })),
  )
}

function figure(row: CompareRow, amount: Cents): string {
  return row.fault === null ? printMoney(amount) : ''
}

function change({ label, change: amount }: CompareRow['changes'][number]): string {
  return `${label} ${printMoneyChange(amount)}`
}
