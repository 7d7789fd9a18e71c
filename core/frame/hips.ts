import type { Job } from '../job/index.ts'
import { ticks } from '../units/index.ts'
import type { EdgeBoard } from './edge-boards.ts'
import { lengthUp } from './footprint.ts'
import type { Connector, Hip, PlanPoint, Post } from './types.ts'

/** Hips with the post that stands under each: a ply of either part, face to face. */
export function hipsOf(boards: readonly EdgeBoard[], posts: readonly Post[]): readonly Hip[] {
  return boards.flatMap((one, i) => {
    const { from, to } = one.edge.edge
    const other = boards.slice(i + 1).find(({ edge: { edge } }) => same(edge.from, to) && same(edge.to, from))
    const post = posts.find((standing) => liesOn(from, to, standing))
    if (other === undefined || post === undefined) return []
    // it is held at the inside corner and reaches past the post to the outside one, which is the nearer of the two
    const [inside, outside] = distance(from, post) > distance(to, post) ? [from, to] : [to, from]
    return [
      {
        id: one.id,
        memberIds: [one, other].flatMap(({ plies }) => plies.map(({ id }) => id)),
        inside,
        outside,
        postId: post.id,
        span: ticks(lengthUp(distance(inside, post))),
        overhang: ticks(lengthUp(distance(outside, post))),
      },
    ]
  })
}

/** What holds a hip: a hanger for both plies at the inside corner, a tie at its post, angles to the rims, and its nails. */
export function hipConnectors(job: Job, hips: readonly Hip[]): readonly Connector[] {
  const { size } = job.frame.joists
  return hips.flatMap(({ id, memberIds, span, overhang }): readonly Connector[] => {
    const at = (kind: Connector['kind'], count: number, rule: string): Connector => ({
      kind,
      size,
      count,
      at: memberIds,
      cause: {
        fields: ['shape.seams', 'shape.zones'],
        ids: [id],
        rule: `${rule} (common practice, no source)`,
      },
    })
    return [
      {
        ...at('joist hanger', 1, 'One skewed hanger for both plies of a hip at the inside corner'),
        double: true,
        skew: 4500,
      },
      {
        ...at(
          'end joist angle',
          2,
          'A hip is held by a skewed angle to the rim on either side of the outside corner',
        ),
        skew: 4500,
      },
      at('uplift tie', 1, 'One tie where a hip crosses its post'),
      {
        ...at('joist pair', 1, 'The plies of a hip are nailed together in two rows at 16 in'),
        overlap: ticks(span + overhang),
      },
    ]
  })
}

/** Between two places, or nearly so: within a tick of the line. */
function liesOn(from: PlanPoint, to: PlanPoint, place: PlanPoint): boolean {
  return distance(from, place) + distance(to, place) - distance(from, to) < 1
}

function distance(a: PlanPoint, b: PlanPoint): number {
  return Math.hypot(a.x - b.x, a.y - b.y)
}

function same(a: PlanPoint, b: PlanPoint): boolean {
  return a.x === b.x && a.y === b.y
}
