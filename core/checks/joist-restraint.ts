import { IRC_LIMITS } from '../data/index.ts'
import type { Beam, Frame } from '../frame/index.ts'
import type { CheckContext } from './context.ts'
import { byLimit } from './finding.ts'
import { judge } from './judge.ts'
import { joistIds, ledgerIds } from './members.ts'
import type { Check } from './types.ts'
import { beamName } from './words.ts'

/**
 * Joists held upright at their ends and over every beam, IRC 2021 R507.6.2: by hangers, by a rim, or by blocks. Where
 * a rim lies over the beam it holds them; over any other beam there must be blocks.
 */
export function checkJoistRestraint(context: CheckContext): Check {
  const { job, frame } = context
  const rims = frame.members.filter(({ role }) => role === 'rim')
  const bare = frame.beams.filter(
    ({ id: beamId, key, line, flush }) =>
      !flush &&
      !frame.members.some(({ id }) => id.startsWith(`blocking-${key}-`)) &&
      !rims.some((rim) => liesOver(rim, line)) &&
      // joists of two zones end on a seam's beam against an end joist or each other
      frame.joistGroups.some((group) => group.supports.includes(beamId)),
  )
  const names = bare.map(beamName).join(' and the ')
  const ends = ledgerIds(frame).length > 0 ? 'hangers at the ledger, the rim' : 'rims'
  const found = byLimit(
    IRC_LIMITS.lateralRestraint,
    { value: 1, unit: 'count' },
    { value: bare.length === 0 ? 1 : 0, unit: 'count' },
    [
      `At the ends: ${ends}, three nails or screws into each joist`,
      ...frame.beams.map((beam) =>
        beam.flush
          ? `At the ${beamName(beam)}, which is flush: hangers`
          : `Over the ${beamName(beam)}: ${bare.includes(beam) ? 'nothing' : 'blocks or the rim'}`,
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
    bad: `Nothing holds the joists upright over the ${names}.`,
    uncovered: '',
    remedy: 'Block the joists over the beams.',
    caution: '',
  })
}

/** Whether a rim stands over a beam, within an inch of its line. */
function liesOver({ box, plan }: Frame['members'][number], [from, to]: Beam['line']): boolean {
  const shape = plan ?? [
    { x: box.x0, y: box.y0 },
    { x: box.x1, y: box.y1 },
  ]
  const length = Math.hypot(to.x - from.x, to.y - from.y)
  const off = shape.map(
    ({ x, y }) => ((x - from.x) * (to.y - from.y) - (y - from.y) * (to.x - from.x)) / length,
  )
  return Math.min(...off) < 32 && Math.max(...off) > -32
}
