import { type LpEngine, planCuts } from '../cutting/index.ts'
import type { Estimate } from '../estimate-types.ts'
import { postList } from '../job/index.ts'
import { cents, printLength, type Ticks, ticks } from '../units/index.ts'

export interface MeasuredPost {
  readonly post: number
  readonly drawn: Ticks
  readonly measured: Ticks
  /** measured less drawn */
  readonly off: Ticks
}

export interface MeasuredPosts {
  readonly posts: readonly MeasuredPost[]
  /** the posts that were ordered are long enough for all, measured or not */
  readonly enough: boolean
  readonly message: string
}

/**
 * Lengths taken at the piers against the posts that were ordered: the same boards cut anew, the measured posts to
 * their measure, the others as drawn with their extra length. Nothing where no post was measured or none is planned.
 */
export function measuredPosts(estimate: Estimate, engine: LpEngine): MeasuredPosts | null {
  const { job, frame, takeoff } = estimate
  const stated = postList(job.ground.measured)
  const planned = estimate.plans.find(({ product }) => product.size === job.frame.postSize)
  if (stated.length === 0 || planned === undefined) return null
  const posts = stated.flatMap(({ post, length }): readonly MeasuredPost[] => {
    const drawn = frame.posts.find(({ number }) => number === post)?.length
    return drawn === undefined ? [] : [{ post, drawn, measured: length, off: ticks(length - drawn) }]
  })
  const measured = new Map(
    posts.flatMap(({ post, measured: length }) => {
      const id = frame.posts.find(({ number }) => number === post)?.id
      return id === undefined ? [] : [[id, length] as const]
    }),
  )
  const pieces = takeoff.pieces
    .filter(({ product }) => product.size === job.frame.postSize)
    .map(({ id, mark, memberId, length }) => ({ id, mark, length: measured.get(memberId) ?? length }))
  const again = planCuts(
    {
      id: 'posts as measured',
      label: 'Posts as measured',
      kerf: job.cutting.kerf,
      endTrim: job.cutting.endTrim,
      stock: planned.plan.order.map(({ stockId, length, count, price }) => ({
        id: stockId,
        length,
        price,
        supply: count,
        offcut: false,
      })),
      pieces,
      runs: [],
      handling: job.cutting.handling,
      perCut: cents(0),
      keep: null,
      objectives: ['least cost'],
    },
    engine,
  )
  const longest = posts.reduce((a, b) => (b.off > a.off ? b : a))
  return {
    posts,
    enough: again.ok,
    message: again.ok
      ? 'The posts that were ordered are long enough for every measure.'
      : `The posts that were ordered are too short: post ${longest.post} measures ${printLength(longest.measured)}, drawn ${printLength(longest.drawn)}. Buy one more before cutting.`,
  }
}
