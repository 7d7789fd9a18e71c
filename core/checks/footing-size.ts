import { guideFootingDiameter, tabledFootingDiameter } from '../rules/index.ts'
import { inches, TICKS_PER_INCH, type Ticks, ticks } from '../units/index.ts'
import type { CheckContext } from './context.ts'
import { beside } from './deck-guide.ts'
import { atLeast } from './finding.ts'
import { byReaction, byTributaryArea, type LoadedFooting, loadedFootings, widthOf } from './footing-load.ts'
import { judge } from './judge.ts'
import { type Bearing, bearingOf } from './soil.ts'
import { underTables } from './tables.ts'
import type { Check, Finding } from './types.ts'
import { feetInches, squareFeetText } from './words.ts'

/**
 * Diameter of each footing by the load on it and the soil, IRC 2021 Table R507.3.1.
 * The table is made with tributary areas, so a calculation with them stands beside it. A continuous beam can load an
 * inner post more than its area says: that is shown as well, and decides where the job goes by calculation.
 */
export function checkFootingSizes(context: CheckContext): readonly Check[] {
  return loadedFootings(context).map((one) => checkOne(context, one))
}

function checkOne(context: CheckContext, one: LoadedFooting): Check {
  const { job } = context
  const { footing, area, facts } = one
  const bearing = bearingOf(job)
  const width = widthOf(footing)
  const lookup = underTables(context, tabledFootingDiameter(area, bearing.psf, context.load))
  const prescriptive = atLeast(lookup, width, [
    `Tributary area: ${squareFeetText(area)}`,
    bearing.says,
    lookup.sentence,
  ])
  const byArea = byTributaryArea(context, one, bearing)
  const worst = byReaction(one, bearing)
  const engineered = job.code.governs === 'calculated' || prescriptive === null
  const calculated = engineered ? (worst ?? byArea) : byArea
  const needed = feetInches(neededBy(prescriptive, calculated))
  return judge(job, {
    id: `footing-size-${footing.id}`,
    title: 'Footing size',
    subjects: [footing.id],
    fields: [
      'ground.base',
      'ground.tube',
      'site.soil',
      'site.soilBearing',
      `frame.beams.${facts.beam.beam}.posts`,
    ],
    prescriptive,
    calculated,
    beside: [
      ...(worst !== null && calculated !== worst ? [worst] : [byArea]),
      ...byGuide(context, one, bearing, width),
    ],
    good: () => `Footing ${footing.number} is ${feetInches(width)} across; ${needed} is needed.`,
    bad: `Footing ${footing.number} is ${feetInches(width)} across; ${needed} is needed.`,
    uncovered: `No table row covers a footing under ${squareFeetText(area)} at ${context.load} psf on ${bearing.psf} psf`,
    remedy: `Make the base at least ${needed} across, or use more posts.`,
    caution: [bearing.caution, engineered ? '' : beyondTable(worst, width)]
      .filter((text) => text !== '')
      .join(' '),
  })
}

/** AWC DCA 6 Table 4, which counts the concrete's weight and quarter-span overhangs. */
function byGuide(
  context: CheckContext,
  { facts }: LoadedFooting,
  bearing: Bearing,
  width: Ticks,
): readonly Finding[] {
  const span = ticks(Math.max(0, ...facts.spans))
  return beside(context, guideFootingDiameter(span, facts.joistSpan, bearing.psf), (found) =>
    atLeast(found, width, [bearing.says, found.sentence]),
  )
}

/** Up to the next inch, as a base is formed. */
function neededBy(prescriptive: Finding | null, calculated: Finding): Ticks {
  return wholeInch(ticks(Math.max(prescriptive?.demand.value ?? 0, calculated.demand.value)))
}

function wholeInch(size: Ticks): Ticks {
  return inches(Math.ceil(size / TICKS_PER_INCH))
}

/** What to say where the table is met and the worst reaction is not. */
function beyondTable(worst: Finding | null, width: Ticks): string {
  if (worst === null || worst.demand.value <= width) return ''
  const needed = wholeInch(ticks(worst.demand.value))
  return `With the live load placed worst on a continuous beam ${feetInches(needed)} would be needed: a larger base is safer.`
}
