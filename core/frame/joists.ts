import type { Job } from '../job/index.ts'
import { type Ticks, ticks } from '../units/index.ts'
import { type Dimensions, productOf } from './dimensions.ts'
import type { Box, Cause, Member } from './types.ts'

/** Joists and the two end joists, from left to right. */
export function frameJoists(
  job: Job,
  d: Dimensions,
  centres: readonly Ticks[],
  supports: readonly string[],
): readonly Member[] {
  const last = centres.length - 1
  return centres.map((centre, line) => {
    const end = line === 0 || line === last
    const from = end ? d.endJoistsFrom : d.joistsFrom
    return {
      ...(end
        ? endJoistNames(line === 0)
        : { id: `joist-${line}`, mark: `J${line}`, role: 'joist' as const }),
      product: productOf(job, d.joist.size),
      length: ticks(d.joistsTo - from),
      ripTo: null,
      box: joistBox(d, centre, from),
      bearings: supports,
      cause: end ? endJoistCause(job) : joistCause(job),
    }
  })
}

/** Ids of the joist lines in order, end joists included. */
export function joistIds(lines: number): readonly string[] {
  return Array.from({ length: lines }, (_, line) =>
    line === 0 ? 'end-joist-left' : line === lines - 1 ? 'end-joist-right' : `joist-${line}`,
  )
}

function endJoistNames(left: boolean) {
  return {
    id: left ? 'end-joist-left' : 'end-joist-right',
    mark: left ? 'E1' : 'E2',
    role: 'end joist' as const,
  }
}

function joistBox(d: Dimensions, centre: Ticks, from: Ticks): Box {
  const half = d.joist.thickness / 2
  return { x0: centre - half, x1: centre + half, y0: from, y1: d.joistsTo, z0: d.joistBottom, z1: d.joistTop }
}

function joistCause(job: Job): Cause {
  return {
    fields: ['size.depth', 'size.width', 'frame.joists.spacing', 'frame.joists.layoutFrom', 'frame.rimPlies'],
    ids: job.site.attachment === 'ledger' ? ['ledger', 'rim-front-1'] : ['rim-rear-1', 'rim-front-1'],
    rule:
      job.site.attachment === 'ledger'
        ? 'Length = depth − ledger − rim; one at every spacing from the end joist’s outer face (common practice, no source)'
        : 'Length = depth − two rims; one at every spacing from the end joist’s outer face (common practice, no source)',
  }
}

function endJoistCause(job: Job): Cause {
  return {
    fields: ['size.depth', 'frame.rimPlies', 'site.attachment'],
    ids: job.site.attachment === 'ledger' ? ['rim-front-1'] : ['rim-rear-1', 'rim-front-1'],
    rule:
      job.site.attachment === 'ledger'
        ? 'Length = depth − rim: it laps the ledger’s end (common practice, no source)'
        : 'Length = depth − two rims (common practice, no source)',
  }
}
