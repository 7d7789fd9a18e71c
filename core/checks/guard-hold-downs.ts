import type { GuardPlan } from '../guard/index.ts'
import type { Job } from '../job/index.ts'
import { judge } from './judge.ts'
import type { Check } from './types.ts'

/**
 * Posts whose hold-down finds neither a joist nor a block in line with its bolts: the guide's details have none of them.
 * None where every post has one, which the check of guard posts says.
 */
export function checkGuardHoldDowns(job: Job, guard: GuardPlan | null): readonly Check[] {
  if (guard === null || job.guard.fixing !== 'hold-downs') return []
  const bare = guard.faces.filter(({ wood }) => wood === null).map(({ post }) => post)
  if (bare.length === 0) return []
  const marks = guard.members.filter(({ id }) => bare.includes(id)).map(({ mark }) => mark)
  return [
    judge(job, {
      id: 'guard-hold-downs',
      title: 'Hold-downs of guard posts',
      subjects: bare,
      fields: ['guard.postSpacing', 'guard.where'],
      prescriptive: null,
      calculated: null,
      good: () => '',
      bad: '',
      uncovered: `The hold-down of ${marks.join(', ')} finds no joist or block in line with its bolt, or less than 3 in of one behind the post`,
      remedy: '',
      whenUncovered:
        'Outside prescriptive scope: move these posts beside a joist by their spacing, lay the joists out from the other end, or have a licensed designer draw what holds each; its hold-down is not bought before.',
      caution: '',
    }),
  ]
}
