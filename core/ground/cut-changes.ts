import type { Costed } from '../estimate.ts'
import type { Design } from '../estimate-types.ts'
import { printLength } from '../units/index.ts'

interface Cut {
  readonly design: Design
  readonly costed: Costed
}

/** What is cut otherwise under and in the beam on a post: lengths of its posts, places of its joints. */
export function cutChanges(before: Cut, after: Cut, postId: string): readonly string[] {
  const was = new Map(linesOf(before, postId))
  return linesOf(after, postId).flatMap(([what, how]) => {
    const old = was.get(what) ?? 'none'
    return old === how ? [] : [`${what}: ${how}, planned ${old}`]
  })
}

function linesOf({ design, costed }: Cut, postId: string): readonly (readonly [string, string])[] {
  const beams = design.frame.beams.filter(({ postIds }) => postIds.includes(postId))
  const posts = design.frame.posts
    .filter(({ id }) => beams.some(({ postIds }) => postIds.includes(id)))
    .map((post) => [`Post ${post.number}`, printLength(post.length)] as const)
  const marks = new Map(design.frame.members.map((member) => [member.id, member.mark]))
  const plies = beams
    .flatMap((one) => one.plyIds)
    .map((id) => {
      const at = costed.plans
        .flatMap(({ plan }) => plan.joints)
        .filter(({ memberId }) => memberId === id)
        .map((joint) => printLength(joint.at))
        .sort()
      return [`Joints of ${marks.get(id) ?? id}`, at.length === 0 ? 'none' : at.join(', ')] as const
    })
  return [...posts, ...plies]
}
