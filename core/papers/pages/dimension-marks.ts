import type { Mark } from '../page-types.ts'
import { widthOf } from '../type/measure.ts'
import { plainText } from '../type/plain-text.ts'
import type { Primitive } from '../types.ts'
import { halo, LINE, lineMark, textMark } from './marks.ts'
import { meet, type Room, type ToPage } from './rooms.ts'
import { clearBy, slidesAlong } from './slides.ts'

type Dimension = Extract<Primitive, { kind: 'dimension' }>

const SIZE = 7.5
/** half of an architectural tick; how far a witness line passes the dimension line, and keeps off the thing; points */
const TICK = 3
const PAST = 4
const OFF = 3
/** figures beside an upright line end so far off its witness lines, both ends together */
const BETWEEN = 1
/** figures that find no place of their own slide along their line so far at most */
const REACH = 24

/** A dimension line as it stands on the page. */
interface Line {
  readonly upright: boolean
  readonly a: Point
  readonly b: Point
}
interface Point {
  readonly x: number
  readonly y: number
}

function lineOf(p: Dimension, toX: ToPage, toY: ToPage): Line {
  const upright = Math.abs(p.x2 - p.x1) < Math.abs(p.y2 - p.y1)
  const [dx, dy] = upright ? [p.offset, 0] : [0, p.offset]
  return {
    upright,
    a: { x: toX(p.x1 + dx), y: toY(p.y1 + dy) },
    b: { x: toX(p.x2 + dx), y: toY(p.y2 + dy) },
  }
}

/** A dimension line with its witness lines and architectural ticks. */
export function dimensionLines(p: Dimension, toX: ToPage, toY: ToPage): readonly Mark[] {
  const { upright, a, b } = lineOf(p, toX, toY)
  const { id } = p
  const way = Math.sign(p.offset) || 1
  const witness = (fromX: number, fromY: number, to: Point): Mark =>
    upright
      ? lineMark(fromX + way * OFF, fromY, to.x + way * PAST, to.y, { id })
      : lineMark(fromX, fromY + way * OFF, to.x, to.y + way * PAST, { id })
  const tick = ({ x, y }: Point): Mark =>
    lineMark(x - TICK, y + TICK, x + TICK, y - TICK, { id, width: LINE.medium })
  return [
    ...(p.offset === 0 ? [] : [witness(toX(p.x1), toY(p.y1), a), witness(toX(p.x2), toY(p.y2), b)]),
    lineMark(a.x, a.y, b.x, b.y, { id }),
    tick(a),
    tick(b),
  ]
}

/**
 * The figures of a dimension: over the middle of a level line, on an upright one turned to be read from the right, or
 * the next best place where something is written there already.
 */
export function dimensionFigures(
  p: Dimension,
  toX: ToPage,
  toY: ToPage,
  all: readonly Primitive[],
  taken: Room[],
): readonly Mark[] {
  const text = plainText(p.text)
  const line = lineOf(p, toX, toY)
  const wide = widthOf(text, SIZE)
  const places = line.upright
    ? placesBesideUpright(line, wide, p.offset < 0, chainOf(p, all))
    : placesOverLevel(line, wide, p.x1 <= 0, chainOf(p, all))
  const rooms = places.map((place) => ({ place, room: roomOf(place, wide) }))
  const found = rooms.find(({ room }) => !taken.some((other) => meet(room, other))) ?? rooms[0]
  if (found === undefined) return []
  const [along, across] = line.upright ? (['y', 'x'] as const) : (['x', 'y'] as const)
  const slides = [...slidesAlong(along, REACH), ...slidesAlong(across, REACH)]
  const by = clearBy(found.room, taken, slides) ?? [0, 0]
  const room = {
    x0: found.room.x0 + by[0],
    x1: found.room.x1 + by[0],
    y0: found.room.y0 + by[1],
    y1: found.room.y1 + by[1],
  }
  taken.push(room)
  const { x, y, ...look } = found.place
  return [halo(room), textMark(x + by[0], y + by[1], text, { id: p.id, size: SIZE, ...look })]
}

/** Where figures may stand: their baseline's point, and how they stand at it. */
interface Place extends Point {
  readonly anchor: 'start' | 'middle' | 'end'
  readonly turned: boolean
}

