import { cite, nailing, nailingSources } from '../../data/index.ts'
import type { Estimate } from '../../estimate-types.ts'
import { innerCorners } from '../../frame/index.ts'
import { inches } from '../../units/index.ts'
import { type Detail, detail, trace } from './detail.ts'
import { nearTo } from './hip-details.ts'
import { membersWithin, type Window } from './seen-from-above.ts'

const HALF = inches(12)
const FRAME = new Set(['rim', 'joist', 'end joist', 'blocking'])
/** Nails go so far into the rim's end. */
const NAIL = inches(3.5)

/** The inner corner at which a rim ends at the side of an end joist, from above; null where no frame has one. */
export function innerCornerDetail({ frame }: Estimate): Detail | null {
  const corners = innerCorners(frame.members)
  const [first] = corners
  if (first === undefined) return null
  const { rim, end, alongX, rimOn } = first
  const along = alongX ? (rimOn === 1 ? rim.box.x0 : rim.box.x1) : rimOn === 1 ? rim.box.y0 : rim.box.y1
  const across = alongX ? (rim.box.y0 + rim.box.y1) / 2 : (rim.box.x0 + rim.box.x1) / 2
  const way = (one: number, other: number): readonly [number, number] =>
    alongX ? [one, other] : [other, one]
  const [x, y] = way(along + rimOn * inches(4), across)
  const window: Window = { about: { x, y }, half: HALF }
  const at = (on: number, aside: number): readonly [number, number] => way(rimOn * (on - inches(4)), aside)
  const thick = alongX ? end.box.x1 - end.box.x0 : end.box.y1 - end.box.y0
  const wood = nearTo(frame.members, window).filter(
    ({ id, role }) => FRAME.has(role) && id !== rim.id && id !== end.id,
  )
  return detail(
    'detail-inner-corner',
    'Inner corner, where a rim ends at an end joist, from above',
    [
      ...membersWithin(wood, window, { fill: 'wood', weight: 'fine' }),
      ...membersWithin([rim], window, { fill: 'wood' }),
      ...membersWithin([end], window, { fill: 'wood', weight: 'heavy' }),
      ...trace('inner-corner-nail', [at(-thick - inches(0.25), 0), at(NAIL - thick, 0)], 'heavy'),
    ],
    [
      {
        at: at(-thick / 2, inches(6)),
        to: at(-inches(8), inches(9)),
        text: `End joist ${end.mark} runs through; tops flush. So at ${corners.map((one) => `${one.rim.mark} and ${one.end.mark}`).join(', ')}.`,
      },
      {
        at: at(inches(8), 0),
        to: at(inches(8), -inches(9)),
        text: `Rim ${rim.mark}: its end is sawn square and stands tight against the end joist’s outer face. Set the end joist first, then the rim.`,
      },
      {
        at: at(0, 0),
        to: at(-inches(8), -inches(6)),
        text: `${nailing.rimToJoistEnd} nails 16d common through the end joist into the rim’s end, one over the other, 1 1/2 in off its edges, driven before the next joist is in the way (${cite(nailingSources.rimToJoistEnd)}, read of a rim and a joist’s end; places common practice, no source).`,
      },
    ],
  )
}
