import {
  type CostedLine,
  type CostedSum,
  type Costing,
  costJob,
  heldAgainst,
  stagesOf,
} from '../../../../core/costing/index.ts'
import type { Job } from '../../../../core/job/index.ts'
import { type Cell, dollars, empty, formula, fraction, number, text, unitDollars } from '../cell.ts'
import { type Sheet, SheetBuilder } from '../sheet.ts'
import type { Source } from '../source.ts'

const WORK = 'labour'

/** What the job took beside the estimate it is held against; sums and differences follow from the figures above them. */
export function costingSheet({ estimate, book }: Source): Sheet {
  const { job } = estimate
  const held = heldAgainst(estimate, book)
  const costing = costJob(job, held)
  const sheet = new SheetBuilder('As built', [46, 11, 11, 13, 12, 13, 13, 13, 10, 13])
  sheet.title('As built')
  sheet.note(
    `${job.costing.begun === '' ? 'Under way' : `Begun ${job.costing.begun}`}` +
      `${job.costing.finished === '' ? '.' : `, finished ${job.costing.finished}.`} ` +
      'Amounts are before the sales tax that the job states. Still open is what is estimated and neither bought nor worked yet.',
  )
  sheet.gap()
  sheet.header([
    'Line',
    '>Quantity',
    '>Taken',
    'Unit',
    '>Unit price',
    '>Estimated',
    '>Actual',
    '>Difference',
    '>Share',
    '>Still open',
  ])
  const rows: { readonly part: string; readonly row: number }[] = []
  for (const group of costing.groups) {
    sheet.group(group.group.charAt(0).toUpperCase() + group.group.slice(1))
    const top = sheet.next
    for (const line of group.lines) rows.push({ part: line.line.part, row: writeLine(sheet, line) })
    writeSum(sheet, 'Together', group, (column) => `SUM(${column}${top}:${column}${sheet.next - 1})`)
  }
  writeTotals(sheet, job, costing, rows)
  writeEntries(sheet, job, costing)
  return sheet.done()
}

function writeLine(sheet: SheetBuilder, costed: CostedLine): number {
  const row = sheet.next
  const { line, planned, bought, worked } = costed
  const work = line.part === WORK
  // a joint is priced by the piece, and worked by the hour
  const counted = line.thousandths / 1000
  const taken = work ? worked : bought
  return sheet.row([
    text(line.what, { wrap: true }),
    planned ? number(counted, 'decimal') : empty,
    taken === null ? text('not said', { soft: true, right: true }) : number(taken / 1000, 'decimal'),
    text(work && line.unit !== 'worker hour' && planned ? `${line.unit}; hours` : line.unit, { wrap: true }),
    planned ? number(unitDollars(line.price), 'unit price') : empty,
    planned ? formula(`ROUND(B${row}*E${row},2)`, dollars(costed.estimated), 'money') : number(0, 'money'),
    number(dollars(costed.actual), 'money', { input: true }),
    ...differences(row, costed),
    number(dollars(costed.open), 'money'),
  ])
}

type Sums = Pick<CostedSum, 'estimated' | 'actual' | 'difference' | 'share' | 'open'>

function differences(row: number, { difference, share }: Sums, look: object = {}): readonly Cell[] {
  return [
    formula(`ROUND(G${row}-F${row},2)`, dollars(difference), 'money', look),
    share === null
      ? empty
      : formula(`IF(F${row}=0,"",ROUND(H${row}/ABS(F${row}),4))`, fraction(share), 'share', look),
  ]
}

