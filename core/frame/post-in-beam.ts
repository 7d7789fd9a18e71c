import { convexOverlap } from '../geometry/index.ts'
import type { Fault, Job } from '../job/index.ts'
import { fromAbove } from './footprint.ts'
import type { Member } from './types.ts'

/** Rounding to whole ticks, between posts and what they carry. */
const ROUNDING = 0.5

/** Posts that would stand in a beam that they do not carry: of a beam between the joists beside one under them. */
export function postInBeamFaults(
  job: Job,
  posts: readonly Member[],
  plies: readonly Member[],
): readonly Fault[] {
  const clash = posts.flatMap((post) =>
    plies
      .filter(
        ({ box, bearings }) =>
          !bearings.includes(post.id) && box.z0 < post.box.z1 - ROUNDING && post.box.z0 < box.z1 - ROUNDING,
      )
      .filter((ply) => convexOverlap(fromAbove(post), fromAbove(ply), ROUNDING))
      .map((ply) => ({ post, ply })),
  )[0]
  if (clash === undefined) return []
  return [
    {
      path: job.shape.middleBeams.trim() === '' ? 'shape.outline' : 'shape.middleBeams',
      message: `post ${clash.post.mark.replace(/\D/g, '')} would stand in beam ${clash.ply.mark.replace(/-.*/, '')}, which is not the one that it carries`,
      fix: 'set the two beams farther apart',
    },
  ]
}