function roomOf({ x, y, anchor, turned }: Place, wide: number): Room {
  if (turned) return { x0: x - SIZE * 0.8, x1: x + 1, y0: y - wide / 2, y1: y + wide / 2 }
  const left = x - (anchor === 'middle' ? wide / 2 : anchor === 'end' ? wide : 0)
  return { x0: left - 1, x1: left + wide + 1, y0: y - SIZE * 0.8, y1: y + 1 }
}

/**
 * Best first: turned along the line, or where it is too short for that level beside it or beyond the lower end of its
 * chain. Over the upper end it would be read as the height of what stands there.
 */
function placesBesideUpright(
  { a, b }: Line,
  wide: number,
  toLeft: boolean,
  { before, after }: Chain,
): readonly Place[] {
  const middle = (a.y + b.y) / 2
  const turned = (x: number): Place => ({ x, y: middle, anchor: 'middle', turned: true })
  const beside = (isLeft: boolean): Place => ({
    x: a.x + (isLeft ? -5 : 5),
    y: middle + SIZE * 0.35,
    anchor: isLeft ? 'end' : 'start',
    turned: false,
  })
  const along = [turned(a.x - 3), turned(a.x + SIZE * 0.8 + 3)]
  const level = [beside(!toLeft), beside(toLeft)]
  const past = wide / 2 + TICK + 3
  const pastEnd = (y: number): Place => ({ x: a.x + SIZE * 0.35, y, anchor: 'middle', turned: true })
  if (wide + BETWEEN <= Math.abs(b.y - a.y)) return [...along, ...level]
  if (after && !before) return [...level, pastEnd(Math.min(a.y, b.y) - past), ...along]
  return [...(before && !after ? [pastEnd(Math.max(a.y, b.y) + past)] : []), ...level, ...along]
}

/** Best first: over the middle; where it is too short, beyond the end of its chain, or in a row over its neighbours' figures. */
function placesOverLevel(
  { a, b }: Line,
  wide: number,
  isFirst: boolean,
  { before, after }: Chain,
): readonly Place[] {
  const [left, right] = [Math.min(a.x, b.x), Math.max(a.x, b.x)]
  const row = a.y - 2.5
  const place = (x: number, y: number, anchor: Place['anchor']): Place => ({ x, y, anchor, turned: false })
  const over = place((left + right) / 2, row, 'middle')
  const under = place((left + right) / 2, a.y + SIZE * 0.8 + 2.5, 'middle')
  const beforeIt = place(left - 5, row, 'end')
  const afterIt = place(right + 5, row, 'start')
  const higher = [place(right - 2, row - SIZE, 'end'), place(left + 2, row - SIZE, 'start')]
  if (wide + 6 <= right - left) return [over, under, ...higher]
  if (isFirst) return [beforeIt, ...higher, under]
  if (!after) return [afterIt, ...higher, under]
  return before ? [...higher.toReversed(), under] : [...higher, beforeIt, under]
}

/** Whether other dimensions go on from the left and from the right end of one, from the upper and the lower of an upright one, on its line. */
interface Chain {
  readonly before: boolean
  readonly after: boolean
}

function chainOf(p: Dimension, all: readonly Primitive[]): Chain {
  const isUpright = p.x1 === p.x2
  const others = all.filter((one): one is Dimension => one.kind === 'dimension' && one.offset === p.offset)
  if (isUpright) {
    const above = others.filter(({ x1, x2 }) => x1 === p.x1 && x2 === p.x2)
    return {
      before: above.some(({ y1, y2 }) => Math.max(y1, y2) === Math.min(p.y1, p.y2)),
      after: above.some(({ y1, y2 }) => Math.min(y1, y2) === Math.max(p.y1, p.y2)),
    }
  }
  const beside = others.filter(({ y1, y2 }) => y1 === p.y1 && y2 === p.y2)
  return {
    before: beside.some(({ x1, x2 }) => Math.max(x1, x2) === Math.min(p.x1, p.x2)),
    after: beside.some(({ x1, x2 }) => Math.min(x1, x2) === Math.max(p.x1, p.x2)),
  }
}
