import { convexOverlap } from '../geometry/index.ts'
import type { Fault, Job } from '../job/index.ts'
import { fromAbove } from './footprint.ts'
import type { Member } from './types.ts'

/** What rounding to whole ticks leaves between a post and a beam, ticks. */
const ROUNDING = 0.5

/**
 * Posts that would stand in wood that they do not carry: of a beam between the joists in one under them beside it, of one
 * at an edge in the rim of a lower level.
 * @param wood beams, joists and boards along edges
 */
export function postInWoodFaults(
  job: Job,
  posts: readonly Member[],
  wood: readonly Member[],
): readonly Fault[] {
  const clash = posts.flatMap((post) =>
    wood
      .filter(
        ({ box, bearings }) =>
          !bearings.includes(post.id) && box.z0 < post.box.z1 - ROUNDING && post.box.z0 < box.z1 - ROUNDING,
      )
      .filter((other) => convexOverlap(fromAbove(post), fromAbove(other), ROUNDING))
      .map((other) => ({ post, other })),
  )[0]
  if (clash === undefined) return []
  const number = clash.post.mark.replace(/\D/g, '')
  const { role, mark } = clash.other
  if (role === 'beam ply')
    return [
      {
        path: job.shape.middleBeams.trim() === '' ? 'shape.outline' : 'shape.middleBeams',
        message: `post ${number} would stand in beam ${mark.replace(/[a-z]+$/, '')}, which is not the one that it carries`,
        fix: 'set the two beams farther apart',
      },
    ]
  return [
    {
      path: job.shape.levels.trim() === '' ? 'shape.outline' : 'shape.levels',
      message: `post ${number} would stand in ${role} ${mark}`,
      fix: 'set its beam back from there, drop it if it is flush, or lay the level farther off',
    },
  ]
}
