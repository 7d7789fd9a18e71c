import { heldOf, jointGoods, orderNote } from '../../../../core/papers/index.ts'
import { type Line, overrideWords, productKey, productName } from '../../../../core/pricing/index.ts'
import { splitWords } from '../../../../core/split-words.ts'
import { printLength, printShare, sumCents, toFeet } from '../../../../core/units/index.ts'
import { dollars, empty, formula, number, text, unitDollars } from '../cell.ts'
import { type Sheet, SheetBuilder } from '../sheet.ts'
import { type LinePlaces, linesOfParts, type Source } from '../source.ts'

export const ORDER = 'Order'

function sparesNote(spares: Source['estimate']['spares']): string {
  if (spares === null || spares.lines.length === 0) return 'No spares are in this order.'
  return `With its spares no second trip is needed ${printShare(spares.probability)} of the time, if boards are unusable as stated.`
}

/** The order for the yard: what to load, by product and length, then everything sold by count, weight or bag. */
export function orderSheet(
  source: Source,
  bought: ReadonlyMap<Line['id'], string>,
): { sheet: Sheet; places: LinePlaces } {
  const { estimate, book } = source
  const { lines } = estimate.pricing
  const held = heldOf(estimate)
  const sheet = new SheetBuilder(ORDER, [48, 14, 10, 13, 12, 13])
  const quantity = new Map<string, string>()
  const price = new Map<string, string>()
  const amounts: string[] = []

  const write = (line: Line, label: string, note = ''): void => {
    const row = sheet.next
    const count = line.thousandths / 1000
    const quantityFrom = bought.get(line.id)
    const from = estimate.split === null ? '' : `from ${line.source?.supplier ?? book.supplier}`
    const kept = held.lines.get(line.id)
    const hold =
      kept === undefined
        ? ''
        : `${kept.thousandths === line.thousandths ? '' : `${kept.thousandths / 1000} `}on hold, ${kept.by.join(', ')}`
    const notes = [note, from, overrideWords(line), hold].filter((words) => words !== '').join('; ')
    sheet.row([
      text(notes === '' ? label : `${label}  (${notes})`, { wrap: true }),
      text(line.group === 'joints' && line.code.startsWith('joint-') ? '' : line.code),
      quantityFrom === undefined
        ? number(count, 'decimal', { input: true })
        : formula(quantityFrom, count, 'decimal'),
      text(line.unit),
      number(unitDollars(line.price), 'unit price', { input: true }),
      formula(`ROUND(C${row}*E${row},2)`, dollars(line.amount), 'money'),
    ])
    quantity.set(line.id, `${ORDER}!C${row}`)
    price.set(line.id, `${ORDER}!E${row}`)
    amounts.push(`F${row}`)
  }

  sheet.title('Order for the yard')
  sheet.note(
    `For ${estimate.job.name}. Prices: ${book.name}, ${book.date}, ${book.supplier}. Blue figures can be changed.`,
  )
  sheet.gap()
  sheet.header(['Item', 'Yard code', '>Quantity', 'Unit', '>Unit price', '>Amount'])
  const first = sheet.next
  for (const { product, plan, onHand } of estimate.plans) {
    const listed = book.lumber.find((entry) => productKey(entry.product) === productKey(product))
    const substitutes = listed?.substitutes ?? []
    sheet.group(productName(product))
    sheet.row([
      text(
        [listed?.useClass ?? '', substitutes.length === 0 ? 'no substitutes' : `or ${substitutes.join(', ')}`]
          .filter((words) => words !== '')
          .join(' · '),
        { soft: true },
      ),
    ])
    for (const ordered of plan.order) {
      const line = lines.find((one) => one.id === `lumber-${ordered.stockId}`)
      const offcut = onHand.includes(ordered.stockId)
      const long = offcut ? printLength(ordered.length) : `${toFeet(ordered.length)} ft`
      if (line !== undefined) write(line, `${product.size} × ${long}`, offcut ? 'offcut on hand' : '')
    }
    for (const { stockId, length } of plan.order) {
      const line = lines.find((one) => one.id === `blocks-${stockId}`)
      if (line !== undefined)
        write(line, `${product.size} × ${toFeet(length)} ft`, 'for blocks behind rim joints')
    }
    for (const spare of estimate.spares?.lines ?? []) {
      if (spare.classId !== productKey(product)) continue
      const line = lines.find((one) => one.id === `spare-${spare.stockId}`)
      if (line !== undefined) write(line, `${product.size} × ${toFeet(spare.length)} ft`, 'spare')
    }
  }
  const goods = linesOfParts(lines, ['hardware', 'fasteners', 'concrete', 'other material'])
  if (goods.length > 0) sheet.group('Hardware, fasteners, concrete and other material')
  for (const line of goods) {
    const packs = book.goods.find((good) => line.id === `good-${good.sku}`)?.note ?? ''
    const notes = [packs, orderNote(line.cause.ids, estimate)].filter((words) => words !== '')
    write(line, line.label, notes.join('; '))
  }
  const joints = lines.filter(({ group, part }) => group === 'joints' && part === 'material')
  if (joints.length > 0) sheet.group('What joints take')
  for (const line of joints)
    write(line, line.label, jointGoods(line, estimate)?.label.slice(`${line.label}: `.length))
  const ordered = lines.filter((line) => quantity.has(line.id))
  sheet.row([
    text('Order before tax', { bold: true, rule: 'strong' }),
    empty,
    empty,
    empty,
    empty,
    formula(
      `ROUND(SUM(F${first}:F${sheet.next - 1}),2)`,
      dollars(sumCents(ordered.map((line) => line.amount))),
      'money',
      {
        bold: true,
        name: 'order_total',
      },
    ),
  ])
  if (held.holds.length > 0) {
    sheet.gap()
    sheet.heading('On hold')
  }
  for (const { name, what, until } of held.holds)
    sheet.note(`${name}: ${what}. Not to be bought before ${until}.`)
  for (const words of estimate.split === null ? [] : splitWords(estimate.split)) sheet.note(words)
  sheet.gap()
  sheet.note(
    'Crown and sight lumber when it is unloaded: the cutting plan counts on every board, at its named length or more. ' +
      sparesNote(estimate.spares),
  )
  return { sheet: sheet.done(), places: { quantity, price } }
}
