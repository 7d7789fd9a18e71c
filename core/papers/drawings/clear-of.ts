import type { Segment } from '../../geometry/index.ts'
import { inches } from '../../units/index.ts'
import type { Primitive } from '../types.ts'
import type { stairShapes } from './plan-stairs.ts'

/** A dimension takes so much on either side of its line, figures and ticks, and keeps so much off what is in its way. */
const BAND = inches(8)
const CLEAR = inches(12)

export type Shape = ReturnType<typeof stairShapes>[number]

/**
 * How far outside an edge its dimension stands: so far at least, and past every stair, or other dimension, that its line
 * or its figures would run across.
 */
export function clearOf({ from, to }: Segment, least: number, inTheWay: readonly Shape[]): number {
  const length = Math.hypot(to.x - from.x, to.y - from.y)
  const along = { x: (to.x - from.x) / length, y: (to.y - from.y) / length }
  // the outline runs with the deck at its left, so that outside lies at the right of each edge
  const rooms = inTheWay.map((shape) => {
    const ways = shape.map(({ x, y }) => (x - from.x) * along.x + (y - from.y) * along.y)
    const outs = shape.map(({ x, y }) => (x - from.x) * along.y - (y - from.y) * along.x)
    return {
      isBeside: Math.max(...ways) > 0 && Math.min(...ways) < length,
      near: Math.min(...outs),
      far: Math.max(...outs),
    }
  })
  let off = least
  for (;;) {
    const met = rooms.filter(({ isBeside, near, far }) => isBeside && near < off + BAND && far > off - BAND)
    if (met.length === 0) return off
    off = Math.max(...met.map(({ far }) => far)) + CLEAR
  }
}

/** The line on which a dimension's figures stand. */
export function figuresLine(p: Primitive): readonly Shape[] {
  if (p.kind !== 'dimension') return []
  const [dx, dy] = p.x1 === p.x2 ? [p.offset, 0] : [0, p.offset]
  return [
    [
      { x: p.x1 + dx, y: p.y1 + dy },
      { x: p.x2 + dx, y: p.y2 + dy },
    ],
  ]
}