function writeSum(
  sheet: SheetBuilder,
  label: string,
  sums: Sums,
  of: (column: 'F' | 'G' | 'J') => string,
  names: { readonly estimated?: string; readonly actual?: string; readonly open?: string } = {},
): void {
  const row = sheet.next
  const look = { bold: true }
  const named = (name: string | undefined) => (name === undefined ? look : { ...look, name })
  sheet.row([
    text(label, { bold: true, rule: 'thin' }),
    empty,
    empty,
    empty,
    empty,
    formula(`ROUND(${of('F')},2)`, dollars(sums.estimated), 'money', named(names.estimated)),
    formula(`ROUND(${of('G')},2)`, dollars(sums.actual), 'money', named(names.actual)),
    ...differences(row, sums, look),
    formula(`ROUND(${of('J')},2)`, dollars(sums.open), 'money', named(names.open)),
  ])
}

function writeTotals(
  sheet: SheetBuilder,
  job: Job,
  costing: Costing,
  rows: readonly { readonly part: string; readonly row: number }[],
): void {
  sheet.gap()
  sheet.heading('In all')
  const parts = ['material', WORK, 'other'] as const
  const at = new Map<string, number>()
  for (const part of parts) {
    const own = rows.filter((one) => one.part === part).map(({ row }) => row)
    at.set(part, sheet.next)
    writeSum(sheet, part.charAt(0).toUpperCase() + part.slice(1), costing[part], (column) =>
      own.length === 0 ? '0' : own.map((row) => `${column}${row}`).join('+'),
    )
  }
  const material = at.get('material') ?? 0
  const rate = fraction(job.pricing.salesTax)
  const tax = sheet.next
  // the tax to come is that of the likely material less what is paid: rounded where the core rounds
  writeSum(sheet, 'Sales tax on material', costing.tax, (column) =>
    column === 'J' ? `ROUND((G${material}+J${material})*${rate},2)-G${tax}` : `${column}${material}*${rate}`,
  )
  writeSum(
    sheet,
    'Direct cost',
    costing.direct,
    (column) => [...at.values(), tax].map((row) => `${column}${row}`).join('+'),
    { estimated: 'direct_estimated', actual: 'direct_actual', open: 'direct_open' },
  )
  const money = (label: string, expression: string, value: number, name: string) =>
    sheet.row([
      text(label, { bold: true }),
      empty,
      empty,
      empty,
      empty,
      empty,
      formula(expression, value, 'money', { bold: true, name }),
    ])
  money(
    'As it will likely be',
    'ROUND(direct_actual+direct_open,2)',
    dollars(costing.direct.likely),
    'direct_likely',
  )
  if (costing.left === null) return
  const price = dollars(costing.left.price)
  money(
    'Left of the price for overhead and profit, as estimated',
    `ROUND(${price}-direct_estimated,2)`,
    dollars(costing.left.estimated),
    'left_estimated',
  )
  money(
    'The same as it will likely be',
    `ROUND(${price}-direct_likely,2)`,
    dollars(costing.left.likely),
    'left_likely',
  )
}

function writeEntries(sheet: SheetBuilder, { costing }: Job, { groups }: Costing): void {
  const lines = groups.flatMap((group) => group.lines.map(({ line }) => line))
  const words = new Map([...lines, ...stagesOf(lines)].map(({ line, what }) => [line, what]))
  sheet.gap()
  sheet.heading('Bought')
  sheet.header(['What', '>Quantity', 'Day', 'Supplier', 'Receipt', '>Amount'], false)
  for (const { date, supplier, line, what, thousandths, amount, receipt } of costing.bought)
    sheet.row([
      text(what === '' ? (words.get(line) ?? line) : what, { wrap: true }),
      thousandths === null ? empty : number(thousandths / 1000, 'decimal'),
      text(date),
      text(supplier, { wrap: true }),
      text(receipt, { wrap: true }),
      number(dollars(amount), 'money'),
    ])
  sheet.gap()
  sheet.heading('Worked')
  sheet.header(['Work', '>Worker hours', 'Day', 'Who'], false)
  for (const { date, line, what, who, thousandths } of costing.worked)
    sheet.row([
      text(what === '' ? (words.get(line) ?? line) : what, { wrap: true }),
      number(thousandths / 1000, 'decimal'),
      text(date),
      text(who, { wrap: true }),
    ])
}
