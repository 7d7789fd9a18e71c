import { type Polygon, twiceArea } from '../geometry/index.ts'
import { type Ticks, ticks } from '../units/index.ts'
import { boundsOf } from './footprint.ts'
import type { EndCuts } from './types.ts'

/** Clipping leaves corners within a thousandth of a tick of a line. */
const NOISE = 0.05

/** What a board's shape says of how it is sawn; the board lies along x. */
interface Slant {
  /** across, where both of its long edges are there; null: it ends in a point */
  readonly width: Ticks | null
  /** degrees off square in hundredths, where an end is one straight cut; null where both ends are square */
  readonly ends: EndCuts | null
  readonly isSquare: boolean
}

/** An end with more than one cut, where a corner reaches into the board, counts as square: it is cut to fit in place. */
export function slantOf(shape: Polygon): Slant {
  const { x0, x1, y0, y1 } = boundsOf(shape)
  const edgeAt = (y: number) => {
    const xs = shape.filter((point) => Math.abs(point.y - y) < NOISE).map(({ x }) => x)
    return { left: Math.min(...xs), right: Math.max(...xs) }
  }
  const [near, far] = [edgeAt(y0), edgeAt(y1)]
  const isStraight = (a: number, b: number, side: 1 | -1) =>
    shape.every(({ x, y }) => side * (x - (a + ((b - a) * (y - y0)) / (y1 - y0))) >= -NOISE)
  const left = isStraight(near.left, far.left, 1) ? angleOf(far.left - near.left, y1 - y0) : 0
  const right = isStraight(near.right, far.right, -1) ? angleOf(far.right - near.right, y1 - y0) : 0
  const pointed = near.right - near.left < NOISE || far.right - far.left < NOISE
  return {
    width: pointed ? null : ticks(Math.round(y1 - y0)),
    ends: left === 0 && right === 0 ? null : [left, right],
    isSquare: twiceArea(shape) / 2 >= (x1 - x0) * (y1 - y0) - 1,
  }
}

/** Degrees off square in hundredths; positive where the far long edge ends further right. */
function angleOf(shift: number, across: number): number {
  return Math.round((Math.atan2(shift, across) * 18_000) / Math.PI)
}
