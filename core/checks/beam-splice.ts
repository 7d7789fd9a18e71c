import { IRC_LIMITS } from '../data/index.ts'
import { type Beam, type Frame, type FrameRun, leadOf } from '../frame/index.ts'
import { ticks } from '../units/index.ts'
import type { CheckContext } from './context.ts'
import { byLimit } from './finding.ts'
import { judge } from './judge.ts'
import type { BeamFacts } from './measures.ts'
import type { Check } from './types.ts'
import { beamName, feetInches } from './words.ts'

/**
 * Where the plies of each beam may be jointed: over inner posts only, IRC 2021 R507.5. The frame offers no other place,
 * so this tells which they are, or that every ply must come whole.
 */
export function checkBeamSplices(context: CheckContext): readonly Check[] {
  return context.beams.map((facts) => checkOne(context, facts))
}

function checkOne({ job, frame }: CheckContext, { beam }: BeamFacts): Check {
  const runs = frame.runs.filter(
    ({ kind, memberIds }) => kind === 'beam ply' && memberIds.some((id) => beam.plyIds.includes(id)),
  )
  const length = ticks(Math.max(beam.length, ...runs.map((run) => run.length)))
  const points = runs.flatMap((run) => {
    const inner = innerPostsOn(frame, beam, run)
    return run.points.map(({ at, label }) => ({ label, over: inner.includes(at) }))
  })
  const over = points.filter((point) => point.over)
  const stray = points.length - over.length
  const list = [...new Set(over.map(({ label }) => label))].join(', ')
  const found = byLimit(
    IRC_LIMITS.beamSplices,
    { value: points.length, unit: 'count' },
    { value: over.length, unit: 'count' },
    [
      over.length === 0
        ? `No inner post: each ply comes whole, ${feetInches(length)}`
        : `Places that are admitted: ${list}`,
      'Each end bears 1-1/2 in or more on its post; plies at one post are jointed as the job’s stagger says',
    ],
  )
  return judge(job, {
    id: `beam-splice-${beam.key}`,
    title: 'Joints of beam plies',
    subjects: [beam.id, ...beam.plyIds],
    fields: [`frame.beams.${beam.beam}.posts`, 'frame.stagger'],
    prescriptive: stray === 0 ? { ...found, ratio: null } : found,
    calculated: null,
    good: () =>
      over.length === 0
        ? `Each ply of the ${beamName(beam)} comes whole, ${feetInches(length)}.`
        : `Plies of the ${beamName(beam)} are jointed over inner posts only.`,
    bad: `A ply of the ${beamName(beam)} could be jointed away from its inner posts.`,
    uncovered: '',
    remedy: 'Joint plies over inner posts only.',
    caution: '',
  })
}

/** Where the inner posts stand along the plies of a run, from the plies' own left end. */
function innerPostsOn(
  { members }: Frame,
  { postsAt, line }: Beam,
  { memberIds }: FrameRun,
): readonly number[] {
  const ply = members.find(({ id }) => id === memberIds[0])
  const lead = ply === undefined ? 0 : leadOf(ply, line)
  return postsAt.slice(1, -1).map((at) => at + lead)
}
