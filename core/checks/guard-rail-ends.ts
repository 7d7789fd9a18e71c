import { type GuardPlan, railsPastPosts } from '../guard/index.ts'
import type { Job } from '../job/index.ts'
import { printLength, ticks } from '../units/index.ts'
import { judge } from './judge.ts'
import type { Check } from './types.ts'

/**
 * Rails that reach past the last post of their edge and end short of the one that stands turned round the corner: its
 * face lies beside their line, so nothing holds that end. None where every rail ends at a post.
 */
export function checkGuardRailEnds(job: Job, guard: GuardPlan | null): readonly Check[] {
  const past = guard === null ? [] : railsPastPosts(guard)
  if (guard === null || past.length === 0) return []
  const marksOf = (ids: readonly string[]) =>
    guard.members.filter(({ id }) => ids.includes(id)).map(({ mark }) => mark)
  const most = printLength(ticks(Math.ceil(Math.max(...past.map(({ by }) => by)))))
  const rails = past.flatMap((one) => one.rails)
  const what = rails.length === 0 ? 'Panels' : `Rails ${marksOf(rails).join(', ')}`
  return [
    judge(job, {
      id: 'guard-rail-ends',
      title: 'Ends of the guard’s rails',
      subjects: rails,
      fields: ['guard.postSpacing', 'guard.where'],
      prescriptive: null,
      calculated: null,
      good: () => '',
      bad: '',
      uncovered: `${what} reach past ${marksOf(past.map(({ post }) => post)).join(', ')}, by ${most} at most, and end at no post there: the post round the corner stands turned, beside their line`,
      remedy: '',
      whenUncovered:
        'Outside prescriptive scope: R301.5 asks for 200 lb at the end of a rail too. Move the last post nearer the corner by the spacing, or have a licensed designer draw what holds these ends; the rails are not bought before.',
      caution: '',
    }),
  ]
}
