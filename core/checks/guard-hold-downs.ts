import { type GuardPlan, LEAST_LEG } from '../guard/index.ts'
import type { Job } from '../job/index.ts'
import { printInches, ticks } from '../units/index.ts'
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
  const marksOf = (ids: readonly string[]) =>
    guard.members
      .filter(({ id }) => ids.includes(id))
      .map(({ mark }) => mark)
      .join(', ')
  const narrow = narrowBays(guard, bare)
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
      uncovered: [
        `The hold-down of ${marksOf(bare)} finds no joist or block in line with its bolt, or less than 3 in of one behind the post`,
        ...narrow.map(
          ({ posts, clear }) =>
            `the bay along that edge leaves ${clear < 0 ? 'less than a post is thick' : printInches(clear)} behind ${marksOf(posts)}, where a leg needs ${printInches(LEAST_LEG)}`,
        ),
      ].join('; '),
      remedy: '',
      whenUncovered: `Outside prescriptive scope: ${narrow.map(({ side, posts, clear }) => `move the ${side} edge at ${marksOf(posts)} out by ${printInches(ticks(LEAST_LEG - clear))}, `).join('')}move these posts beside a joist by their spacing, lay the joists out from the other end, or have a licensed designer draw what holds each; its hold-down is not bought before.`,
      caution: '',
    }),
  ]
}

/** Posts along a board beside which the next joist stands so near that no leg finds room, by edge, and what is left at most behind all. */
function narrowBays({ stretches, faces }: GuardPlan, bare: readonly string[]) {
  return stretches.flatMap(({ edge, crossed, posts }) => {
    // at a slant no edge moves alone
    const isSquare = Math.abs(edge.out.x) < 1e-9 || Math.abs(edge.out.y) < 1e-9
    if (crossed || !isSquare) return []
    const near = faces.flatMap(({ post, clear }) =>
      clear !== null && clear < LEAST_LEG && bare.includes(post) && posts.some(({ id }) => id === post)
        ? [{ post, clear }]
        : [],
    )
    if (near.length === 0) return []
    const clear = ticks(Math.min(...near.map((one) => one.clear)))
    return [{ side: edge.side, posts: near.map(({ post }) => post), clear }]
  })
}
