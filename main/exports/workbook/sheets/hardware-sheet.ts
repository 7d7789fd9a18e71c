import { allHoles } from '../../../../core/ground/index.ts'
import { type Line, labelOfLine } from '../../../../core/pricing/index.ts'
import { nearestSixteenth, printLength, type Ticks } from '../../../../core/units/index.ts'
import { empty, formula, inchesOf, number, text } from '../cell.ts'
import { type Sheet, SheetBuilder } from '../sheet.ts'
import { linesOfParts, type Source } from '../source.ts'

export const HARDWARE = 'Hardware and concrete'

/** What is needed of goods, in which packs they are sold, and the footings that the concrete goes into. */
export function hardwareSheet({ estimate, book }: Source): {
  sheet: Sheet
  bought: ReadonlyMap<Line['id'], string>
} {
  const sheet = new SheetBuilder(HARDWARE, [48, 11, 10, 11, 9, 11, 44], true)
  const bought = new Map<string, string>()
  sheet.title(HARDWARE)
  sheet.note(
    'Needed is counted from the frame; what is bought is rounded up to whole packs. Blue figures can be changed.',
  )
  sheet.gap()
  sheet.header(['Item', '>Needed', 'Unit', '>In a pack', '>Packs', '>Bought', 'For'])
  for (const line of linesOfParts(estimate.pricing.lines, [
    'hardware',
    'fasteners',
    'concrete',
    'other material',
  ])) {
    const wanted = estimate.takeoff.goods.filter((good) => line.cause.ids.includes(good.id))
    const needed = wanted.reduce((sum, good) => sum + good.thousandths, 0)
    const pack = book.goods.find((good) => good.sku === wanted[0]?.sku)?.pack ?? 1000
    const counted = line.overridden?.computed.thousandths ?? line.thousandths
    const row = sheet.next
    sheet.row([
      text(labelOfLine(line), { wrap: true }),
      number(needed / 1000, 'decimal', { input: true }),
      text(line.unit),
      number(pack / 1000, 'decimal', { input: true }),
      formula(`ROUNDUP(ROUND(B${row}/D${row},6),0)`, Math.ceil(needed / pack), 'count'),
      formula(`D${row}*E${row}`, counted / 1000, 'decimal'),
      text([...new Set(wanted.map((good) => good.cause.rule))].join('; '), { soft: true, wrap: true }),
    ])
    // what is stated by hand is bought instead, and stands as a figure in the order
    if (line.overridden?.quantity !== true) bought.set(line.id, `'${HARDWARE}'!F${row}`)
  }
  writeConcrete(sheet, estimate)
  writeFootings(sheet, estimate)
  return { sheet: sheet.done(), bought }
}

function writeConcrete(sheet: SheetBuilder, { takeoff: { volumes } }: Source['estimate']): void {
  sheet.gap()
  sheet.heading('Concrete and soil, all footings together')
  sheet.header(['Volume', '>Cubic feet', '', '>Cubic yards'], false)
  const rows: readonly (readonly [string, number])[] = [
    ['Concrete, without waste', volumes.concrete],
    ['Holes', volumes.holes],
    ['Backfill', volumes.backfill],
    ['Spoil in place', volumes.spoilInPlace],
    ['Spoil loose', volumes.spoilLoose],
  ]
  for (const [label, cubicFeet] of rows) {
    const row = sheet.next
    sheet.row([
      text(label),
      number(cubicFeet, 'fixed'),
      empty,
      formula(`B${row}/27`, cubicFeet / 27, 'fixed'),
    ])
  }
  sheet.row([text('Bags of concrete mix, waste included'), number(volumes.bags, 'count')])
}

function writeFootings(sheet: SheetBuilder, estimate: Source['estimate']): void {
  const { takeoff } = estimate
  sheet.gap()
  sheet.heading('Footings')
  sheet.note(
    'Have utilities marked before digging. Frost depth and soil are local facts; the building official governs. ' +
      'Places are from the deck’s left corner at the wall, to the centre.',
  )
  sheet.header(
    [
      'Footing, place along the wall and away from it',
      '>Tube, in',
      '',
      '>Base, in',
      '>Hole, in',
      '>Depth, in',
      'Concrete',
    ],
    false,
  )
  const volumeOf = new Map(takeoff.volumes.concreteEach.map((each) => [each.footingId, each.cubicFeet]))
  for (const footing of allHoles(estimate)) {
    sheet.row([
      text(
        `${footing.number}:  ${printLength(nearestSixteenth(footing.x))} along, ${printLength(nearestSixteenth(footing.y))} away`,
      ),
      number(inchesOf(footing.tube), 'inches'),
      empty,
      footing.base === 0 ? text('none', { right: true }) : number(inchesOf(footing.base), 'inches'),
      number(inchesOf(footing.holeDiameter), 'inches'),
      number(inchesOf(footing.depth), 'inches'),
      text(
        `${(volumeOf.get(footing.id) ?? 0).toFixed(2)} cu ft; tube ${printLength(footing.tubeLength as Ticks)} long` +
          (footing.base === 0 ? '' : `, base ${printLength(footing.baseThickness)} thick`),
        { soft: true },
      ),
    ])
  }
}
