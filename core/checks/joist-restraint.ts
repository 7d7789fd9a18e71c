import { IRC_LIMITS } from '../data/index.ts'
import type { CheckContext } from './context.ts'
import { byLimit } from './finding.ts'
import { judge } from './judge.ts'
import { joistIds } from './members.ts'
import type { Check } from './types.ts'

/**
 * Joists held upright at their ends and over every beam, IRC 2021 R507.6.2: by hangers, by a rim, or by blocks. Where
 * a rim lies over the beam it holds them; over any other beam there must be blocks.
 */
export function checkJoistRestraint(context: CheckContext): Check {
  const { job, frame } = context
  const rims = frame.members.filter(({ role }) => role === 'rim')
  const bare = frame.beams.filter(
    ({ beam, y }) =>
      !frame.members.some(({ id }) => id.startsWith(`blocking-${beam}-`)) &&
      !rims.some(({ box }) => box.y0 < y + 32 && box.y1 > y - 32),
  )
  const names = bare.map(({ beam }) => beam).join(' and the ')
  const ends = job.site.attachment === 'ledger' ? 'hangers at the ledger, the rim' : 'rims'
  const found = byLimit(
    IRC_LIMITS.lateralRestraint,
    { value: 1, unit: 'count' },
    { value: bare.length === 0 ? 1 : 0, unit: 'count' },
    [
      `At the ends: ${ends}, three nails or screws into each joist`,
      ...frame.beams.map(
        (beam) => `Over the ${beam.beam} beam: ${bare.includes(beam) ? 'nothing' : 'blocks or the rim'}`,
      ),
    ],
  )
  return judge(job, {
    id: 'joist-restraint',
    title: 'Joists held upright',
    subjects: joistIds(frame),
    fields: ['frame.blocking'],
    prescriptive: bare.length === 0 ? { ...found, ratio: null } : found,
    calculated: null,
    good: () => 'Joists are held upright at their ends and over the beams.',
    bad: `Nothing holds the joists upright over the ${names} beam.`,
    uncovered: '',
    remedy: 'Block the joists over the beams.',
    caution: '',
  })
}
