import type { GuardPlan, GuardPost, GuardStretch } from './types.ts'

/** Rails that end at no post: how far they reach past the last one of their stretch. */
export interface RailsPast {
  readonly post: GuardPost['id']
  /** ticks, exact */
  readonly by: number
}

/** Rails of the level guard that reach past the last post of their edge, but for those that end at another edge's post. */
export function railsPastPosts({ stretches }: Pick<GuardPlan, 'stretches'>): readonly RailsPast[] {
  return stretches.flatMap(({ bays, posts, closed }: GuardStretch) => {
    const [first, last] = [posts[0], posts.at(-1)]
    if (first === undefined || last === undefined) return []
    return bays.flatMap(({ from, to }) => {
      if (to < first.at && !closed[0]) return [{ post: first.id, by: to - from }]
      return from > last.at && !closed[1] ? [{ post: last.id, by: to - from }] : []
    })
  })
}
