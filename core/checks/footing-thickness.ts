import { guideFootingThickness } from '../rules/index.ts'
import { ticks } from '../units/index.ts'
import type { CheckContext } from './context.ts'
import { beside } from './deck-guide.ts'
import { atLeast } from './finding.ts'
import { type LoadedFooting, loadedFootings } from './footing-load.ts'
import { judge } from './judge.ts'
import { bearingOf } from './soil.ts'
import { thicknessFindings } from './thickness-findings.ts'
import type { Check } from './types.ts'
import { feetInches, squareFeetText } from './words.ts'

/** Thickness of each footing, IRC 2021 Table R507.3.1; a tube without a base is as thick as it is long. */
export function checkFootingThicknesses(context: CheckContext): readonly Check[] {
  return loadedFootings(context).map((one) => checkOne(context, one))
}

function checkOne(context: CheckContext, { footing, area, facts }: LoadedFooting): Check {
  const bearing = bearingOf(context.job)
  const { thickness, prescriptive, calculated, paged, least } = thicknessFindings(context, footing, area, [
    `Tributary area: ${squareFeetText(area)}`,
  ])
  return judge(context.job, {
    id: `footing-thickness-${footing.id}`,
    title: 'Footing thickness',
    subjects: [footing.id],
    fields: ['ground.baseThickness', 'ground.base', 'ground.tube', 'site.soilBearing'],
    prescriptive,
    calculated,
    paged,
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
