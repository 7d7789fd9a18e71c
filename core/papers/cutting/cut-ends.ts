import type { Estimate, Planned } from '../../estimate-types.ts'
import type { EndCuts } from '../../frame/index.ts'

type Member = Estimate['frame']['members'][number]
type RunPiece = Planned['plan']['runPieces'][number]

/**
 * Cuts of a piece of a run, in hundredths of a degree off square: the member's own at its ends, and along the joist at
 * a joint of boards that lie at an angle.
 */
export function runPieceEnds(member: Member, { from, to }: Pick<RunPiece, 'from' | 'to'>): EndCuts {
  const own = member.ends ?? [0, 0]
  const joint = 100 * (member.lay?.degrees ?? 0)
  // a run that goes on beyond its member is cut off in place there, to the member's own end
  return [from === 0 ? own[0] : joint, to >= member.length ? own[1] : joint]
}

/** "left 45°, right 22.5°", the side as the piece lies in the deck; empty where both are square. */
export function endWords(ends: EndCuts | undefined): string {
  if (ends === undefined) return ''
  const [left, right] = ends
  if (left === 0 && right === 0) return ''
  if (left === right) return `both ${degrees(left)}, alike`
  if (left === -right) return `both ${degrees(left)}, opposed`
  return [
    ...(left === 0 ? [] : [`left ${degrees(left)}`]),
    ...(right === 0 ? [] : [`right ${degrees(right)}`]),
  ].join(', ')
}

/** To a tenth of a degree, as a mitre saw is set. */
function degrees(hundredths: number): string {
  return `${Math.round(Math.abs(hundredths) / 10) / 10}°`
}
