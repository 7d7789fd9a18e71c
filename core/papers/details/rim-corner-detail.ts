import { cite, nailing, nailingSources } from '../../data/index.ts'
import type { Estimate } from '../../estimate-types.ts'
import { type Box, fromAbove, type Member } from '../../frame/index.ts'
import { inches } from '../../units/index.ts'
import { levelDimension, uprightDimension } from '../drawings/shapes.ts'
import { type Detail, detail, trace } from './detail.ts'
import { nearTo } from './hip-details.ts'
import { membersWithin, type Window } from './seen-from-above.ts'

const HALF = inches(12)
const FRAME = new Set(['rim', 'joist', 'end joist', 'blocking'])
/** Nails go so far into the end grain of the joist. */
const NAIL = inches(3.5)

/** Where an end joist ends at the back of a rim, its outer face at the rim's end. */
interface Corner {
  readonly rim: Member
  readonly end: Member
  /** which way the rim goes on from here, and which way the end joist does */
  readonly rimOn: -1 | 1
  readonly joistOn: -1 | 1
  readonly alongX: boolean
  /** the outer corner of both */
  readonly x: number
  readonly y: number
}

/** The corner between a rim and an end joist from above: which runs through, and its nails; null where none is square. */
export function rimCornerDetail({ job, frame }: Estimate): Detail | null {
  const corners = frame.members
    .filter(({ role }) => role === 'end joist')
    .flatMap((end) =>
      frame.members.filter(({ role }) => role === 'rim').flatMap((rim) => cornerOf(rim, end) ?? []),
    )
  const [first] = corners
  if (first === undefined) return null
  const { rim, end, rimOn, joistOn, alongX } = first
  const way = (alongRim: number, alongJoist: number): readonly [number, number] =>
    alongX ? [alongRim, alongJoist] : [alongJoist, alongRim]
  const [inX, inY] = way(rimOn * inches(8), joistOn * inches(8))
  const window: Window = { about: { x: first.x + inX, y: first.y + inY }, half: HALF }
  const at = (alongRim: number, alongJoist: number): readonly [number, number] => {
    const [x, y] = way(rimOn * alongRim, joistOn * alongJoist)
    return [x - inX, y - inY]
  }
  const thick = thicknessOf(end.box, alongX)
  const rimThick = thicknessOf(rim.box, !alongX)
  const wood = nearTo(frame.members, window).filter(
    ({ id, role }) => FRAME.has(role) && id !== rim.id && id !== end.id,
  )
  const id = 'detail-rim-corner'
  const [atEnd, outer, inner] = [at(thick, 0), at(0, 0), at(0, rimThick)]
  const ply = job.frame.rimPlies > 1
  return detail(
    id,
    'Corner between a rim and an end joist, from above',
    [
      ...membersWithin(wood, window, { fill: 'wood', weight: 'fine' }),
      ...membersWithin([end], window, { fill: 'wood' }),
      ...membersWithin([rim], window, { fill: 'wood', weight: 'heavy' }),
      ...trace('rim-corner-nail', [at(thick / 2, -inches(0.25)), at(thick / 2, NAIL)], 'heavy'),
      alongX
        ? levelDimension(
            id,
            Math.min(outer[0], atEnd[0]),
            Math.max(outer[0], atEnd[0]),
            outer[1],
            -joistOn * inches(4),
          )
        : uprightDimension(
            id,
            Math.min(outer[1], atEnd[1]),
            Math.max(outer[1], atEnd[1]),
            outer[0],
            -joistOn * inches(4),
          ),
      alongX
        ? uprightDimension(
            id,
            Math.min(outer[1], inner[1]),
            Math.max(outer[1], inner[1]),
            outer[0],
            -rimOn * inches(7),
          )
        : levelDimension(
            id,
            Math.min(outer[0], inner[0]),
            Math.max(outer[0], inner[0]),
            outer[1],
            -rimOn * inches(7),
          ),
    ],
    [
      {
        at: at(inches(9), rimThick / 2),
        to: at(inches(9), -inches(7)),
        text: `Rim ${rim.mark} runs through to the outer face of the end joist and covers its end; both ends flush, tops flush. So at ${corners.map((one) => `${one.rim.mark} and ${one.end.mark}`).join(', ')}.`,
      },
      {
        at: at(thick / 2, inches(2)),
        to: at(-inches(7), inches(8)),
        text: `${nailing.rimToJoistEnd} nails 16d common through the rim into the end joist’s end, one over the other, 1 1/2 in off its edges (${cite(nailingSources.rimToJoistEnd)}; places common practice, no source)${ply ? '; the further plies are nailed to the first face to face' : ''}. Bore the rim first where it would split.`,
      },
      {
        at: at(thick / 2, inches(16)),
        to: at(-inches(7), inches(16)),
        text: `End joist ${end.mark}: its end is sawn square and stands tight against the rim’s back.${atHouse(frame.connectors)}`,
      },
    ],
  )
}

function atHouse(connectors: Estimate['frame']['connectors']): string {
  return connectors.some(({ kind, count }) => kind === 'end joist angle' && count > 0)
    ? ` At the house it laps the ledger’s end: ${nailing.endJoistToLedger} nails 16d through it into the ledger’s end, and one angle in the corner (${cite(nailingSources.endJoistToLedger)}).`
    : ''
}

/** Null where they do not meet square, or a mitre or another board lies between. */
function cornerOf(rim: Member, end: Member): Corner | null {
  if (end.plan !== undefined) return null
  const alongX = rim.box.x1 - rim.box.x0 > rim.box.y1 - rim.box.y0
  const [r0, r1, rFront, rBack] = sides(rim.box, alongX)
  const [e0, e1, eNear, eFar] = sides(end.box, alongX)
  const joistOn = near(eNear, rBack) ? 1 : near(eFar, rFront) ? -1 : null
  const rimOn = near(e0, r0) ? 1 : near(e1, r1) ? -1 : null
  if (joistOn === null || rimOn === null) return null
  const corner = rimOn === 1 ? r0 : r1
  const [out, back] = joistOn === 1 ? [rFront, rBack] : [rBack, rFront]
  // its other end may be mitred: here it is square
  const isSquare = [out, back].every((across) =>
    fromAbove(rim).some(
      (spot) => near(alongX ? spot.x : spot.y, corner) && near(alongX ? spot.y : spot.x, across),
    ),
  )
  if (!isSquare) return null
  return { rim, end, rimOn, joistOn, alongX, x: alongX ? corner : out, y: alongX ? out : corner }
}

/** From and to along one axis, from and to along the other. */
function sides({ x0, x1, y0, y1 }: Box, alongX: boolean): readonly [number, number, number, number] {
  return alongX ? [x0, x1, y0, y1] : [y0, y1, x0, x1]
}

function thicknessOf(box: Box, alongX: boolean): number {
  return alongX ? box.x1 - box.x0 : box.y1 - box.y0
}

function near(a: number, b: number): boolean {
  return Math.abs(a - b) < 1
}
