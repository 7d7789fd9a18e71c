import type { Box, Member } from '../../frame/index.ts'
import { printLength, ticks } from '../../units/index.ts'
import type { Drawing, Layer, Primitive } from '../types.ts'

type Rect = Extract<Primitive, { kind: 'rect' }>

/** A box seen from above. */
export function seenFromAbove(
  id: string,
  box: Box,
  as: Pick<Rect, 'layer' | 'weight' | 'stroke' | 'fill'>,
): Rect {
  return { kind: 'rect', id, ...as, x: box.x0, y: box.y0, w: box.x1 - box.x0, h: box.y1 - box.y0 }
}

/** A member seen from above: its box, or its shape where that is another. */
export function memberFromAbove(
  { id, box, plan }: Pick<Member, 'id' | 'box' | 'plan'>,
  as: Pick<Rect, 'layer' | 'weight' | 'stroke' | 'fill'>,
): Primitive {
  return plan === undefined ? seenFromAbove(id, box, as) : { kind: 'polygon', id, ...as, points: plan }
}

export function text(id: string, layer: Layer, x: number, y: number, words: string): Primitive {
  return { kind: 'text', id, layer, x, y, text: words, anchor: 'middle', size: 'small' }
}

/** A level dimension over two points at one y. */
export function levelDimension(id: string, x1: number, x2: number, y: number, offset: number): Primitive {
  const words = printLength(ticks(Math.round(Math.abs(x2 - x1))))
  return { kind: 'dimension', id, layer: 'dimensions', x1, y1: y, x2, y2: y, offset, text: words }
}

/** An upright dimension over two points at one x. */
export function uprightDimension(
  id: string,
  y1: number,
  y2: number,
  x: number,
  offset: number,
): Extract<Primitive, { readonly kind: 'dimension' }> {
  const words = printLength(ticks(Math.round(Math.abs(y2 - y1))))
  return { kind: 'dimension', id, layer: 'dimensions', x1: x, y1, x2: x, y2, offset, text: words }
}

/**
 * A drawing with the extent of all that is on it and a margin around.
 * @param fromOrigin whether the plan's origin is within it, where nothing is drawn there too
 */
export function drawingOf(
  id: string,
  title: string,
  primitives: readonly Primitive[],
  margin: number,
  fromOrigin = true,
): Drawing {
  const zero = fromOrigin ? [0] : []
  const xs = [...zero, ...primitives.flatMap(horizontal)]
  const ys = [...zero, ...primitives.flatMap(vertical)]
  return {
    id,
    title,
    x0: Math.min(...xs) - margin,
    y0: Math.min(...ys) - margin,
    x1: Math.max(...xs) + margin,
    y1: Math.max(...ys) + margin,
    primitives,
  }
}

function horizontal(p: Primitive): readonly number[] {
  switch (p.kind) {
    case 'rect':
      return [p.x, p.x + p.w]
    case 'polygon':
      return p.points.map(({ x }) => x)
    case 'line':
      return [p.x1, p.x2]
    case 'circle':
      return [p.cx - p.r, p.cx + p.r]
    case 'dimension':
      return p.y1 === p.y2 ? [p.x1, p.x2] : [p.x1 + p.offset]
    case 'text':
    case 'joint':
      return [p.x]
  }
}

function vertical(p: Primitive): readonly number[] {
  switch (p.kind) {
    case 'rect':
      return [p.y, p.y + p.h]
    case 'polygon':
      return p.points.map(({ y }) => y)
    case 'line':
      return [p.y1, p.y2]
    case 'circle':
      return [p.cy - p.r, p.cy + p.r]
    case 'dimension':
      return p.y1 === p.y2 ? [p.y1 + p.offset] : [p.y1, p.y2]
    case 'text':
    case 'joint':
      return [p.y]
  }
}
