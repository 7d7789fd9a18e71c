import { sectionOf } from '../data/index.ts'
import { type Frame, type FrameRun, jointPlace, type RunPoint } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import { inches, printLength } from '../units/index.ts'
import { byEdge } from './boards-behind.ts'
import type { GuardPlan } from './types.ts'

/** A rim's joint lies on the middle of a joist's end, and a block stands along either side of that joist. */
const BESIDE_JOINT = inches(0.75 + 1.5)

/** Runs of a frame whose rims are jointed beside no guard post, so that neither its bolts nor a joint's blocks meet the other. */
export function runsClearOfPosts(
  job: Job,
  { members, runs }: Frame,
  guard: GuardPlan | null,
): readonly FrameRun[] {
  if (guard === null) return runs
  const clear = BESIDE_JOINT + sectionOf(job.guard.postSize).thickness / 2
  return runs.map((run): FrameRun => {
    const rim = members.find(({ id }) => id === run.memberIds[0])
    if (run.kind !== 'rim' || rim === undefined) return run
    const beside = guard.stretches.filter(
      ({ edge }) => rim.box.z1 <= edge.top && rim.box.z1 >= edge.top - inches(2),
    )
    const postAt = ({ at }: RunPoint) =>
      beside.flatMap(({ edge, behind, posts }) => {
        const place = byEdge(edge, jointPlace(rim, at))
        if (place.behind <= 0 || place.behind >= behind) return []
        return posts.filter((post) => Math.abs(post.at - place.along) < clear)
      })[0]
    const met = run.points.flatMap((point) => {
      const post = postAt(point)
      return post === undefined ? [] : [{ point, post }]
    })
    if (met.length === 0) return run
    const mark = (id: string) => guard.members.find((member) => member.id === id)?.mark ?? id
    return {
      ...run,
      points: run.points.filter((point) => met.every((one) => one.point !== point)),
      another: `guard posts more than ${printLength(job.guard.postSpacing)} apart, so that joists are left without one`,
      refused: [
        ...run.refused,
        ...met.map(({ point, post }) => ({
          ...point,
          why: `The guard post ${mark(post.id)} is bolted through the rim there, where the blocks behind a joint would stand.`,
        })),
      ].sort((a, b) => a.at - b.at),
    }
  })
}
