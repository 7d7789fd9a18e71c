import type { Design } from '../../core/estimate-types.ts'
import type { Cause } from '../../core/frame/index.ts'
import { printLength, type Ticks } from '../../core/units/index.ts'

/** Something in the drawing that can be chosen: a member, a post, a footing. */
export interface Thing {
  readonly id: string
  readonly mark: string
  readonly kind: string
  /** what it is in a few words, for lists and the command menu */
  readonly label: string
  readonly length: Ticks | null
  readonly lumber: string | null
  readonly cause: Cause
}

/** Every thing of a design that can be chosen, in the order in which the deck is built. */
export function thingsOf(design: Design): readonly Thing[] {
  const { members, posts, footings } = design.frame
  const postIds = new Set(posts.map((post) => post.id))
  return [
    ...footings.map((footing) => ({
      id: footing.id,
      mark: `F${footing.number}`,
      kind: 'footing',
      label: `Footing ${footing.number}`,
      length: null,
      lumber: null,
      cause: footing.cause,
    })),
    ...posts.map((post) => ({
      id: post.id,
      mark: `P${post.number}`,
      kind: 'post',
      label: `Post ${post.number}`,
      length: post.length,
      lumber: design.job.frame.postSize,
      cause: post.cause,
    })),
    ...[...members, ...design.stairs.flatMap((one) => one.members), ...(design.guard?.members ?? [])]
      .filter((member) => !postIds.has(member.id))
      .map((member) => ({
        id: member.id,
        mark: member.mark,
        kind: member.role,
        label: `${capital(member.role)} ${member.mark}, ${printLength(member.length)}`,
        length: member.length,
        lumber: member.product.size,
        cause: member.cause,
      })),
  ]
}

export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1)
}
