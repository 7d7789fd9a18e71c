import { IRC_LIMITS } from '../data/index.ts'
import { HOLD_DOWN_REACH, houseHoldDowns } from '../frame/index.ts'
import { printLength } from '../units/index.ts'
import type { CheckContext } from './context.ts'
import { byLimit } from './finding.ts'
import { judge } from './judge.ts'
import { checkSidewaysStability } from './sideways-stability.ts'
import type { Check } from './types.ts'

/** Hold-downs that keep the deck from pulling away from the house, IRC 2021 R507.9.2. */
export function checkLateralLoad(context: CheckContext): Check {
  const { job, frame } = context
  if (job.site.attachment === 'freestanding') return checkSidewaysStability(context)
  const holdDowns = frame.connectors.filter((one) => one.kind === 'hold-down')
  const count = holdDowns.reduce((sum, one) => sum + one.count, 0)
  const limit = IRC_LIMITS.lateralDevices
  const far = houseHoldDowns(frame).filter(({ reach }) => reach > HOLD_DOWN_REACH)
  const found = byLimit(limit, { value: limit.value, unit: 'count' }, { value: count, unit: 'count' }, [
    `${limit.value} hold-downs of 1,500 lb within 24 in of the deck's ends, or ${IRC_LIMITS.weakLateralDevices.value} of 750 lb`,
    `Counted in the frame: ${count}`,
  ])
  return judge(job, {
    id: 'lateral-load',
    title: 'Lateral load connection',
    subjects: holdDowns.flatMap((one) => one.at),
    fields: ['site.attachment'],
    prescriptive: found.ratio === 1 ? { ...found, ratio: null } : found,
    calculated: null,
    good: () => `${count} hold-downs tie the deck to the house.`,
    bad: `The deck has ${count} hold-downs; ${limit.value} are needed.`,
    uncovered: 'No rule covers the lateral load',
    remedy: `Add hold-downs: ${limit.value} of 1,500 lb, or ${IRC_LIMITS.weakLateralDevices.value} of 750 lb.`,
    caution:
      far.length === 0
        ? ''
        : `At ${far.map(({ joist, reach }) => `${joist.mark} it reaches ${printLength(reach)}`).join(', ')} from the deck’s end, where the clause allows 24 in: fix it to a block nearer the end by its maker’s sheet, or choose a closer spacing of joists.`,
  })
}
