import type { Mitres, RunGroup } from '../cutting/index.ts'
import { sectionOf } from '../data/index.ts'
import type { EndCuts, FrameRun, Member } from '../frame/index.ts'

/**
 * Mitres of a member for the cutting plan, which may let two alike share a cut: across a board of the decking and a cap
 * on the level its width, of all else, which stands on edge, its thickness. What climbs is cut plumb: a rail on edge
 * across its width, a cap across its thickness. None of a board that is ripped: that is done first, and what is left
 * of its width no longer reaches its neighbour's cut.
 */
export function mitresOf(member: Member | undefined, ends: EndCuts | undefined): { mitres?: Mitres } {
  if (member === undefined || ends === undefined || member.ripTo !== null) return {}
  const section = sectionOf(member.product.size)
  return { mitres: { across: acrossItsWidth(member) ? section.depth : section.thickness, ends } }
}

function acrossItsWidth({ role, slope }: Member): boolean {
  if (slope !== undefined) return role === 'guard rail'
  return role === 'decking' || role === 'guard cap'
}

/** The same of a run, jointed along the joists where its boards lie at an angle to them. */
export function mitresOfRun(run: FrameRun, members: ReadonlyMap<string, Member>): Pick<RunGroup, 'mitres'> {
  const own = run.memberIds.flatMap((id) => members.get(id) ?? [])
  const [first] = own
  const joint = 100 * (first?.lay?.degrees ?? 0)
  if (run.ends === undefined && joint === 0) return {}
  const { mitres } = mitresOf(own.find(({ ripTo }) => ripTo !== null) ?? first, run.ends ?? [0, 0])
  return mitres === undefined ? {} : { mitres: { ...mitres, joint } }
}
