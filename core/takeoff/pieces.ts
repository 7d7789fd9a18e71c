import type { Frame, Member } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import { printLength, ticks } from '../units/index.ts'
import type { Piece } from './types.ts'

/** One piece for every member that comes whole: joists, blocking, posts. Long members are runs, not pieces. */
export function piecesOf(job: Job, frame: Frame): readonly Piece[] {
  const inRuns = new Set(frame.runs.flatMap((run) => run.memberIds))
  return frame.members
    .filter((member) => !inRuns.has(member.id))
    .map((member) => {
      const allowance = member.role === 'post' ? job.cutting.postAllowance : 0
      return {
        id: `piece-${member.id}`,
        mark: member.mark,
        memberId: member.id,
        product: member.product,
        length: ticks(member.length + allowance),
        finished: member.length,
        place: placeOf(member),
        cause: {
          fields: allowance > 0 ? ['cutting.postAllowance'] : [],
          ids: [member.id],
          rule:
            allowance > 0
              ? 'Ordered longer than it is, for it is cut in place (common practice, no source)'
              : 'Cut to its finished length',
        },
      }
    })
}

/** Where a piece goes, for the crew: along the wall to its centre, and for a block the bay's left side. */
function placeOf(member: Member): string {
  const centre = printLength(ticks(Math.round((member.box.x0 + member.box.x1) / 2)))
  switch (member.role) {
    case 'blocking':
      return `block over the beam, from ${printLength(ticks(member.box.x0))} along`
    case 'post':
      return `post at ${centre} along`
    case 'end joist':
      return member.id === 'end-joist-left' ? 'end joist, left' : 'end joist, right'
    case 'stringer':
    case 'stair header':
    case 'tread':
    case 'riser':
      return stairPlace(member)
    default:
      return `${member.role} at ${centre} along`
  }
}

/** Ids of the pieces of stairs hold the flight and, from the lowest, the step. */
function stairPlace({ id, role }: Member): string {
  const numbers = id.split('-').filter((part) => /^\d+$/.test(part))
  const flight = `flight ${numbers[0]}`
  if (role === 'tread') return `tread ${numbers[1]} from below, ${flight}`
  if (role === 'riser') return `riser ${numbers[1]} from below, ${flight}`
  return role === 'stringer'
    ? `stringer ${numbers[1]}, ${flight}`
    : `behind the heads of the stringers, ${flight}`
}
