import { guideFootingDiameter, soilPressure, tabledFootingDiameter } from '../rules/index.ts'
import { type Ticks, ticks, toInches } from '../units/index.ts'
import type { CheckContext } from './context.ts'
import { beside } from './deck-guide.ts'
import { atLeast } from './finding.ts'
import {
  byReaction,
  byTributaryArea,
  type LoadedFooting,
  loadedFootings,
  toWholeInch,
  widthOf,
} from './footing-load.ts'
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
  const beyond = engineered || worst === null || worst.demand.value <= width ? null : worst
  const inRow =
    beyond === null
      ? ''
      : ` by the area that it carries, ${feetInches(toWholeInch(beyond.demand.value))} by the beam’s greatest reaction: see the remark`
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
    paged: lookup.paged,
    calculated,
    beside: [
      ...(worst !== null && calculated !== worst ? [worst] : [byArea]),
      ...byGuide(context, one, bearing, width),
    ],
    good: () => `Footing ${footing.number} is ${feetInches(width)} across; ${needed} is needed${inRow}.`,
    bad: `Footing ${footing.number} is ${feetInches(width)} across; ${needed} is needed.`,
    uncovered: `No table row covers a footing under ${squareFeetText(area)} at ${context.load} psf on ${bearing.psf} psf`,
    remedy: `Make the base at least ${needed} across, or use more posts.`,
    caution: [bearing.caution, beyond === null ? '' : beyondTable(one, beyond, bearing, width)]
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

function neededBy(prescriptive: Finding | null, calculated: Finding): Ticks {
  return toWholeInch(Math.max(prescriptive?.demand.value ?? 0, calculated.demand.value))
}

/** What to say where the table is met and the worst reaction is not: which footing, by how much, and what would do. */
function beyondTable(
  { footing, reaction }: LoadedFooting,
  worst: Finding,
  bearing: Bearing,
  width: Ticks,
): string {
  const pressure = soilPressure(Math.max(0, reaction ?? 0), toInches(width))
  const needed = feetInches(toWholeInch(worst.demand.value))
  return `Footing ${footing.number}: with the live load placed worst on its continuous beam it presses ${Math.ceil(pressure - 1e-6)} psf on soil that carries ${bearing.psf}, and ${needed} would be needed: make its base that wide.`
}
