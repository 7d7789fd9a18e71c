import { jointCost, type Line, labelOfLine } from '../../../../core/pricing/index.ts'
import { dollars, empty, formula, number, text } from '../cell.ts'
import { type Sheet, SheetBuilder } from '../sheet.ts'
import type { LinePlaces, Source } from '../source.ts'

export const HOURS = 'Hours'

const JOINT_KINDS = ['beam ply', 'rim', 'ledger', 'decking'] as const

/** Work by task: quantity × clock hours each × workers = paid worker hours; joints by the minute. */
export function hoursSheet({ estimate, book }: Source): { sheet: Sheet; places: LinePlaces } {
  const { pricing, takeoff, job } = estimate
  const sheet = new SheetBuilder(HOURS, [46, 10, 11, 20, 12, 10, 12, 12], true)
  const quantity = new Map<string, string>()
  const price = new Map<string, string>()
  sheet.title(HOURS)
  sheet.note(
    'Clock hours pass on site; worker hours are paid: clock hours × workers. Rates are starting values for a skilled ' +
      'crew without travel, breaks or rain; replace them by your own records. Blue figures can be changed.',
  )
  sheet.gap()
  sheet.row([
    text('Loaded labour rate per worker hour'),
    empty,
    empty,
    empty,
    number(dollars(book.labourRate), 'money', { input: true, name: 'labour_rate' }),
  ])
  sheet.row([
    text('Workers in the crew'),
    empty,
    empty,
    empty,
    number(book.crewSize, 'count', { input: true, name: 'crew_size' }),
  ])
  sheet.gap()
  sheet.header([
    'Task',
    'Stage',
    '>Quantity',
    'Unit',
    '>Clock hours each',
    '>Workers',
    '>Clock hours',
    '>Worker hours',
  ])
  const first = sheet.next
  const owner = job.builder === 'owner'
  for (const line of pricing.lines.filter((one) => one.group === 'labour')) {
    const task = takeoff.tasks.find((one) => line.cause.ids.includes(one.id))
    const rate = book.rates.find((one) => one.id === line.code)
    if (task === undefined || rate === undefined) continue
    const row = sheet.next
    // hours stated by hand are their own quantity, worked by one
    const stated = line.overridden?.quantity === true
    const count = (stated ? line : task).thousandths / 1000
    const each = stated ? 1 : rate.crewHours / 100_000
    sheet.row([
      text(labelOfLine(line), { wrap: true }),
      text(task.stage, { soft: true }),
      number(count, 'decimal', { input: stated }),
      text(stated ? line.unit : task.unit, { wrap: true }),
      number(each, 'rate', { input: !stated }),
      number(stated ? 1 : rate.workers, 'count', { input: !stated }),
      formula(`C${row}*E${row}`, count * each, 'hours'),
      formula(`ROUND(C${row}*E${row}*F${row},3)`, line.thousandths / 1000, 'hours'),
    ])
    quantity.set(line.id, `${HOURS}!H${row}`)
    if (!owner && line.overridden?.price !== true) price.set(line.id, 'labour_rate')
  }
  for (const kind of JOINT_KINDS) {
    const line = pricing.lines.find((one) => one.id === `joint-${kind.replace(' ', '-')}-labour`)
    const cost = jointCost(kind, book, job.builder)
    if (line === undefined || cost === null) continue
    writeJoints(sheet, line, kind, cost.kit.minutes)
    const row = sheet.next - 1
    quantity.set(line.id, `${HOURS}!C${row}`)
    if (!owner && line.overridden?.price !== true)
      price.set(line.id, `ROUND(ROUND(${HOURS}!E${row}*60,6)*labour_rate/60,2)`)
  }
  writeSums(sheet, estimate, first, sheet.next - 1)
  return { sheet: sheet.done(), places: { quantity, price } }
}

function writeJoints(sheet: SheetBuilder, line: Line, kind: string, minutes: number): void {
  const row = sheet.next
  const joints = line.thousandths / 1000
  sheet.row([
    text(`Make ${kind} joints, ${minutes} min each`),
    text('frame', { soft: true }),
    number(joints, 'decimal'),
    text('joint'),
    number(minutes / 60, 'rate', { input: true }),
    number(1, 'count'),
    formula(`C${row}*E${row}`, (joints * minutes) / 60, 'hours'),
    formula(`C${row}*E${row}*F${row}`, (joints * minutes) / 60, 'hours'),
  ])
}

function writeSums(sheet: SheetBuilder, estimate: Source['estimate'], first: number, last: number): void {
  const { totals } = estimate.pricing
  const worked = `SUMPRODUCT(C${first}:C${last},E${first}:E${last},F${first}:F${last})`
  sheet.row([
    text('Worker hours, paid', { bold: true, rule: 'strong' }),
    empty,
    empty,
    empty,
    empty,
    empty,
    empty,
    formula(`ROUND(${worked},2)`, totals.workerHours / 100, 'fixed', { bold: true, name: 'worker_hours' }),
  ])
  sheet.row([
    text('Hours on the clock for a crew of that size', { bold: true }),
    empty,
    empty,
    empty,
    empty,
    empty,
    formula(`ROUND(${worked}/crew_size,2)`, totals.crewHours / 100, 'fixed', {
      bold: true,
      name: 'crew_hours',
    }),
  ])
}
