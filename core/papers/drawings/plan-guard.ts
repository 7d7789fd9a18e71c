import type { Design } from '../../estimate-types.ts'
import { postsMiddle } from '../../guard/index.ts'
import { spotAt } from '../../stairs/index.ts'
import type { Primitive } from '../types.ts'
import { memberFromAbove } from './shapes.ts'

/** The guard from above: its posts and the blocks behind them, and the rails between the posts as lines, those beside stairs too. */
export function planGuard({ guard, job }: Design): readonly Primitive[] {
  if (guard === null) return []
  const line = (
    id: string,
    from: { readonly x: number; readonly y: number },
    to: { readonly x: number; readonly y: number },
  ): Primitive => ({
    kind: 'line',
    id,
    layer: 'guard',
    x1: from.x,
    y1: from.y,
    x2: to.x,
    y2: to.y,
    weight: 'medium',
    stroke: 'solid',
  })
  return [
    ...guard.members
      .filter(({ role }) => role === 'guard blocking')
      .map((member) =>
        memberFromAbove(member, { layer: 'guard', weight: 'fine', stroke: 'hidden', fill: 'none' }),
      ),
    ...guard.stretches.map((stretch) => {
      const { edge, from, to, number } = stretch
      const inside = -postsMiddle(job, stretch)
      return line(`guard-cap-${number}-1`, spotAt(edge, from, inside), spotAt(edge, to, inside))
    }),
    ...guard.members.flatMap(({ id, slope, role }) =>
      slope === undefined || (role === 'guard rail' && !id.endsWith('-top'))
        ? []
        : [line(id, slope.from, slope.to)],
    ),
    ...guard.members
      .filter(({ role }) => role === 'guard post')
      .map((member) =>
        memberFromAbove(member, { layer: 'guard', weight: 'medium', stroke: 'solid', fill: 'wood' }),
      ),
  ]
}
