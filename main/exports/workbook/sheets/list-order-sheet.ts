import type { CutListResult, ListPlan } from '../../../../core/cut-list/index.ts'
import {
  cents,
  printLength,
  sumCents,
  TICKS_PER_FOOT,
  type Ticks,
  toFeet,
} from '../../../../core/units/index.ts'
import { dollars, empty, formula, number, text } from '../cell.ts'
import { type Sheet, SheetBuilder } from '../sheet.ts'

const ORDER = 'Order'

/** What to buy for a list, by product and length. Where stock has no prices, its length is summed instead of money. */
export function listOrderSheet({ plans }: CutListResult): {
  sheet: Sheet
  sums: ReadonlyMap<string, string>
} {
  const sheet = new SheetBuilder(ORDER, [36, 18, 14, 10, 13, 13, 13])
  const sums = new Map<string, string>()
  sheet.title('Order')
  sheet.note('Blue figures can be changed. What is on hand costs nothing unless a price was given for it.')
  sheet.gap()
  sheet.header(['Product', 'Code', '>Length', '>Count', '>Each', '>Amount', '>Length in all, ft'])
  const money: string[] = []
  for (const each of plans) {
    const first = sheet.next
    for (const line of each.plan.order) writeLine(sheet, each, line)
    const last = sheet.next - 1
    const priced = each.lengthUnit === null
    const feet = each.plan.order.reduce((sum, { length, count }) => sum + toFeet(length) * count, 0)
    const row = sheet.row([
      text(`${nameOf(each)}, in all`, { bold: true, rule: 'thin' }),
      empty,
      empty,
      formula(`SUM(D${first}:D${last})`, countOf(each), 'count', { bold: true }),
      empty,
      priced
        ? formula(`ROUND(SUM(F${first}:F${last}),2)`, dollars(each.plan.stockCost), 'money', { bold: true })
        : empty,
      formula(`SUM(G${first}:G${last})`, feet, 'decimal', { bold: true }),
    ])
    if (priced) money.push(`F${row}`)
    sums.set(each.plan.jobId, `${ORDER}!${priced ? 'F' : 'G'}${row}`)
  }
  if (money.length > 0) {
    const paid = plans.filter(({ lengthUnit }) => lengthUnit === null)
    const total = dollars(sumCents(paid.map(({ plan }) => plan.stockCost)))
    sheet.row([
      text('Whole order', { bold: true, rule: 'strong' }),
      empty,
      empty,
      empty,
      empty,
      formula(`ROUND(${money.join('+')},2)`, total, 'money', { bold: true, name: 'list_total' }),
    ])
  }
  return { sheet: sheet.done(), sums }
}

function writeLine(sheet: SheetBuilder, each: ListPlan, line: ListPlan['plan']['order'][number]): void {
  const named = each.stock.find(({ id }) => id === line.stockId)
  const row = sheet.next
  const feet = toFeet(line.length)
  sheet.row([
    text(named?.offcut === true ? `${nameOf(each)}, on hand` : nameOf(each), { wrap: true }),
    text(named?.code ?? ''),
    text(stockWords(line.length), { right: true }),
    number(line.count, 'count', { input: true }),
    ...(each.lengthUnit === null
      ? [
          number(dollars(cents(line.price)), 'unit price', { input: true }),
          formula(`ROUND(D${row}*E${row},2)`, dollars(line.amount), 'money'),
        ]
      : [empty, empty]),
    formula(`D${row}*${feet}`, feet * line.count, 'decimal'),
  ])
}

function countOf({ plan }: ListPlan): number {
  return plan.order.reduce((sum, { count }) => sum + count, 0)
}

/** A product of a list by its name; a list may name none. */
export function nameOf({ product }: Pick<ListPlan, 'product'>): string {
  return product === '' ? 'Boards' : product
}

export function stockWords(length: Ticks): string {
  return length % TICKS_PER_FOOT === 0 ? `${toFeet(length)} ft` : printLength(length)
}
