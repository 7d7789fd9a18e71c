import { type Line, labelOfLine } from '../../../../core/pricing/index.ts'
import { type Cents, sumCents } from '../../../../core/units/index.ts'
import { dollars, empty, formula, number, text, unitDollars } from '../cell.ts'
import { type Sheet, SheetBuilder } from '../sheet.ts'
import type { LinePlaces, Source } from '../source.ts'
import { writeTotals } from './totals-block.ts'

const GROUPS: readonly { readonly group: Line['group']; readonly heading: string }[] = [
  { group: 'lumber', heading: 'Lumber' },
  { group: 'decking', heading: 'Decking' },
  { group: 'spares', heading: 'Spare boards' },
  { group: 'hardware', heading: 'Hardware' },
  { group: 'fasteners', heading: 'Fasteners' },
  { group: 'concrete', heading: 'Concrete and forms' },
  { group: 'other material', heading: 'Other material' },
  { group: 'joints', heading: 'Joints' },
  { group: 'labour', heading: 'Labour' },
  { group: 'other', heading: 'Other' },
]

/** Every line and, below them, the way from their sums to the price; rounded where the core rounds. */
export function costSheet({ estimate, book }: Source, places: LinePlaces): Sheet {
  const { lines } = estimate.pricing
  const sheet = new SheetBuilder('Cost', [46, 13, 11, 13, 12, 13, 10])
  sheet.title('Cost')
  sheet.note(
    `Prices: ${book.name}, ${book.date}. Blue figures can be changed here, prices and counts of material on the ` +
      'sheet Order, hours and the labour rate on the sheet Hours; everything that follows from them is worked out again.',
  )
  for (const { message, fix } of estimate.pricing.idle) sheet.note(`${message} ${fix}`)
  sheet.gap()
  sheet.header(['Item', 'Code', '>Quantity', 'Unit', '>Unit price', '>Amount', 'Counts as'])
  const first = sheet.next
  for (const { group, heading } of GROUPS) {
    const inGroup = lines.filter((line) => line.group === group)
    if (inGroup.length === 0) continue
    sheet.group(heading)
    const top = sheet.next
    for (const line of inGroup) writeLine(sheet, line, places)
    const sum: Cents = sumCents(inGroup.map((line) => line.amount))
    sheet.row([
      text(`${heading}, together`, { soft: true, rule: 'thin' }),
      empty,
      empty,
      empty,
      empty,
      formula(`ROUND(SUM(F${top}:F${sheet.next - 1}),2)`, dollars(sum), 'money', { bold: true }),
    ])
  }
  writeTotals(sheet, estimate, { first, last: sheet.next - 1 })
  return sheet.done()
}

function writeLine(sheet: SheetBuilder, line: Line, places: LinePlaces): void {
  const row = sheet.next
  const quantity = places.quantity.get(line.id)
  const price = places.price.get(line.id)
  const count = line.thousandths / 1000
  const format = line.group === 'labour' ? 'hours' : 'decimal'
  const each = unitDollars(line.price)
  sheet.row([
    text(labelOfLine(line), { wrap: true }),
    text(line.code, { soft: true }),
    quantity === undefined
      ? number(count, format, { input: line.group === 'other' })
      : formula(quantity, count, format),
    text(line.unit),
    price === undefined ? number(each, 'unit price', { input: true }) : formula(price, each, 'unit price'),
    formula(`ROUND(C${row}*E${row},2)`, dollars(line.amount), 'money'),
    text(line.part, { soft: true }),
  ])
}
