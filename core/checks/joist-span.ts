import type { LumberSize } from '../data/index.ts'
import { type TableLookup, tabledJoistSpan } from '../rules/index.ts'
import { inches, type Ticks } from '../units/index.ts'
import { bendingLimits, loadSteps, upright } from './bending-limits.ts'
import { byCalculation } from './calculated.ts'
import type { CheckContext, JoistContext } from './context.ts'
import { atMost } from './finding.ts'
import { joistsNamed } from './hanging-joists.ts'
import { judge } from './judge.ts'
import { nominalSlenderness } from './load-path.ts'
import { underTables } from './tables.ts'
import type { Check, Finding } from './types.ts'
import { either, feetInches, SPECIES_NAME, spacingText } from './words.ts'

/** Clear span of the joists against IRC 2021 Table R507.6. */
export function checkJoistSpan(context: JoistContext): Check {
  const { job } = context
  const { size, spacing } = job.frame.joists
  const longest = context.spans.reduce((a, b) => (b.clear > a.clear ? b : a))
  const lookup = underTables(context, allowed(context, size, spacing))
  const prescriptive = atMost(lookup, longest.clear, [
    `Clear span, face to face of the supports: ${feetInches(longest.clear)}`,
    `${SPECIES_NAME[job.frame.species]} ${job.frame.grade}, ${size} at ${spacingText(spacing)}, ${context.load} psf: ${lookup.sentence}`,
  ])
  return judge(job, {
    id: `joist-span${context.suffix}`,
    title: 'Joist span',
    subjects: context.joistIds,
    fields: ['size.depth', 'frame.joists.size', 'frame.joists.spacing', 'frame.beams.front.setback'],
    prescriptive,
    paged: lookup.paged,
    calculated: calculate(context),
    good: (share) => `${joistsNamed(context)} use ${share} of their span.`,
    bad: `${joistsNamed(context)} span ${feetInches(longest.clear)}; ${size} at ${spacingText(spacing)} may not.`,
    uncovered: `No table row covers ${size} joists of ${SPECIES_NAME[job.frame.species]} at ${spacingText(spacing)} and ${context.load} psf`,
    remedy: remedy(context, longest.clear),
    caution: '',
  })
}

/** Bending, shear and live load deflection of the joists' spans, by exact analysis. NDS 2018 3.3 to 3.5. */
function calculate(context: JoistContext): Finding | null {
  const { joist } = context
  const limits = joist === null ? null : bendingLimits(joist, 'span')
  if (joist === null || limits === null || !upright(nominalSlenderness(context.job.frame.joists.size, 1)))
    return null
  return byCalculation(limits, joist.values.source, [
    ...loadSteps(joist),
    'CL 1: decking holds the upper edge (NDS 4.4.1)',
  ])
}

function allowed(context: CheckContext, size: LumberSize, spacing: Ticks): TableLookup {
  return tabledJoistSpan(size, spacing, context.job.frame.species, context.spanLoad)
}

const SIZES: readonly LumberSize[] = ['2x6', '2x8', '2x10', '2x12']

/** The next size at the same spacing, or the next spacing in the same size, that the table allows. */
function remedy(context: CheckContext, span: Ticks): string {
  const { size, spacing } = context.job.frame.joists
  const enough = (lookup: TableLookup) =>
    lookup.kind === 'row' && lookup.value !== null && inches(lookup.value) >= span
  const larger = SIZES.slice(SIZES.indexOf(size) + 1).find((one) => enough(allowed(context, one, spacing)))
  const closer = [inches(16), inches(12)].find((one) => one < spacing && enough(allowed(context, size, one)))
  const ways = [
    ...(larger === undefined ? [] : [`${larger} at ${spacingText(spacing)}`]),
    ...(closer === undefined ? [] : [`${size} at ${spacingText(closer)}`]),
    'a beam nearer the house',
  ]
  return `Use ${either(ways)}.`
}
