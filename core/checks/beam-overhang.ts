import { IRC_LIMITS } from '../data/index.ts'
import { type Ticks, ticks } from '../units/index.ts'
import { bendingLimits, loadSteps } from './bending-limits.ts'
import { byCalculation } from './calculated.ts'
import type { CheckContext } from './context.ts'
import { byLimit, length, worse } from './finding.ts'
import { judge } from './judge.ts'
import type { BeamFacts } from './measures.ts'
import type { Check, Finding } from './types.ts'
import { beamName, feetInches } from './words.ts'

/** Overhang of each beam past its end posts against a quarter of the span beside it, IRC 2021 R507.5. */
export function checkBeamOverhangs(context: CheckContext): readonly Check[] {
  return context.beams.filter((facts) => facts.spans.length > 0).map((facts) => checkOne(context, facts))
}

function checkOne(context: CheckContext, facts: BeamFacts): Check {
  const { beam } = facts
  const [left, right] = facts.overhangs
  const ends = [atEnd(left, facts.spans[0] ?? ticks(0)), atEnd(right, facts.spans.at(-1) ?? ticks(0))]
  return judge(context.job, {
    id: `beam-overhang-${beam.key}`,
    title: 'Beam overhang',
    subjects: [beam.id, ...beam.plyIds],
    fields: [`frame.beams.${beam.beam}.inset`, `frame.beams.${beam.beam}.posts`],
    prescriptive: ends.reduce<Finding | null>(worse, null),
    calculated: calculate(context, facts),
    good: (share) => `The ${beamName(beam)} uses ${share} of its overhang.`,
    bad: `The ${beamName(beam)} overhangs its end post by ${feetInches(ticks(Math.max(left, right)))}; that is too far.`,
    uncovered: `No rule covers the overhang of the ${beamName(beam)}`,
    remedy: 'Set the end posts nearer the ends of the beam, or use fewer posts.',
    caution: '',
  })
}

function atEnd(overhang: Ticks, span: Ticks): Finding {
  const quarter = Math.floor(span * IRC_LIMITS.overhangShare.value)
  return byLimit(IRC_LIMITS.overhangShare, length(overhang), length(quarter), [
    `Overhang, beam's end to the centre of the end post: ${feetInches(overhang)}`,
    `A quarter of the adjacent span of ${feetInches(span)}: ${feetInches(ticks(quarter))}`,
  ])
}

/** Bending and shear at the end posts and deflection of the ends. NDS 2018 3.3 to 3.5. */
function calculate(context: CheckContext, facts: BeamFacts): Finding | null {
  const reckoned = context.path.beams.find((one) => one.facts === facts)
  const limits = reckoned === undefined ? null : bendingLimits(reckoned, 'overhang')
  if (reckoned === undefined || limits === null) return null
  return byCalculation(limits, reckoned.values.source, loadSteps(reckoned))
}
