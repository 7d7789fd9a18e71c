import type { Design } from '../estimate-types.ts'
import { type Footing, type HoleSetOut, holeSetOut } from '../frame/index.ts'
import { groundAt } from '../layout/index.ts'
import type { Ticks } from '../units/index.ts'

/** A hole under a post of the deck, a post of a landing or the foot of stairs; places in ticks, not always whole. */
export interface Hole extends Omit<Footing, 'x' | 'y' | 'postId'> {
  readonly x: number
  readonly y: number
  readonly under: 'deck' | 'stairs'
  /** the post that stands on it; null where stringers do */
  readonly post: { readonly id: string; readonly mark: string; readonly length: Ticks } | null
}

/**
 * Every hole of a job: the deck's by the numbers of their posts, then those of its stairs, numbered on. What is laid out,
 * dug, poured or counted in the ground goes by this list, never by the frame's footings alone.
 */
export function allHoles({ job, frame, stairs }: Pick<Design, 'job' | 'frame' | 'stairs'>): readonly Hole[] {
  const posts = new Map(frame.posts.map(({ id, number, length }) => [id, { id, mark: `P${number}`, length }]))
  const last = Math.max(0, ...frame.footings.map(({ number }) => number))
  const ofStairs = stairs.flatMap(({ footings, members }) =>
    footings.map((footing) => ({
      footing,
      post: members.find(({ id, role }) => role === 'landing post' && footing.cause.ids.includes(id)),
    })),
  )
  return [
    ...frame.footings.map(
      (footing): Hole => ({ ...footing, under: 'deck', post: posts.get(footing.postId) ?? null }),
    ),
    ...ofStairs.map(({ footing, post }, i): Hole => {
      const ground = groundAt(job, footing.x, footing.y)
      return {
        ...footing,
        number: last + i + 1,
        under: 'stairs',
        post: post === undefined ? null : { id: post.id, mark: post.mark, length: post.length },
        ground,
        topOfConcrete: ground - footing.depth + footing.baseThickness + footing.tubeLength,
      }
    }),
  ]
}

/** Where each of them is, and what proves it. */
export function allHolesSetOut(design: Pick<Design, 'job' | 'frame' | 'stairs'>): readonly HoleSetOut[] {
  return holeSetOut({ footings: allHoles(design) }, design.job)
}
