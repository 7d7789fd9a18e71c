import type { CheckStatus } from '../../../../core/checks/index.ts'
import { FIELDS, printFieldValue, valueAt } from '../../../../core/job/index.ts'
import { productName } from '../../../../core/pricing/index.ts'
import { type Cents, printLength, printMoney } from '../../../../core/units/index.ts'
import { type Cell, dollars, formula, number, text } from '../cell.ts'
import { type Sheet, SheetBuilder } from '../sheet.ts'
import type { Source } from '../source.ts'
import { STATUS_MARKS } from './checks-sheet.ts'

/** One page for whoever opens the workbook first: the price, what is in it, what is not, and what it rests on. */
export function summarySheet({ estimate, book }: Source): Sheet {
  const { job } = estimate
  const sheet = new SheetBuilder('Summary', [38, 20, 58])
  sheet.title(job.name === '' ? 'Deck estimate' : job.name)
  sheet.note(
    `Deck ${printLength(job.size.width)} wide, ${printLength(job.size.depth)} deep, ${printLength(job.size.height)} high, ` +
      `${job.site.attachment === 'ledger' ? 'on a ledger' : 'freestanding'}. ` +
      `${job.builder === 'owner' ? 'Built by its owner.' : 'Built by a contractor.'}`,
  )
  sheet.note(
    `Prices: ${book.name}, ${book.date}, ${book.supplier}.` +
      (book.invented
        ? ' These prices are invented: put in your yard’s before anyone relies on a figure.'
        : ''),
  )
  writePrice(sheet, estimate, book.crewSize)
  writeOrder(sheet, estimate)
  writeChecks(sheet, estimate)
  writeMissed(sheet, estimate)
  sheet.gap()
  sheet.heading('Is it in the price?')
  for (const line of estimate.scope) {
    sheet.row([
      text(line.topic),
      line.state === 'priced'
        ? number(dollars(line.amount), 'money')
        : text('not included', { right: true, soft: true }),
      text(line.message, { wrap: true }),
    ])
  }
  writeCautions(sheet)
  writeJob(sheet, estimate)
  return sheet.done()
}

function writePrice(sheet: SheetBuilder, { pricing }: Source['estimate'], crewSize: number): void {
  const { totals } = pricing
  const owner = totals.method === 'none'
  const row = (label: string, cell: Cell, say = '') =>
    sheet.row([text(label, { bold: cell.bold === true }), cell, text(say, { soft: true, wrap: true })])
  const money = (name: string, amount: Cents, look: object = {}) =>
    formula(name, dollars(amount), 'money', look)
  sheet.gap()
  sheet.heading(owner ? 'Cost' : 'Price')
  if (!owner) row('Price', money('price', totals.price, { bold: true, size: 14 }), priceSays(pricing))
  if (!owner && totals.priceTax > 0) row('Price with tax', money('price_with_tax', totals.priceWithTax))
  row(
    'Cost',
    money('cost', totals.cost, { bold: true }),
    'Material, tax, labour, other, contingency and overhead.',
  )
  row(
    'Per square foot',
    money('per_square_foot', totals.perSquareFoot),
    `${totals.perSquareFootOf} ÷ outline of the deck`,
  )
  row('Material before tax', money('material', totals.material))
  row(
    'Labour',
    money('labour', totals.labour),
    owner ? 'An owner’s own hours are not paid; they stand on Hours.' : '',
  )
  row('Worker hours, paid', formula('worker_hours', totals.workerHours / 100, 'fixed'))
  row(
    'Hours on the clock',
    formula('crew_hours', totals.crewHours / 100, 'fixed'),
    `for a crew of ${crewSize}`,
  )
}

function priceSays({ totals }: Source['estimate']['pricing']): string {
  const percent = totals.methodShare / 100
  return totals.method === 'margin' ? `Cost ÷ (1 − ${percent} % margin)` : `Cost × (1 + ${percent} % markup)`
}

function writeOrder(sheet: SheetBuilder, { plans, fit }: Source['estimate']): void {
  sheet.gap()
  sheet.heading('Order and cutting')
  for (const { product, plan } of plans) {
    const joints = plan.joints.length === 0 ? 'no joints' : counted(plan.joints.length, 'joint')
    const proof =
      plan.status === 'proven optimal'
        ? 'proven least'
        : `within ${printMoney(plan.gap)} of the least possible`
    sheet.row([
      text(productName(product), { wrap: true }),
      number(dollars(plan.stockCost), 'money'),
      text(`${counted(plan.boards.length, 'board')}, ${joints}, ${proof}`, { wrap: true }),
    ])
  }
  sheet.note(fit.message)
}

function counted(count: number, thing: string): string {
  return `${count} ${thing}${count === 1 ? '' : 's'}`
}

function writeChecks(sheet: SheetBuilder, { checks }: Source['estimate']): void {
  const counts = new Map<CheckStatus, number>()
  for (const { status } of checks) counts.set(status, (counts.get(status) ?? 0) + 1)
  sheet.gap()
  sheet.heading('Checks')
  for (const status of Object.keys(STATUS_MARKS) as CheckStatus[]) {
    const count = counts.get(status)
    if (count === undefined) continue
    const named =
      status === 'passes' ? '' : checks.filter((check) => check.status === status).map((check) => check.title)
    sheet.row([
      text(STATUS_MARKS[status]),
      number(count, 'count'),
      text([...new Set(named)].join(', '), { wrap: true }),
    ])
  }
}

function writeMissed(sheet: SheetBuilder, { nearMisses }: Source['estimate']): void {
  if (nearMisses.length === 0) return
  sheet.gap()
  sheet.heading('Just over a stock length')
  for (const miss of nearMisses) sheet.note(miss.message)
}

const CAUTIONS = [
  'Local code and the building official govern; frost depth, snow and soil are local facts.',
  'Have utilities marked before digging.',
  'What lies outside the tables needs a licensed professional.',
  'Overhead lines, buried services and the wall behind a ledger are seen on site, not here.',
]

function writeCautions(sheet: SheetBuilder): void {
  sheet.gap()
  sheet.heading('Cautions')
  for (const caution of CAUTIONS) sheet.note(caution)
}

function writeJob(sheet: SheetBuilder, { job, given }: Source['estimate']): void {
  sheet.gap()
  sheet.heading('What this estimate rests on')
  sheet.header(['Field', '>Value', 'Stated, or taken as a default and why'], false)
  const stated = new Set(given)
  for (const field of FIELDS) {
    if (field.path === 'name' || field.path === 'notes') continue
    sheet.row([
      text(field.label, { wrap: true }),
      text(printFieldValue(field, valueAt(job, field.path)), {
        right: true,
        wrap: true,
      }),
      text(stated.has(field.path) ? 'stated' : `default: ${field.basis}`, {
        wrap: true,
        soft: !stated.has(field.path),
      }),
    ])
  }
}
