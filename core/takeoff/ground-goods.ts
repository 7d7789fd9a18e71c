import { bagYieldSource, cite } from '../data/index.ts'
import type { Frame } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import { printShare, toFeet, toInches } from '../units/index.ts'
import type { GoodShare } from './tally.ts'
import type { Volumes } from './types.ts'

/** Form tubes are sold in 4 ft pieces: common practice, no source. */
const TUBE_PIECE_FEET = 4

/** Tubes, base forms and bags of mix. */
export function groundGoods(job: Job, frame: Frame, volumes: Volumes): readonly GoodShare[] {
  const ids = frame.footings.map((footing) => footing.id)
  const bases = frame.footings.filter((footing) => footing.base > 0)
  return [
    tubes(frame),
    {
      sku: 'footing-base-form',
      quantity: bases.length,
      cause: { fields: ['ground.base', 'ground.baseThickness'], ids, rule: 'One form per base under a tube' },
    },
    {
      sku: 'concrete-bag-80lb',
      quantity: volumes.bags,
      cause: {
        fields: [
          'ground.tube',
          'ground.base',
          'ground.baseThickness',
          'site.frostDepth',
          'ground.concreteWaste',
        ],
        ids,
        rule: `${volumes.concrete.toFixed(2)} cu ft + ${printShare(job.ground.concreteWaste)} ÷ 0.6 cu ft a bag (${cite(bagYieldSource)}), rounded up once`,
      },
    },
  ]
}

/** Feet of tube bought: a tube of 4 ft or less is cut whole from a piece, a longer one is butted from pieces. */
function tubes(frame: Frame): GoodShare {
  const first = frame.footings[0]
  if (first === undefined) throw new Error('a deck stands on footings')
  const lengths = frame.footings.map((footing) => toFeet(footing.tubeLength))
  return {
    sku: `form-tube-${toInches(first.tube)}in`,
    quantity: tubePieces(lengths) * TUBE_PIECE_FEET,
    cause: {
      fields: ['ground.tube', 'site.frostDepth', 'ground.projection', 'ground.baseThickness'],
      ids: frame.footings.map((footing) => footing.id),
      rule: `Tube = depth + projection − base, ${toInches(first.tubeLength)} in each, cut from 4 ft pieces`,
    },
  }
}

/** Pieces bought for tubes of equal make: what is left of one piece serves the next hole where it is long enough. */
export function tubePieces(feet: readonly number[]): number {
  let pieces = 0
  let rests: number[] = []
  for (const length of feet.toSorted((a, b) => b - a)) {
    const whole = Math.floor(length / TUBE_PIECE_FEET)
    const over = length - whole * TUBE_PIECE_FEET
    pieces += whole
    if (over === 0) continue
    const found = rests.findIndex((rest) => rest >= over)
    if (found >= 0) rests = rests.map((rest, i) => (i === found ? rest - over : rest))
    else {
      pieces += 1
      rests.push(TUBE_PIECE_FEET - over)
    }
  }
  return pieces
}
