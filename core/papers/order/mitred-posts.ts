import type { Frame } from '../../frame/index.ts'

/** Posts over which two beams meet in a mitre: a plain cap does not hold both. */
export function mitredPosts({ beams, members, posts }: Frame): Frame['posts'] {
  return posts.filter(
    ({ id }) =>
      beams.filter(
        ({ postIds, plyIds }) =>
          postIds.includes(id) && members.some((ply) => plyIds.includes(ply.id) && ply.ends !== undefined),
      ).length > 1,
  )
}
