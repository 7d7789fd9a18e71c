import { bearingOf } from '../../checks/index.ts'
import { BAG_YIELD_THOUSANDTHS } from '../../data/index.ts'
import type { Design } from '../../estimate-types.ts'
import { type FootingRow, footingSchedule, isBeforeOneWall, overallEdges } from '../../ground/index.ts'
import { printInches, printLength, ticks } from '../../units/index.ts'
import { offsetText } from '../offset-text.ts'
import { holdsOnHole, waitingHoles } from '../order/waiting-holes.ts'
import type { PaperTable } from '../types.ts'
import { tableOf } from './table.ts'

/** Never a figure that nothing here works out. */
const NOT_RECKONED = 'not reckoned'
/** Under stairs no beam goes on over a footing: no live load elsewhere makes its share greater. */
const ONE_SPAN = 'one span: as the load'

/** The footing schedule: place, levels, sizes, load and soil pressure of every footing, and the post on it. */
export function footingScheduleTable(design: Design): PaperTable {
  const around = !isBeforeOneWall(design)
  const { front } = overallEdges(design.layout)
  const waiting = waitingHoles(design)
  return tableOf(
    'footings',
    'Footing schedule',
    [
      ['number', 'No.', 'right'],
      ['along', around ? 'From left edge' : 'Along wall', 'right'],
      ['away', around ? 'From front edge' : 'From wall', 'right'],
      ['ground', 'Ground', 'right'],
      ['bottom', 'Bottom', 'right'],
      ['depth', 'Depth', 'right'],
      ['hole', 'Hole across', 'right'],
      ['tube', 'Tube', 'right'],
      ['base', 'Base', 'right'],
      ['top', 'Top of concrete', 'right'],
      ['concrete', 'Concrete', 'right'],
      ...(design.job.ground.concrete === 'bags' ? ([['bags', '80 lb bags', 'right']] as const) : []),
      ['load', 'Load', 'right'],
      ['worst', 'Greatest reaction', 'right'],
      ['pressure', 'Soil pressure', 'right'],
      ['worstPressure', 'At the greatest reaction', 'right'],
      ['bearing', 'Soil carries', 'right'],
      ['post', 'Post', 'right'],
      ...(waiting.length === 0 ? [] : ([['hold', 'Waits for', 'left']] as const)),
    ],
    footingSchedule(design).map((row) => {
      const { post, carries } = row
      return {
        number: `${row.number}`,
        hold: holdsOnHole(waiting, row.number),
        along: offsetText(row.x),
        away: offsetText(around ? front - row.y : row.y),
        ground: level(row.groundLevel),
        bottom: level(row.bottomLevel),
        depth: printInches(row.depth),
        hole: printInches(row.holeDiameter),
        tube: `${printInches(row.tube)} × ${printInches(row.tubeLength)}`,
        base: row.base === 0 ? 'none' : `${printInches(row.base)} × ${printInches(row.baseThickness)}`,
        top: level(row.topOfConcrete),
        concrete: `${row.cubicFeet.toFixed(2)} cu ft`,
        bags: bags(row.cubicFeet),
        load: carries === null ? NOT_RECKONED : `${whole(carries.load)} lb`,
        worst: worstLoad(row),
        pressure: carries === null ? NOT_RECKONED : `${whole(carries.pressure)} psf`,
        worstPressure: worstPressure(row),
        bearing: `${whole(bearingOf(design.job).psf)} psf`,
        post:
          post === null ? '' : `${row.under === 'stairs' ? `${post.mark}, ` : ''}${printLength(post.length)}`,
      }
    }),
  )
}

/** The beam's greatest reaction, or why there is none. */
function worstLoad({ carries, under }: FootingRow): string {
  if (carries === null || (carries.worst === null && under === 'deck')) return NOT_RECKONED
  return carries.worst === null ? ONE_SPAN : `${whole(carries.worst)} lb`
}

/** The greater pressure, and that it is more than the soil carries where it is. */
function worstPressure({ carries, under }: FootingRow): string {
  if (carries === null || (carries.worstPressure === null && under === 'deck')) return NOT_RECKONED
  if (carries.worstPressure === null) return ONE_SPAN
  return `${whole(carries.worstPressure)} psf${carries.worstNeeds === null ? '' : ', too much'}`
}

/** What the two loads of the schedule are; and which footings the greater of them is too much for. */
export function footingLoadWords(design: Design): {
  readonly explains: string
  readonly cautions: readonly string[]
} {
  return {
    explains: `Load: the area that a post carries times live or snow load and dead load, as the code’s table of footings reckons; soil pressure is under it. Greatest reaction: what the beam, continuous over its posts, brings to one of them with the live load placed worst.${onDeck(design)}`,
    cautions: footingSchedule(design).flatMap(({ number, carries }) =>
      carries === null || carries.worstNeeds === null || carries.worstPressure === null
        ? []
        : [
            `Footing ${number}: at the greatest reaction it presses ${whole(carries.worstPressure)} psf on soil that carries ${whole(carries.bearing)}: make its base ${printLength(carries.worstNeeds)} across.`,
          ],
    ),
  }
}

/** What of these loads stairs that hang on the deck bring, as their checks say it. */
function onDeck({ checks }: Design): string {
  const told = checks.filter(({ id }) => id.startsWith('stair-head-load')).map(({ message }) => message)
  return told.length === 0
    ? ''
    : ` The stairs that hang on the deck are in the greatest reaction and not in the load: ${told.join(' ')}`
}

/** Bags for one hole without waste, rounded up to a tenth: what is left of one goes into the next hole. */
function bags(cubicFeet: number): string {
  return (Math.ceil((cubicFeet * 10_000) / BAG_YIELD_THOUSANDTHS - 1e-9) / 10).toFixed(1)
}

/** A height against the datum, to the nearest 1/32 in, with its sign. */
function level(height: number): string {
  const rounded = ticks(Math.round(height))
  return rounded > 0 ? `+${printInches(rounded)}` : printInches(rounded)
}

/** Rounded up: what presses is never shown smaller than it is. */
function whole(quantity: number): string {
  return `${Math.ceil(quantity - 1e-6)}`.replace(/\B(?=(?:\d{3})+$)/g, ',')
}
