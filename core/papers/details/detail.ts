import { inches } from '../../units/index.ts'
import { drawingOf } from '../drawings/shapes.ts'
import type { Drawing, Layer, LineWeight, Primitive, Stroke } from '../types.ts'

/** One detail: a small drawing with numbers in it, and what each number says. */
export interface Detail {
  readonly drawing: Drawing
  readonly notes: readonly string[]
}

/** A place in the drawing, where its number stands, and what it says. */
interface Note {
  readonly at: readonly [number, number]
  readonly to: readonly [number, number]
  readonly text: string
}

type Fill = 'wood' | 'house' | 'none' | 'ground'

/** A box by its corners, x to the right and y down, ticks. */
export function box(
  id: string,
  [x0, y0]: readonly [number, number],
  [x1, y1]: readonly [number, number],
  look: {
    readonly fill?: Fill
    readonly weight?: LineWeight
    readonly stroke?: Stroke
    readonly layer?: Layer
  } = {},
): Primitive {
  const { fill = 'none', weight = 'medium', stroke = 'solid', layer = 'joists' } = look
  return { kind: 'rect', id, layer, x: x0, y: y0, w: x1 - x0, h: y1 - y0, weight, stroke, fill }
}

/** Lines from point to point. */
export function trace(
  id: string,
  points: readonly (readonly [number, number])[],
  weight: LineWeight = 'fine',
  stroke: Stroke = 'solid',
): readonly Primitive[] {
  return points.slice(1).map(([x2, y2], i): Primitive => {
    const [x1, y1] = points[i] ?? [x2, y2]
    return { kind: 'line', id, layer: 'posts', x1, y1, x2, y2, weight, stroke }
  })
}

/** Numbers with their leaders, counted from 1 in the order given. */
export function detail(
  id: string,
  title: string,
  things: readonly Primitive[],
  notes: readonly Note[],
): Detail {
  const numbers = notes.flatMap(({ at, to }, i): readonly Primitive[] => [
    {
      kind: 'line',
      id: `${id}-${i + 1}`,
      layer: 'marks',
      x1: at[0],
      y1: at[1],
      x2: to[0],
      y2: to[1],
      weight: 'fine',
      stroke: 'solid',
    },
    {
      kind: 'text',
      id: `${id}-${i + 1}`,
      layer: 'dimensions',
      x: to[0],
      y: to[1],
      text: `${i + 1}`,
      anchor: 'middle',
      size: 'normal',
    },
  ])
  return {
    drawing: framed(drawingOf(id, title, [...things, ...numbers], inches(1))),
    notes: notes.map(({ text }) => text),
  }
}

/** Its own extent: a detail stands anywhere, and its origin is not part of it. */
function framed(drawing: Drawing): Drawing {
  const whole = drawing.primitives.flatMap(corners)
  const room = inches(3)
  return {
    ...drawing,
    x0: Math.min(...whole.map(([x]) => x)) - room,
    x1: Math.max(...whole.map(([x]) => x)) + room,
    y0: Math.min(...whole.map(([, y]) => y)) - room,
    y1: Math.max(...whole.map(([, y]) => y)) + room,
  }
}

function corners(p: Primitive): readonly (readonly [number, number])[] {
  switch (p.kind) {
    case 'rect':
      return [
        [p.x, p.y],
        [p.x + p.w, p.y + p.h],
      ]
    case 'polygon':
      return p.points.map(({ x, y }) => [x, y] as const)
    case 'line':
      return [
        [p.x1, p.y1],
        [p.x2, p.y2],
      ]
    case 'dimension': {
      const [dx, dy] = p.y1 === p.y2 ? [0, p.offset] : [p.offset, 0]
      return [
        [p.x1 + dx, p.y1 + dy],
        [p.x2 + dx, p.y2 + dy],
      ]
    }
    case 'circle':
      return [
        [p.cx - p.r, p.cy - p.r],
        [p.cx + p.r, p.cy + p.r],
      ]
    case 'text':
    case 'joint':
      return [[p.x, p.y]]
  }
}
