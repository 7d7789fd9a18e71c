import { bearingOf } from '../../../../core/checks/index.ts'
import {
  allHoles,
  concreteOrder,
  diggingWays,
  footingSchedule,
  isBeforeOneWall,
  layoutChecks,
  layoutCorners,
  layoutStrings,
  sightOf,
  soilCautions,
  type TubePlan,
  tiesTo,
} from '../../../../core/ground/index.ts'
import { nearestSixteenth, printLength, toFeet } from '../../../../core/units/index.ts'
import { dollars, empty, formula, inchesOf, number, text, unitDollars } from '../cell.ts'
import { type Sheet, SheetBuilder } from '../sheet.ts'
import type { Source } from '../source.ts'

/** Everything in the ground: cautions, schedule, setting out with live diagonals, concrete both ways, tubes, digging. */
export function groundSheet(source: Source, tubes: TubePlan | null): Sheet {
  const sheet = new SheetBuilder('Ground', [30, 12, 12, 13, 13, 12, 12, 12, 14, 12, 14, 12], true)
  sheet.title('Ground')
  for (const sentence of soilCautions(source.estimate.job)) sheet.note(sentence)
  writeSchedule(sheet, source)
  writeLayout(sheet, source)
  writeConcrete(sheet, source)
  if (tubes !== null) writeTubes(sheet, tubes)
  writeDigging(sheet, source)
  return sheet.done()
}

function writeSchedule(sheet: SheetBuilder, { estimate }: Source): void {
  sheet.gap()
  sheet.heading('Footing schedule')
  sheet.note(
    'Levels against the ground at the wall’s left end, inches. Soil pressure without the concrete’s own weight.',
  )
  sheet.note(
    'Load: by the area that a post carries, as the code’s table reckons. Reaction: the beam’s greatest, live load placed worst.',
  )
  sheet.header([
    'Footing',
    '>Ground, in',
    '>Bottom, in',
    '>Tube, in',
    '>Tube long, in',
    '>Base, in',
    '>Base thick, in',
    '>Load, lb',
    '>Reaction, lb',
    '>Soil, psf',
    '>At reaction, psf',
    '>Carries, psf',
  ])
  for (const row of footingSchedule(estimate)) {
    const bare = row.base === 0
    sheet.row([
      text(
        `${row.number}: ${printLength(nearestSixteenth(row.x))} along, ${printLength(nearestSixteenth(row.y))} away`,
      ),
      number(inchesOf(row.groundLevel), 'fixed'),
      number(inchesOf(row.bottomLevel), 'fixed'),
      number(inchesOf(row.tube), 'inches'),
      number(inchesOf(row.tubeLength), 'inches'),
      bare ? text('none', { right: true }) : number(inchesOf(row.base), 'inches'),
      bare ? empty : number(inchesOf(row.baseThickness), 'inches'),
      ...(row.carries === null
        ? [text('not reckoned', { right: true }), empty, empty, empty]
        : [
            number(row.carries.load, 'count'),
            row.carries.worst === null ? empty : number(row.carries.worst, 'count'),
            number(row.carries.pressure, 'count'),
            row.carries.worstPressure === null ? empty : number(row.carries.worstPressure, 'count'),
          ]),
      number(bearingOf(estimate.job).psf, 'count'),
    ])
  }
}

/** The diagonals are worked out again where an offset is changed, to the nearest 1/16 in as in the core. */
function writeLayout(sheet: SheetBuilder, { estimate }: Source): void {
  const { strings, crossings } = layoutStrings(estimate)
  const right = strings.find(({ name }) => name === 'right')?.offset ?? 0
  sheet.gap()
  sheet.heading('Setting out')
  if (!isBeforeOneWall(estimate)) {
    writeTied(sheet, estimate)
    return
  }
  sheet.row([
    text('Right corner at the wall, from the left one'),
    number(inchesOf(right), 'inches', { input: true, name: 'right_corner' }),
  ])
  sheet.header(
    ['Hole under its two strings', '>Along wall, in', '>From wall, in', '>Diagonal left', '>Diagonal right'],
    false,
  )
  for (const hole of crossings) {
    const row = sheet.next
    const diagonal = (along: string) => `ROUND(SQRT((${along})^2+C${row}^2)*16,0)/16`
    sheet.row([
      text(`${hole.number}: ${hole.strings}`),
      number(inchesOf(hole.along), 'inches', { input: true }),
      number(inchesOf(hole.fromWall), 'inches', { input: true }),
      formula(diagonal(`B${row}`), inchesOf(hole.fromLeftCorner), 'inches'),
      formula(diagonal(`right_corner-B${row}`), inchesOf(hole.fromRightCorner), 'inches'),
    ])
  }
  for (const corner of layoutCorners(estimate))
    sheet.note(
      `Corner ${corner.number} of the frame: ${printLength(corner.along)} along the wall, ${printLength(corner.fromWall)} from it; ${printLength(corner.fromLeftCorner)} from the left corner, ${printLength(corner.fromRightCorner)} from the right.`,
    )
  for (const { what, measures, tolerance, otherwise } of layoutChecks(estimate))
    sheet.note(`${what}: ${printLength(measures)}, within ${printLength(tolerance)}. ${otherwise}`)
}

