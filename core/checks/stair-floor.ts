import type { Job } from '../job/index.ts'
import type { StairFloor, StairPlan } from '../stairs/index.ts'
import { headLoad } from './flight-load.ts'
import { judge } from './judge.ts'
import type { Check } from './types.ts'

/** What stairs that come down to a lower level of the deck put on its joists: no table has such loads. */
export function checkStairFloor(job: Job, stairs: StairPlan, floor: StairFloor): Check {
  const last = stairs.patterns.at(-1)
  const each = last === undefined ? 0 : headLoad(job, last)
  return judge(job, {
    id: 'stair-floor',
    title: 'Stairs on a lower level',
    subjects: stairs.members.filter(({ role }) => role === 'stringer').map(({ id }) => id),
    fields: ['stairs.edge', 'shape.levels'],
    prescriptive: null,
    calculated: null,
    good: () => '',
    bad: '',
    uncovered: `No table covers level ${floor.level} under the feet of stairs: about ${each} lb stand on it at each of ${last?.count ?? 0} stringers`,
    whenUncovered:
      'Have a designer say what joists and beam bear it, or end the stairs on the ground. Block the joists under the feet and screw the angles into the blocking.',
    remedy: '',
    caution: '',
  })
}
