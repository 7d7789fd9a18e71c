import type { Design } from './estimate-types.ts'
import type { Line } from './pricing/index.ts'
import { UNDER_PAD } from './takeoff/index.ts'
import { type Cents, cents, TICKS_PER_FOOT } from './units/index.ts'

/** Lines of concrete, bought by the bag or by the truck. */
const CONCRETE = new Set(['good-concrete-bag-80lb', 'good-concrete-ready-mix', 'good-ready-mix-short-load'])

/**
 * What of the lines of concrete and gravel the stairs ask for, by volume: both are bought once for deck and stairs, and
 * their lines stand with the deck's.
 */
export function stairsShare(
  { stairs, takeoff, frame }: Pick<Design, 'stairs' | 'takeoff' | 'frame'>,
  lines: readonly Line[],
): Cents {
  const { concrete, concreteEach } = takeoff.volumes
  const footings = new Set(frame.footings.map(({ id }) => id))
  const ofDeck = concreteEach.filter(({ footingId }) => footings.has(footingId))
  const ofConcrete = shareOf(concrete - sum(ofDeck.map(({ cubicFeet }) => cubicFeet)), concrete)
  const underPads = sum(
    stairs.map(({ pad }) => (pad === null ? 0 : (pad.width * pad.depth * UNDER_PAD) / TICKS_PER_FOOT ** 3)),
  )
  const gravel = takeoff.goods.find(({ sku }) => sku === 'gravel')?.thousandths ?? 0
  const ofGravel = shareOf(underPads, gravel / 1000)
  const amounts = lines.map(({ id, amount }) => {
    if (CONCRETE.has(id)) return amount * ofConcrete
    return id === 'good-gravel' ? amount * ofGravel : 0
  })
  return cents(Math.round(sum(amounts)))
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, one) => total + one, 0)
}

function shareOf(part: number, whole: number): number {
  return whole === 0 ? 0 : Math.min(1, part / whole)
}
