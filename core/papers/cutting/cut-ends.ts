import type { Estimate, Planned } from '../../estimate-types.ts'
import type { EndCuts } from '../../frame/index.ts'

type Member = Estimate['frame']['members'][number]
type RunPiece = Planned['plan']['runPieces'][number]

/** How far a direction must lean from 45° to count as running away from the house. */
const STEEPER = 1.01

/** Whether an end of a piece, whole or of a run, is not square. */
export function isOffSquare(member: Member, run: Pick<RunPiece, 'from' | 'to'> | undefined): boolean {
  const ends = run === undefined ? member.ends : runPieceEnds(member, run)
  return ends?.some((angle) => angle !== 0) === true
}

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

/**
 * "bevel left 45° long front, right 22.5° long rear": how it is sawn, which end as the piece lies in the deck seen from
 * above, and on which side of it the long point is; an end that is a joint is cut along the joist. Empty where both ends
 * are square. A board that runs away from the house has a rear and a front end, and a left and a right side.
 * @param nameOf what else an end is called
 */
export function endWords(
  member: Member,
  ends: EndCuts | undefined = member.ends,
  nameOf: (end: string) => string = (end) => end,
): string {
  if (ends === undefined) return ''
  if (member.slope !== undefined)
    return `${plumbWay(member)} both ends ${degrees(ends[0])}, plumb and parallel`
  if (member.role === 'guard post') return `upper end ${degrees(ends[1])}, to the slope`
  const own = member.ends ?? [0, 0]
  const words = ([0, 1] as const).flatMap((at) => {
    const cut = ends[at]
    if (cut === 0) return []
    const { end, long } = endOf(member, at)
    const where = cut === own[at] && long !== null ? `long ${long}` : 'along the joist'
    return [`${nameOf(end)} ${degrees(cut)} ${where}`]
  })
  return words.length === 0 ? '' : `${liesFlat(member) ? 'mitre' : 'bevel'} ${words.join(', ')}`
}

/** Decking and a cap lie flat and are cut across their width; all else stands on edge and is cut through its thickness. */
export function liesFlat({ role, slope }: Pick<Member, 'role' | 'slope'>): boolean {
  return role === 'decking' || (role === 'guard cap' && slope === undefined)
}

/** Along stairs a rail stands on edge and is cut across its width, a cap lies on it and is cut through its thickness. */
function plumbWay({ role }: Pick<Member, 'role'>): 'mitre' | 'bevel' {
  return role === 'guard rail' ? 'mitre' : 'bevel'
}

/** Which end the first or second of a member's cuts is, and the side on which that end's long point lies, from its shape. */
export function endOf(
  { box, line, plan = [] }: Pick<Member, 'box' | 'line' | 'plan'>,
  at: 0 | 1,
): { readonly end: string; readonly long: string | null } {
  const along = box.x1 - box.x0 >= box.y1 - box.y0 ? { x: 1, y: 0 } : { x: 0, y: 1 }
  const [from, to] = line ?? [{ x: 0, y: 0 }, along]
  const way = { x: to.x - from.x, y: to.y - from.y }
  const out = at === 0 ? { x: -way.x, y: -way.y } : way
  const away = Math.abs(way.y) > STEEPER * Math.abs(way.x)
  const end = away ? (out.y > 0 ? 'front' : 'rear') : out.x > 0 ? 'right' : 'left'
  const [first, ...rest] = plan
  if (first === undefined) return { end, long: null }
  const reach = (point: { x: number; y: number }) => point.x * out.x + point.y * out.y
  const tip = rest.reduce((most, point) => (reach(point) > reach(most) ? point : most), first)
  const middle = { x: (box.x0 + box.x1) / 2, y: (box.y0 + box.y1) / 2 }
  // which side of the middle line, as a turn to the left of the way; seen from above y runs to the front
  const turn = way.x * (tip.y - middle.y) - way.y * (tip.x - middle.x)
  const side = away ? (turn * way.y < 0 ? 'right' : 'left') : turn * way.x > 0 ? 'front' : 'rear'
  return { end, long: side }
}

/** To a tenth of a degree, as a mitre saw is set. */
function degrees(hundredths: number): string {
  return `${Math.round(Math.abs(hundredths) / 10) / 10}°`
}
