import { IRC_LIMITS } from '../data/index.ts'
import { figure } from '../rules/index.ts'
import { TICKS_PER_INCH } from '../units/index.ts'
import type { CheckContext } from './context.ts'
import { byLimit } from './finding.ts'
import { judge } from './judge.ts'
import { joistIds } from './members.ts'
import type { Check } from './types.ts'

/**
 * What each hanger at the ledger carries. No table gives a hanger's strength: it is in the listing of the one that is
 * bought, so the load is told and the listing asked for. Nothing where joists lie on beams alone.
 */
export function checkHangerLoad(context: CheckContext): readonly Check[] {
  const { job, frame } = context
  const reaction = context.path.joist?.envelope.supports[0]?.greatest
  if (job.site.attachment !== 'ledger' || reaction === undefined) return []
  const load = Math.max(0, Math.ceil(reaction))
  const spacing = job.frame.joists.spacing / TICKS_PER_INCH
  const found = byLimit(IRC_LIMITS.bearingOnWood, { value: load, unit: 'lb' }, null, [
    `A joist every ${spacing} in brings ${figure(load)} lb to the ledger, dead and live, the live load placed worst`,
    'The hanger’s seat is its bearing; its strength is what its maker’s listing says for the nails that are used',
  ])
  return [
    judge(job, {
      id: 'hanger-load',
      title: 'Joist hangers',
      subjects: joistIds(frame),
      fields: ['size.depth', 'frame.joists.spacing', 'frame.joists.size'],
      prescriptive: found,
      calculated: null,
      good: () =>
        `Each hanger carries ${figure(load)} lb: use one listed for that or more, with all its nails.`,
      bad: '',
      uncovered: '',
      remedy: '',
      caution: 'Hot-dip galvanised or stainless, and nails of the same.',
    }),
  ]
}
