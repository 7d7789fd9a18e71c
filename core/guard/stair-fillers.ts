import { STAIR_LIMITS, sectionOf } from '../data/index.ts'
import { fromAbove, type Member } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import type { StairPlan } from '../stairs/index.ts'
import { inches, ticks } from '../units/index.ts'
import { byEdge, cornersBehind } from './boards-behind.ts'
import { capThickness, RAIL, UNDER_LOWER_RAIL } from './guard-members.ts'
import { guardStick } from './guard-stick.ts'
import { type Standing, stairOpenings } from './stair-openings.ts'
import type { StairOpening } from './types.ts'

/** More uprights side by side than these are no way to close an opening: the checks name what is left. */
const MOST = 3

/**
 * Uprights flat on the face of a level guard's last post, towards the stairs, where a 4 in ball would pass between it and
 * the post of the stairs: a landing's post stands behind its beam, which may be 4-1/2 in thick. IRC 2021 R312.1.3.
 */
export function stairFillers(job: Job, standing: Standing, plans: readonly StairPlan[]): readonly Member[] {
  let fillers: readonly Member[] = []
  for (let count = 1; count <= MOST; count += 1) {
    const members = [...standing.members, ...fillers]
    const open = stairOpenings({ ...standing, members }, plans).filter(
      ({ clear }) => clear >= inches(STAIR_LIMITS.guardOpening.value),
    )
    for (const one of open) fillers = [...fillers, ...upright(job, standing, one, count, fillers)]
  }
  return fillers
}

/** @param before those that stand already: a post between two stairs may have some on either face, and none twice on one */
function upright(
  job: Job,
  { stretches, members }: Standing,
  { level, stairs }: StairOpening,
  count: number,
  before: readonly Member[],
): readonly Member[] {
  const stretch = stretches.find(({ posts }) => posts.some(({ id }) => id === level))
  const post = stretch?.posts.find(({ id }) => id === level)
  const beside = members.find(({ id }) => id === stairs)
  if (stretch === undefined || post === undefined || beside === undefined) return []
  const { edge, behind } = stretch
  const { thickness, depth } = sectionOf(RAIL)
  const places = fromAbove(beside).map((corner) => byEdge(edge, corner).along)
  const way = (Math.min(...places) + Math.max(...places)) / 2 < post.at ? -1 : 1
  const face = post.at + way * (sectionOf(job.guard.postSize).thickness / 2 + (count - 1) * thickness)
  const ends = [face, face + way * thickness].sort((a, b) => a - b) as [number, number]
  const low = edge.top + UNDER_LOWER_RAIL
  const top = edge.top + job.guard.height - capThickness(job)
  const own = before.filter(({ cause }) => cause.ids.includes(level))
  const name = `${level.split('-')[2]}-${own.length + 1}`
  const filler = guardStick(job, {
    id: `guard-filler-${name}`,
    mark: `GF${name}`,
    role: 'guard rail',
    size: RAIL,
    length: ticks(Math.round(top - low)),
    corners: cornersBehind(edge, ends, [behind, behind + depth]),
    levels: [low, top],
    cause: {
      fields: ['guard.where', 'guard.postSize'],
      ids: [level],
      rule: 'Upright on the post’s face towards the stairs, so that no 4 in ball passes between it and the post beside the stairs (IRC 2021 R312.1.3; common practice, no source)',
    },
  })
  return own.some(({ box }) => box.x0 === filler.box.x0 && box.y0 === filler.box.y0) ? [] : [filler]
}
