import { sectionOf } from '../data/index.ts'
import type { Frame } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import { TICKS_PER_FOOT, toFeet } from '../units/index.ts'
import type { GoodShare } from './tally.ts'

/** End grain that one quart of preservative coats, square feet: common practice, no source. */
const END_GRAIN_PER_QUART = 20

/** Flashing and membrane at the ledger, preservative for cut ends. */
export function otherGoods(job: Job, frame: Frame): readonly GoodShare[] {
  const flashed = frame.members
    .filter((member) => member.role === 'ledger')
    .flatMap((ledger) =>
      ['ledger-flashing', 'ledger-membrane'].map((sku) => ({
        sku,
        quantity: toFeet(ledger.length),
        cause: {
          fields: ['size.width', 'site.attachment'],
          ids: [ledger.id],
          rule: 'As long as the ledger (IRC 2021 R507.2.4: flashing where a deck meets a wall)',
        },
      })),
    )
  if (job.frame.treatment === 'untreated') return flashed
  return [
    ...flashed,
    {
      sku: 'end-cut-preservative',
      quantity: endGrainSquareFeet(frame) / END_GRAIN_PER_QUART,
      cause: {
        fields: ['frame.treatment'],
        ids: [],
        rule: 'Both ends of every member coated, 20 sq ft of end grain a quart (field treatment: IRC 2021 R317.1.1; coverage: common practice, no source)',
      },
    },
  ]
}

function endGrainSquareFeet(frame: Frame): number {
  return frame.members.reduce((sum, member) => {
    const { thickness, depth } = sectionOf(member.product.size)
    return sum + (2 * thickness * (member.ripTo ?? depth)) / TICKS_PER_FOOT ** 2
  }, 0)
}
