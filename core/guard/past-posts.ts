import type { GuardPlan, GuardPost, GuardStretch } from './types.ts'

/** Rails that end at no post: how far they reach past the last one of their stretch. */
export interface RailsPast {
  readonly post: GuardPost['id']
  /** ids of the rails; none where panels fill the bays */
  readonly rails: readonly string[]
  /** ticks, exact */
  readonly by: number
}

/** Rails of the level guard that reach past the last post of their edge, but for those that end at another edge's post. */
export function railsPastPosts({
  stretches,
  members,
}: Pick<GuardPlan, 'stretches' | 'members'>): readonly RailsPast[] {
  return stretches.flatMap(({ number, bays, posts, closed }: GuardStretch) => {
    const [first, last] = [posts[0], posts.at(-1)]
    if (first === undefined || last === undefined) return []
    return bays.flatMap(({ from, to }, i) => {
      const near = to < first.at && !closed[0]
      if (!near && (from <= last.at || closed[1])) return []
      const own = `guard-rail-${number}-${i + 1}-`
      return [
        {
          post: near ? first.id : last.id,
          rails: members.filter(({ id }) => id.startsWith(own)).map(({ id }) => id),
          by: to - from,
        },
      ]
    })
  })
}
