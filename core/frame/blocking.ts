import type { Job } from '../job/index.ts'
import type { SupportLine } from '../layout/index.ts'
import { inches, type Ticks, ticks } from '../units/index.ts'
import { type Dimensions, productOf } from './dimensions.ts'
import { joistIds } from './joists.ts'
import type { Member } from './types.ts'

/** A bay with less clear width than this gets no block: common practice, no source. */
const LEAST_CLEAR = inches(3)

/** Bays of a beam that get no block, and why, beside the blocks. */
export interface Blocking {
  readonly blocks: readonly Member[]
  readonly leftOut: readonly { readonly bay: number; readonly clear: Ticks }[]
}

/** Solid blocks between the joists over one beam, each as long as its bay is clear. */
export function frameBlocking(
  job: Job,
  d: Dimensions,
  line: SupportLine,
  beam: 'front' | 'rear',
  centres: readonly Ticks[],
): Blocking {
  if (job.frame.blocking === 'none' || rimStandsOver(d, line)) return { blocks: [], leftOut: [] }
  const ids = joistIds(centres.length)
  const blocks: Member[] = []
  const leftOut: { bay: number; clear: Ticks }[] = []
  for (let bay = 1; bay < centres.length; bay++) {
    const left = (centres[bay - 1] ?? 0) + d.joist.thickness / 2
    const clear = ticks((centres[bay] ?? 0) - d.joist.thickness / 2 - left)
    if (clear < LEAST_CLEAR) {
      leftOut.push({ bay, clear })
      continue
    }
    blocks.push({
      id: `blocking-${beam}-${bay}`,
      mark: `${beam === 'front' ? 'K' : 'KR'}${bay}`,
      role: 'blocking',
      product: productOf(job, d.joist.size),
      length: clear,
      ripTo: null,
      box: {
        x0: left,
        x1: left + clear,
        y0: line.y - d.joist.thickness / 2,
        y1: line.y + d.joist.thickness / 2,
        z0: d.joistBottom,
        z1: d.joistTop,
      },
      bearings: [ids[bay - 1] ?? '', ids[bay] ?? ''],
      cause: {
        fields: ['frame.blocking', 'frame.joists.spacing', 'size.width'],
        ids: [`beam-${beam}`, ids[bay - 1] ?? '', ids[bay] ?? ''],
        rule: 'Length = the bay’s clear width; it holds the joists upright over the beam (IRC 2021 R507.6.2)',
      },
    })
  }
  return { blocks, leftOut }
}

/** Where a rim lies over the beam it holds the joists upright itself, and leaves a block no room. */
function rimStandsOver(d: Dimensions, line: SupportLine): boolean {
  const half = d.joist.thickness / 2
  return line.y + half > d.joistsTo || line.y - half < d.joistsFrom
}
