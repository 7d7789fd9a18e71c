import type { LumberSize } from '../data/index.ts'
import { postFootprint } from '../layout/index.ts'
import {
  effectiveJoistSpan,
  guideBeamSpan,
  joistSpanFactor,
  type TableLookup,
  tabledBeamSpan,
} from '../rules/index.ts'
import { inches, type Ticks, ticks } from '../units/index.ts'
import { bendingLimits, loadSteps, upright } from './bending-limits.ts'
import { byCalculation } from './calculated.ts'
import type { CheckContext } from './context.ts'
import { beside, guideCaution } from './deck-guide.ts'
import { atMost } from './finding.ts'
import { judge } from './judge.ts'
import { nominalSlenderness } from './load-path.ts'
import type { BeamFacts } from './measures.ts'
import { underTables } from './tables.ts'
import type { Check, Finding } from './types.ts'
import { beamName, either, feetInches, SPECIES_NAME } from './words.ts'

/** Span of each beam, centre to centre of its posts, against IRC 2021 Table R507.5(1). */
export function checkBeamSpans(context: CheckContext): readonly Check[] {
  return context.beams.filter((facts) => facts.spans.length > 0).map((facts) => checkOne(context, facts))
}

function checkOne(context: CheckContext, facts: BeamFacts): Check {
  const { job } = context
  const { beam, joistSpan, cantilever } = facts
  const longest = ticks(Math.max(...facts.spans))
  const name = `${beam.plies}-${beam.size}`
  const factor = joistSpanFactor(cantilever / joistSpan)
  const lookup = allowed(context, facts, beam.size, beam.plies)
  const prescriptive = atMost(lookup, longest, [
    `Span, centre to centre of the posts: ${feetInches(longest)}`,
    `Joist span ${feetInches(joistSpan)}, cantilever ${feetInches(cantilever)}: factor ${factor.toFixed(3)} (Table R507.5(5), or statics where that is more)`,
    `Effective joist span ${(effectiveJoistSpan(joistSpan, cantilever) / 384).toFixed(2)} ft: ${lookup.sentence}`,
  ])
  const guide = facts.bothSides ? [] : byGuide(context, facts, longest)
  return judge(job, {
    id: `beam-span-${beam.key}`,
    title: 'Beam span',
    subjects: [beam.id, ...beam.plyIds],
    fields: [
      `frame.beams.${beam.beam}.posts`,
      `frame.beams.${beam.beam}.size`,
      `frame.beams.${beam.beam}.plies`,
      'size.width',
      'size.depth',
    ],
    prescriptive,
    paged: lookup.paged,
    calculated: calculate(context, facts),
    beside: guide,
    good: (share) => `The ${beamName(beam)} uses ${share} of its span.`,
    bad: `The ${beamName(beam)} spans ${feetInches(longest)} between posts; ${name} may not.`,
    uncovered: facts.slanting
      ? `The beam table is for joists square to their beam; the ${beamName(beam)} meets them or another beam at an angle`
      : facts.twoLevels
        ? `The beam table is for joists that lie on the beam; from the side of the ${beamName(beam)} those of a lower level hang`
        : facts.bothSides
          ? `The beam table is for joists from one side; the ${beamName(beam)} carries them from both`
          : `No table row covers a ${name} beam of ${SPECIES_NAME[job.frame.species]} at ${context.load} psf`,
    remedy: remedy(context, facts, longest),
    caution: facts.twoLevels
      ? `Joists that hang from one side twist the ${beamName(beam)}: tie every joist that lies on it down to it, and have it confirmed.`
      : guideCaution(guide),
  })
}

/** AWC DCA 6 Table 3A, which measures clear between the posts. */
function byGuide(context: CheckContext, facts: BeamFacts, longest: Ticks): readonly Finding[] {
  const { job } = context
  const { size, plies, beam } = facts.beam
  const post = postFootprint(job, job.frame.beams[beam])?.along ?? 0
  const clear = Math.max(0, longest - post)
  const lookup = guideBeamSpan(size, plies, facts.joistSpan, job.frame.species)
  return beside(context, lookup, (found) =>
    atMost(found, clear, [
      `Clear between the posts: ${feetInches(ticks(Math.floor(clear)))}`,
      found.sentence,
    ]),
  )
}

/** Bending, shear and live load deflection between posts, the worse of continuous and jointed plies. NDS 2018 3.3 to 3.5. */
function calculate(context: CheckContext, facts: BeamFacts): Finding | null {
  const reckoned = context.path.beams.find((one) => one.facts === facts)
  const limits = reckoned === undefined ? null : bendingLimits(reckoned, 'span')
  const { size, plies } = facts.beam
  if (reckoned === undefined || limits === null || !upright(nominalSlenderness(size, plies))) return null
  return byCalculation(limits, reckoned.values.source, [
    ...loadSteps(reckoned),
    'The worse of plies continuous over the posts and plies jointed over all of them',
    'CL 1: joists hold the upper edge, the posts the ends (NDS 4.4.1)',
  ])
}

function allowed(context: CheckContext, facts: BeamFacts, size: LumberSize, plies: number): TableLookup {
  const effective = effectiveJoistSpan(facts.joistSpan, facts.cantilever)
  const lookup = tabledBeamSpan(size, plies, effective, context.job.frame.species, context.spanLoad)
  if (!facts.bothSides && !facts.slanting) return underTables(context, lookup)
  const sentence = facts.slanting
    ? 'the table is for joists square to the beam'
    : 'the table is for joists from one side'
  return { kind: 'outside', paged: lookup.paged, source: lookup.source, sentence }
}

const SIZES: readonly LumberSize[] = ['2x6', '2x8', '2x10', '2x12']

function remedy(context: CheckContext, facts: BeamFacts, span: number): string {
  const { size, plies, beam } = facts.beam
  const enough = (lookup: TableLookup) =>
    lookup.kind === 'row' && lookup.value !== null && inches(lookup.value) >= span
  const deeper = SIZES.slice(SIZES.indexOf(size) + 1).find((one) =>
    enough(allowed(context, facts, one, plies)),
  )
  const thicker = [2, 3].find((n) => n > plies && enough(allowed(context, facts, size, n)))
  const ways = [
    ...(deeper === undefined ? [] : [`${plies}-${deeper}`]),
    ...(thicker === undefined ? [] : [`${thicker}-${size}`]),
    `more posts than ${context.job.frame.beams[beam].posts}`,
  ]
  return `Use ${either(ways)}.`
}
