import { footingThickness, guideFootingThickness, tabledFootingThickness } from '../rules/index.ts'
import { ceilTicks, TICKS_PER_INCH, ticks, toInches } from '../units/index.ts'
import type { CheckContext } from './context.ts'
import { beside } from './deck-guide.ts'
import { atLeast, length, over } from './finding.ts'
import { type LoadedFooting, loadedFootings } from './footing-load.ts'
import { judge } from './judge.ts'
import { bearingOf } from './soil.ts'
import { underTables } from './tables.ts'
import type { Check, Finding } from './types.ts'
import { feetInches, squareFeetText } from './words.ts'

/** Thickness of each footing, IRC 2021 Table R507.3.1; a tube without a base is as thick as it is long. */
export function checkFootingThicknesses(context: CheckContext): readonly Check[] {
  return loadedFootings(context).map((one) => checkOne(context, one))
}

function checkOne(context: CheckContext, { footing, area, facts }: LoadedFooting): Check {
  const bearing = bearingOf(context.job)
  const thickness = footing.base > 0 ? footing.baseThickness : footing.tubeLength
  const lookup = underTables(context, tabledFootingThickness(area, bearing.psf, context.load))
  const prescriptive = atLeast(lookup, thickness, [
    `Tributary area: ${squareFeetText(area)}`,
    bearing.says,
    `${lookup.sentence}; the table stands a 6x6 post on the footing`,
  ])
  const needed = ceilTicks(footingThickness(toInches(footing.base), toInches(footing.tube)) * TICKS_PER_INCH)
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
      footing.base > 0
        ? `Base ${feetInches(footing.base)} under a tube of ${feetInches(footing.tube)}: projection ${toInches(footing.base - footing.tube) / 2} in`
        : 'No base: the tube stands on the ground and has no projection',
    ],
  }
  const least = feetInches(ticks(Math.max(prescriptive?.demand.value ?? 0, needed)))
  return judge(context.job, {
    id: `footing-thickness-${footing.id}`,
    title: 'Footing thickness',
    subjects: [footing.id],
    fields: ['ground.baseThickness', 'ground.base', 'ground.tube', 'site.soilBearing'],
    prescriptive,
    calculated,
    beside: beside(
      context,
      guideFootingThickness(ticks(Math.max(0, ...facts.spans)), facts.joistSpan, bearing.psf),
      (found) => atLeast(found, thickness, [found.sentence, 'The guide stands a 6x6 post on the footing']),
    ),
    good: () => `Footing ${footing.number} is ${feetInches(thickness)} thick; ${least} is enough.`,
    bad: `Footing ${footing.number} is ${feetInches(thickness)} thick; ${least} is needed.`,
    uncovered: `No table row covers the thickness of a footing under ${squareFeetText(area)} at ${context.load} psf`,
    remedy: `Make the base at least ${least} thick.`,
    caution: '',
  })
}
