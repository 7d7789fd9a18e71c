import { IRC_LIMITS } from '../data/index.ts'
import { type Ticks, ticks } from '../units/index.ts'
import type { BeamFacts, CheckContext } from './context.ts'
import { byLimit, length, worse } from './finding.ts'
import { judge } from './judge.ts'
import type { Check, Finding } from './types.ts'
import { feetInches } from './words.ts'

/** Overhang of each beam past its end posts against a quarter of the span beside it, IRC 2021 R507.5. */
export function checkBeamOverhangs(context: CheckContext): readonly Check[] {
  return context.beams.filter((facts) => facts.spans.length > 0).map((facts) => checkOne(context, facts))
}

function checkOne(context: CheckContext, facts: BeamFacts): Check {
  const { beam } = facts
  const [left, right] = facts.overhangs
  const ends = [atEnd(left, facts.spans[0] ?? ticks(0)), atEnd(right, facts.spans.at(-1) ?? ticks(0))]
  return judge(context.job, {
    id: `beam-overhang-${beam.beam}`,
    title: 'Beam overhang',
    subjects: [beam.id, ...beam.plyIds],
    fields: [`frame.beams.${beam.beam}.inset`, `frame.beams.${beam.beam}.posts`],
    prescriptive: ends.reduce<Finding | null>(worse, null),
    calculated: null,
    good: (share) => `The ${beam.beam} beam uses ${share} of its overhang.`,
    bad: `The ${beam.beam} beam overhangs its end post by ${feetInches(ticks(Math.max(left, right)))}; that is too far.`,
    uncovered: `No rule covers the overhang of the ${beam.beam} beam`,
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
