import type { Mark } from '../page-types.ts'
import { widthOf } from '../type/measure.ts'
import { plainText } from '../type/plain-text.ts'
import type { Primitive } from '../types.ts'
import { LINE, lineMark, textMark } from './marks.ts'

type Dimension = Extract<Primitive, { kind: 'dimension' }>

const SIZE = 7.5
/** half of an architectural tick; how far a witness line passes the dimension line, and keeps off the thing; points */
const TICK = 3
const PAST = 4
const OFF = 3

/** Whether other dimensions go on from the left and from the right end of a level one, on its line. */
interface Chain {
  readonly before: boolean
  readonly after: boolean
}

export function chainOf(p: Dimension, all: readonly Primitive[]): Chain {
  const beside = all.filter(
    (one): one is Dimension =>
      one.kind === 'dimension' && one.y1 === p.y1 && one.y2 === p.y2 && one.offset === p.offset,
  )
  return {
    before: beside.some(({ x1, x2 }) => Math.max(x1, x2) === Math.min(p.x1, p.x2)),
    after: beside.some(({ x1, x2 }) => Math.min(x1, x2) === Math.max(p.x1, p.x2)),
  }
}

/** A dimension line with architectural ticks; its text over the line, on an upright one turned to be read from the right. */
export function dimensionMarks(
  p: Dimension,
  toX: (at: number) => number,
  toY: (at: number) => number,
  chain: Chain,
): readonly Mark[] {
  const upright = Math.abs(p.x2 - p.x1) < Math.abs(p.y2 - p.y1)
  const [a, b] = upright
    ? [
        { x: toX(p.x1 + p.offset), y: toY(p.y1) },
        { x: toX(p.x2 + p.offset), y: toY(p.y2) },
      ]
    : [
        { x: toX(p.x1), y: toY(p.y1 + p.offset) },
        { x: toX(p.x2), y: toY(p.y2 + p.offset) },
      ]
  const { id } = p
  const way = Math.sign(p.offset) || 1
  const witness = (fromX: number, fromY: number, to: { readonly x: number; readonly y: number }): Mark =>
    upright
      ? lineMark(fromX + way * OFF, fromY, to.x + way * PAST, to.y, { id })
      : lineMark(fromX, fromY + way * OFF, to.x, to.y + way * PAST, { id })
  const tick = ({ x, y }: { readonly x: number; readonly y: number }): Mark =>
    lineMark(x - TICK, y + TICK, x + TICK, y - TICK, { id, width: LINE.medium })
  return [
    ...(p.offset === 0 ? [] : [witness(toX(p.x1), toY(p.y1), a), witness(toX(p.x2), toY(p.y2), b)]),
    lineMark(a.x, a.y, b.x, b.y, { id }),
    tick(a),
    tick(b),
    words(p, upright, a, b, chain),
  ]
}

function words(
  p: Dimension,
  upright: boolean,
  a: { readonly x: number; readonly y: number },
  b: { readonly x: number; readonly y: number },
  { before, after }: Chain,
): Mark {
  const text = plainText(p.text)
  const wide = widthOf(text, SIZE)
  const look = { id: p.id, size: SIZE }
  if (upright) {
    return textMark(a.x - 3, (a.y + b.y) / 2, text, { ...look, anchor: 'middle', turned: true })
  }
  const long = Math.abs(b.x - a.x)
  if (wide + 6 <= long) return textMark((a.x + b.x) / 2, a.y - 2.5, text, { ...look, anchor: 'middle' })
  // too short for its text: beyond the end that is the end of its chain, or in a row over its neighbours' figures
  const [left, right] = [Math.min(a.x, b.x), Math.max(a.x, b.x)]
  if (p.x1 <= 0) return textMark(left - 5, a.y - 2.5, text, { ...look, anchor: 'end' })
  if (!after) return textMark(right + 5, a.y - 2.5, text, look)
  const over = a.y - 2.5 - SIZE
  return before
    ? textMark(left + 2, over, text, look)
    : textMark(right - 2, over, text, { ...look, anchor: 'end' })
}
