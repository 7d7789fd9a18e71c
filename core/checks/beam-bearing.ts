import { IRC_LIMITS } from '../data/index.ts'
import { beamThickness, postFootprint } from '../layout/index.ts'
import { inches, ticks } from '../units/index.ts'
import type { BeamFacts, CheckContext } from './context.ts'
import { byLimit, length } from './finding.ts'
import { judge } from './judge.ts'
import type { Check } from './types.ts'
import { feetInches } from './words.ts'

/**
 * Bearing of each ply on its posts: 1-1/2 in for each end where a ply is jointed over a post, IRC 2021 R507.5.1,
 * and the whole thickness of the beam on the post.
 */
export function checkBeamBearings(context: CheckContext): readonly Check[] {
  return context.beams.map((facts) => checkOne(context, facts))
}

function checkOne(context: CheckContext, { beam, posts }: BeamFacts): Check {
  const { job } = context
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
    id: `beam-bearing-${beam.beam}`,
    title: 'Beam bearing',
    subjects: [beam.id, ...posts.map((post) => post.id)],
    fields: ['frame.postSize', `frame.beams.${beam.beam}.plies`],
    prescriptive: byLimit(IRC_LIMITS.bearingOnWood, length(least), length(each), steps),
    calculated: null,
    good: () => `The ${beam.beam} beam bears fully; a jointed ply has ${feetInches(each)} for each end.`,
    bad:
      footprint === null
        ? `The ${beam.beam} beam is thicker than a ${job.frame.postSize} post is wide.`
        : `A ply of the ${beam.beam} beam jointed over a post has only ${feetInches(each)} for each end.`,
    uncovered: `No rule covers the bearing of the ${beam.beam} beam`,
    remedy: 'Use larger posts.',
    caution: '',
  })
}
