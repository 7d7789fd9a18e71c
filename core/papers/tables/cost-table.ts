import type { Estimate } from '../../estimate-types.ts'
import type { Job } from '../../job/index.ts'
import { type Line, labelOfLine, type Totals } from '../../pricing/index.ts'
import { printMoney, printShare, printUnitPrice } from '../../units/index.ts'
import type { PaperTable } from '../types.ts'
import { quantity, tableOf } from './table.ts'

/** The whole cost, line by line, and from there to the price; the printed lines sum to the printed totals. */
export function costTable({ pricing, job }: Pick<Estimate, 'pricing' | 'job'>): PaperTable {
  return tableOf(
    'cost',
    'Cost and price',
    [
      ['label', 'Line', 'left'],
      ['quantity', 'Quantity', 'right'],
      ['unit', 'Unit', 'left'],
      ['price', 'Each', 'right'],
      ['amount', 'Amount', 'right'],
    ],
    pricing === null ? [] : [...pricing.lines.map(lineRow), ...totalRows(pricing.totals, job)],
  )
}

function lineRow(line: Line) {
  return {
    label: labelOfLine(line),
    quantity: quantity(line.thousandths),
    unit: line.unit,
    price: printUnitPrice(line.price),
    amount: printMoney(line.amount),
  }
}

function totalRows(totals: Totals, { pricing }: Job) {
  const row = (label: string, amount: Totals['cost']) => ({
    label,
    quantity: '',
    unit: '',
    price: '',
    amount: printMoney(amount),
  })
  const owner = totals.method === 'none'
  const price = [
    row(`Price: ${totals.method} ${printShare(totals.methodShare)}`, totals.price),
    ...(totals.priceTax === 0
      ? []
      : [
          row(`Tax on the price ${printShare(pricing.priceTax)}`, totals.priceTax),
          row('Price with tax', totals.priceWithTax),
        ]),
  ]
  return [
    row('Materials', totals.material),
    row(`Sales tax ${printShare(pricing.salesTax)}`, totals.tax),
    row(owner && totals.labour === 0 ? 'Wages: none, the owner builds' : 'Labour', totals.labour),
    row('Other', totals.other),
    row('Direct cost', totals.direct),
    row(`Contingency ${printShare(pricing.contingency)}`, totals.contingency),
    ...(owner ? [] : [row(`Overhead ${printShare(pricing.overhead)}`, totals.overhead)]),
    row('Cost', totals.cost),
    ...(owner ? [] : price),
    row(`${totals.perSquareFootOf === 'price' ? 'Price' : 'Cost'} per square foot`, totals.perSquareFoot),
  ]
}
