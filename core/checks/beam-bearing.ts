import { IRC_LIMITS } from '../data/index.ts'
import { beamThickness, postFootprint } from '../layout/index.ts'
import { bearingStress } from '../rules/index.ts'
import { inches, ticks, toInches } from '../units/index.ts'
import { byCalculation } from './calculated.ts'
import type { CheckContext } from './context.ts'
import { byLimit, length } from './finding.ts'
import { judge } from './judge.ts'
import type { BeamFacts } from './measures.ts'
import type { Check, Finding } from './types.ts'
import { beamName, feetInches } from './words.ts'

type Footprint = NonNullable<ReturnType<typeof postFootprint>>

/**
 * Bearing of each ply on its posts: 1-1/2 in for each end where a ply is jointed over a post, IRC 2021 R507.5.1,
 * and the whole thickness of the beam on the post.
 */
export function checkBeamBearings(context: CheckContext): readonly Check[] {
  return context.beams.map((facts) => checkOne(context, facts))
}

function checkOne(context: CheckContext, facts: BeamFacts): Check {
  const { job } = context
  const { beam, posts } = facts
  const spec = job.frame.beams[beam.beam]
  const footprint = postFootprint(job, spec)
  const each = ticks(Math.floor((footprint?.along ?? 0) / 2))
  const least = inches(IRC_LIMITS.bearingOnWood.value)
  const steps = [
    `Beam ${feetInches(beamThickness(spec))} thick on a ${job.frame.postSize} post`,
    `Half of the post for each end of a jointed ply: ${feetInches(each)}`,
    `Least bearing on wood or metal: ${feetInches(least)}`,
  ]
  return judge(job, {
    id: `beam-bearing-${beam.key}`,
    title: 'Beam bearing',
    subjects: [beam.id, ...posts.map((post) => post.id)],
    fields: ['frame.postSize', `frame.beams.${beam.beam}.plies`],
    prescriptive: byLimit(IRC_LIMITS.bearingOnWood, length(least), length(each), steps),
    calculated: footprint === null ? null : calculate(context, facts, footprint),
    good: () => `The ${beamName(beam)} bears fully; a jointed ply has ${feetInches(each)} for each end.`,
    bad:
      footprint === null
        ? `The ${beamName(beam)} is thicker than a ${job.frame.postSize} post is wide.`
        : `A ply of the ${beamName(beam)} jointed over a post has only ${feetInches(each)} for each end.`,
    uncovered: `No rule covers the bearing of the ${beamName(beam)}`,
    remedy: 'Use larger posts.',
    caution: '',
  })
}

/**
 * Stress across the grain where the beam stands on the most loaded post: on the lesser of beam and post width, over the
 * post's length. Cb is 1, for a ply may end there. NDS 2018 3.10.2.
 */
function calculate(context: CheckContext, facts: BeamFacts, footprint: Footprint): Finding | null {
  const reckoned = context.path.beams.find((one) => one.facts === facts)
  if (reckoned === undefined) return null
  const load = Math.max(...reckoned.envelope.supports.map((one) => one.greatest))
  const breadth = Math.min(reckoned.section.breadth, toInches(footprint.across))
  const along = toInches(footprint.along)
  const { values } = reckoned
  return byCalculation(
    [
      {
        name: 'Bearing across the grain',
        clause: '3.10.2',
        demand: { value: bearingStress(load, breadth, along), unit: 'psi' },
        capacity: { value: values.compressionAcross, unit: 'psi' },
        steps: [
          values.steps.compressionAcross,
          `${load.toFixed(0)} lb on ${breadth} × ${along} in; Cb 1, for a ply may end over the post`,
        ],
      },
    ],
    values.source,
  )
}
