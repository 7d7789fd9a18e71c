import type { Footing } from '../frame/index.ts'
import { footingThickness, tabledFootingThickness } from '../rules/index.ts'
import { ceilTicks, TICKS_PER_INCH, type Ticks, ticks, toInches } from '../units/index.ts'
import type { CheckContext } from './context.ts'
import { atLeast, length, over } from './finding.ts'
import { bearingOf } from './soil.ts'
import { underTables } from './tables.ts'
import type { Finding } from './types.ts'
import { feetInches } from './words.ts'

interface Thickness {
  readonly thickness: Ticks
  readonly prescriptive: Finding | null
  readonly calculated: Finding
  /** the table has a page for it */
  readonly paged: boolean
  /** the larger of what table and calculation ask for, in words */
  readonly least: string
}

/**
 * Thickness of a footing under so many sq ft, both ways: IRC 2021 Table R507.3.1 and the projection of R403.1.1. A tube
 * without a base is as thick as it is long.
 * @param areaSteps how the area came about
 */
export function thicknessFindings(
  context: CheckContext,
  { base, baseThickness, tube, tubeLength }: Pick<Footing, 'base' | 'baseThickness' | 'tube' | 'tubeLength'>,
  area: number,
  areaSteps: readonly string[],
): Thickness {
  const bearing = bearingOf(context.job)
  const thickness = base > 0 ? baseThickness : tubeLength
  const lookup = underTables(context, tabledFootingThickness(area, bearing.psf, context.load))
  const prescriptive = atLeast(lookup, thickness, [
    ...areaSteps,
    bearing.says,
    `${lookup.sentence}; the table stands a 6x6 post on the footing`,
  ])
  const needed = ceilTicks(footingThickness(toInches(base), toInches(tube)) * TICKS_PER_INCH)
  const calculated: Finding = {
    method: 'calculated',
    document: 'IRC',
    edition: '2021',
    clause: 'R403.1.1',
    demand: length(needed),
    capacity: length(thickness),
    ratio: over(needed, thickness),
    confidence: 'computed only',
    lookup: 'Projection of the base beyond the tube, 6 in at least',
    steps: [
      base > 0
        ? `Base ${feetInches(base)} under a tube of ${feetInches(tube)}: projection ${toInches(base - tube) / 2} in`
        : 'No base: the tube stands on the ground and has no projection',
    ],
  }
  const least = feetInches(ticks(Math.max(prescriptive?.demand.value ?? 0, needed)))
  return { thickness, prescriptive, calculated, paged: lookup.paged, least }
}
