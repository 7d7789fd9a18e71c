import type { CheckContext } from './context.ts'
import { hipAreas } from './hip-areas.ts'
import { reactionOn } from './load-path.ts'

/** The greatest that comes down on a post, lb: of all beams on it, and of a hip; null where no beam was reckoned. */
export function postReaction({ frame, load, job, path }: CheckContext, postId: string): number | null {
  const reaction = reactionOn(path, postId)
  if (reaction === null) return null
  const areas = frame.hips.filter((hip) => hip.postId === postId).map((hip) => hipAreas(hip).post)
  return areas.reduce((sum, area) => sum + area * (load + job.site.deadLoad), reaction)
}