/** Around a house: no diagonal runs through it, so that places are proved from its corners. */
function writeTied(sheet: SheetBuilder, estimate: Source['estimate']): void {
  const { layout } = estimate
  const sight = sightOf(layout)
  sheet.header(['Hole under its two strings', 'Corner', '>Distance, in', 'Corner', '>Distance, in'], false)
  for (const { number: hole, strings } of layoutStrings(estimate).crossings) {
    const place = allHoles(estimate).find(({ number: one }) => one === hole)
    const ties = place === undefined ? [] : tiesTo(place, sight)
    sheet.row([
      text(`${hole}: ${strings}`),
      ...ties.flatMap(({ corner, measures }) => [
        number(corner.number, 'count'),
        number(inchesOf(measures), 'inches'),
      ]),
    ])
  }
  for (const { number: corner, ties } of layoutCorners(estimate).filter((one) => one.ties.length > 0))
    sheet.note(
      `Corner ${corner} of the frame: ${ties.map((tie) => `${printLength(tie.measures)} from corner ${tie.corner.number}`).join(', ')}.`,
    )
  for (const { what, measures, tolerance, otherwise } of layoutChecks(estimate))
    sheet.note(`${what}: ${printLength(measures)}, within ${printLength(tolerance)}. ${otherwise}`)
}

function writeConcrete(sheet: SheetBuilder, { estimate, book }: Source): void {
  const { bags, readyMix, bought, breakEven, cubicFeet } = concreteOrder(estimate, book)
  const priceOf = (sku: string) => {
    const price = book.goods.find((good) => good.sku === sku)?.price
    return price === undefined ? 0 : unitDollars(price)
  }
  const inPacks = (quantity: number, sku: string) => {
    const pack = book.goods.find((good) => good.sku === sku)?.pack ?? 1
    return Math.ceil(quantity / pack) * pack
  }
  sheet.gap()
  sheet.heading('Concrete, bags or ready-mix')
  sheet.note(
    `${cubicFeet.toFixed(2)} cu ft with waste. ` +
      (breakEven === null
        ? 'No volume at which a truck is the cheaper was found.'
        : `A truck is the cheaper from ${(breakEven / 27).toFixed(2)} cu yd on.`) +
      ` The job buys ${bought}.`,
  )
  sheet.header(
    [
      'Bought as',
      '>Quantity',
      '>Each',
      '>Short of a load',
      '>Fee each',
      '>Material',
      '>Tax',
      '>Hours',
      '>Wages',
      '>Together',
    ],
    false,
  )
  const row = (
    name: string,
    way: typeof bags | NonNullable<typeof readyMix>,
    quantity: number,
    price: number,
    missing: number,
    fee: number,
  ) => {
    const at = sheet.next
    sheet.row([
      text(name, { bold: name.toLowerCase().startsWith(bought) }),
      number(quantity, 'decimal', { input: true }),
      number(price, 'unit price', { input: true }),
      number(missing, 'decimal', { input: true }),
      number(fee, 'unit price', { input: true }),
      formula(`ROUND(B${at}*C${at},2)+ROUND(D${at}*E${at},2)`, dollars(way.material), 'money'),
      number(dollars(way.tax), 'money'),
      number(way.hours / 1000, 'hours'),
      number(dollars(way.labour), 'money'),
      formula(`F${at}+G${at}+I${at}`, dollars(way.total), 'money', { bold: true }),
    ])
  }
  row('Bags of 80 lb, mixed by hand', bags, bags.count, priceOf('concrete-bag-80lb'), 0, 0)
  if (readyMix !== null)
    row(
      'Ready-mix, cubic yards',
      readyMix,
      readyMix.yards / 1000,
      priceOf('concrete-ready-mix'),
      inPacks(readyMix.missing, 'ready-mix-short-load') / 1000,
      priceOf('ready-mix-short-load'),
    )
}

function writeTubes(sheet: SheetBuilder, { plan, label, sold }: TubePlan): void {
  sheet.gap()
  sheet.heading('Form tubes and what they are cut from')
  sheet.header([label, '>As sold', '>Left over', 'Cut to'], false)
  for (const [i, { cuts, offcut }] of plan.boards.entries())
    sheet.row([
      text(`Piece ${i + 1}`),
      text(`${toFeet(sold)} ft`, { right: true }),
      text(offcut === 0 ? '' : printLength(offcut), { right: true }),
      text(cuts.map(({ mark, length }) => `${mark} ${printLength(length)}`).join(' + '), { span: 7 }),
    ])
}

function writeDigging(sheet: SheetBuilder, { estimate, book }: Source): void {
  sheet.gap()
  sheet.heading('Digging by soil')
  sheet.note(
    'Worker hours, and their wages with the hire of the tool, for all holes. No auger bores rock: it is broken out with a hired breaker, at hours that rest on common practice; ask for a price of yours.',
  )
  sheet.header(['Soil', '>By hand, h', '>Cost', '>Two-person, h', '>Cost', '>Machine, h', '>Cost'], false)
  const ways = diggingWays(estimate, book)
  for (const soil of new Set(ways.map((way) => way.soil)))
    sheet.row([
      text(soil, { bold: soil === estimate.job.site.soil }),
      ...ways
        .filter((way) => way.soil === soil)
        .flatMap((way) => [
          number(way.workerHours / 1000, 'hours'),
          number(dollars(way.cost), 'money', { bold: way.stated }),
        ]),
    ])
}
