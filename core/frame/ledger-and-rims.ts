import type { Job } from '../job/index.ts'
import { ticks } from '../units/index.ts'
import { type Dimensions, productOf } from './dimensions.ts'
import type { Member } from './types.ts'

/** What the ledger is fastened to: the house, which is no member of the deck. */
export const HOUSE_WALL = 'house-wall'

export function frameLedger(job: Job, d: Dimensions): readonly Member[] {
  if (job.site.attachment === 'freestanding') return []
  const { thickness } = d.joist
  return [
    {
      id: 'ledger',
      mark: 'L1',
      role: 'ledger',
      product: productOf(job, d.joist.size),
      length: ticks(d.width - 2 * thickness),
      ripTo: null,
      box: {
        x0: thickness,
        x1: d.width - thickness,
        y0: 0,
        y1: thickness,
        z0: d.joistBottom,
        z1: d.joistTop,
      },
      bearings: [HOUSE_WALL],
      cause: {
        fields: ['size.width', 'site.attachment', 'frame.joists.size'],
        ids: [],
        rule: 'Length = width − two end joists, which lap its ends (common practice, no source)',
      },
    },
  ]
}

/** Plies of the front rim and, freestanding, of the rear one; ply 1 is the outer one. */
export function frameRims(job: Job, d: Dimensions, joists: readonly string[]): readonly Member[] {
  const sides = job.site.attachment === 'freestanding' ? (['rear', 'front'] as const) : (['front'] as const)
  const plies = Array.from({ length: job.frame.rimPlies }, (_, i) => i + 1)
  return sides.flatMap((side) =>
    plies.map((ply): Member => {
      const outer = (ply - 1) * d.joist.thickness
      const inner = ply * d.joist.thickness
      return {
        id: `rim-${side}-${ply}`,
        mark: `${side === 'front' ? 'R1' : 'R2'}${plies.length > 1 ? `-${ply}` : ''}`,
        role: 'rim',
        product: productOf(job, d.joist.size),
        length: d.width,
        ripTo: null,
        box: {
          x0: 0,
          x1: d.width,
          y0: side === 'front' ? d.depth - inner : outer,
          y1: side === 'front' ? d.depth - outer : inner,
          z0: d.joistBottom,
          z1: d.joistTop,
        },
        bearings: joists,
        cause: {
          fields: ['size.width', 'frame.rimPlies', 'frame.joists.size'],
          ids: [],
          rule: 'Length = width: it covers the end joists’ ends (common practice, no source)',
        },
      }
    }),
  )
}
