import type { Frame, Member } from '../frame/index.ts'
import type { FieldPath, Job } from '../job/index.ts'
import { printLength, ticks } from '../units/index.ts'
import { addedPlace } from './added-place.ts'
import type { Piece } from './types.ts'

/** One piece for every member that comes whole: joists, blocking, posts. Long members are runs, not pieces. */
export function piecesOf(job: Job, frame: Frame): readonly Piece[] {
  const inRuns = new Set(frame.runs.flatMap((run) => run.memberIds))
  return frame.members
    .filter((member) => !inRuns.has(member.id))
    .map((member) => {
      const { field, allowance } = allowanceOf(job, member)
      return {
        id: `piece-${member.id}`,
        mark: member.mark,
        memberId: member.id,
        product: member.product,
        length: ticks(member.length + allowance),
        finished: member.length,
        ...(member.ends === undefined ? {} : { ends: member.ends }),
        place: addedPlace(member) ?? placeOf(member, frame),
        cause: {
          fields: allowance > 0 && field !== null ? [field] : [],
          ids: [member.id],
          rule:
            allowance > 0
              ? 'Ordered longer than it is, for it is cut in place (common practice, no source)'
              : 'Cut to its finished length',
        },
      }
    })
}

/** What a member is ordered longer than it will be, and the field that says so. */
function allowanceOf(
  { cutting }: Job,
  { role }: Member,
): { readonly field: FieldPath | null; readonly allowance: number } {
  if (role === 'post' || role === 'landing post')
    return { field: 'cutting.postAllowance', allowance: cutting.postAllowance }
  if (role === 'joist' || role === 'end joist')
    return { field: 'cutting.joistsWild', allowance: cutting.joistsWild }
  return { field: null, allowance: 0 }
}

/** Where a piece goes, for the crew: along the wall, or away from it, to its middle. */
function placeOf(member: Member, frame: Frame): string {
  const { box, role, line, plan } = member
  // joists along the house are told by how far they lie from the rear edge, slanting cuts or not
  const long = box.x1 - box.x0 > box.y1 - box.y0
  const away = line !== undefined && (plan === undefined || (role === 'joist' && long))
  const [near, far, word] = away ? [box.y0, box.y1, 'from the rear edge'] : [box.x0, box.x1, 'along']
  const print = (at: number) => printLength(ticks(Math.round(at)))
  const centre = `${print((near + far) / 2)} ${word}`
  switch (role) {
    case 'blocking':
      if (member.id.startsWith('blocking-decking'))
        return `block under the decking’s ends, at ${print((box.x0 + box.x1) / 2)} along, ${print((box.y0 + box.y1) / 2)} from the rear edge`
      return `block over the beam, its middle at ${centre}`
    case 'post':
      return `post at ${print((box.x0 + box.x1) / 2)} along, ${print((box.y0 + box.y1) / 2)} from the rear edge`
    case 'end joist':
      return `end joist, ${endOf(member, frame)}, at ${centre}${beyond(member)}`
    case 'hip':
      return 'half of the hip, from the corner of the ledgers to that of the rims'
    default:
      return `${role} at ${centre}${role === 'joist' ? beyond(member) : ''}`
  }
}

/** The end of its own part at which an end joist lies, as the plan shows it: most joists beside it lie on the other side. */
function endOf({ box }: Member, { members }: Frame): 'left' | 'right' | 'rear' | 'front' {
  const isAway = box.y1 - box.y0 >= box.x1 - box.x0
  const beside = members.flatMap(({ role, box: other }) => {
    if (role !== 'joist' || isAway !== other.y1 - other.y0 >= other.x1 - other.x0) return []
    const meets = isAway ? other.y0 < box.y1 && other.y1 > box.y0 : other.x0 < box.x1 && other.x1 > box.x0
    return meets ? [Math.sign(isAway ? other.x0 - box.x0 : other.y0 - box.y0)] : []
  })
  const isFirst = beside.reduce((sum, side) => sum + side, 0) >= 0
  if (isAway) return isFirst ? 'left' : 'right'
  return isFirst ? 'rear' : 'front'
}

/** A joist that goes on over a middle beam is called so. */
function beyond({ mark }: Member): string {
  return /[a-z]$/.test(mark) ? ', beyond the middle beam' : ''
}
