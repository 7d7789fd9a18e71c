import type { Carrier, CarrierMark } from '../../frame/index.ts'
import { inches, printLength } from '../../units/index.ts'
import type { Drawing, Primitive } from '../types.ts'
import { drawingOf } from './shapes.ts'

/** Height of a drawn carrier, and from one to the next: room for running figures below, for marks above. */
const HEIGHT = inches(12)
const PITCH = inches(62)
const FIGURES = inches(3)
const FIGURES_LONG = inches(24)

/** Carriers one below the other as they lie, an X on each member's place, running figures from the hooked end. */
export function markingDrawing(carriers: readonly Carrier[]): Drawing {
  const primitives = carriers.flatMap((carrier, row) => drawn(carrier, row * PITCH))
  const drawing = drawingOf('joist-marking', 'Joist marks', primitives, inches(8))
  return { ...drawing, y1: drawing.y1 + FIGURES_LONG }
}

function drawn(carrier: Carrier, y: number): readonly Primitive[] {
  const { id, length, from, marks, lines, label, hookedAt } = carrier
  // a board that runs away from the house has no left end on the plan: its hooked end is drawn at the left
  const x = (at: number): number => (from === 'right' ? length - at : at)
  const bar: Primitive = {
    kind: 'rect',
    id,
    layer: 'joists',
    x: 0,
    y,
    w: length,
    h: HEIGHT,
    weight: 'medium',
    stroke: 'solid',
    fill: 'wood',
  }
  const words = (at: number, above: number, text: string, anchor: 'start' | 'middle'): Primitive => ({
    kind: 'text',
    id,
    layer: 'beams',
    x: at,
    y: y - above,
    text,
    anchor,
    size: 'normal',
  })
  return [
    bar,
    words(
      0,
      inches(13),
      `${label}, ${printLength(length)} long, tape hooked on ${hookedAt === undefined ? '' : 'the long point of '}its ${from} end${hookedAt === undefined ? '' : `, the one at the ${hookedAt}: seen facing the marked face, which the joists meet`}${from === 'rear' || from === 'front' ? ', drawn at the left' : ''}`,
      'start',
    ),
    ...marks.flatMap((mark) => markAt(mark, x, y)),
    ...lines.map(
      ({ id: what, at }): Primitive => ({
        kind: 'line',
        id: what,
        layer: 'beams',
        x1: x(at),
        y1: y - inches(2),
        x2: x(at),
        y2: y + HEIGHT + inches(2),
        weight: 'fine',
        stroke: 'centre',
      }),
    ),
  ]
}

function markAt(
  { memberId, mark, at, wide }: CarrierMark,
  x: (at: number) => number,
  y: number,
): readonly Primitive[] {
  const a = x(at)
  const b = x(at + wide)
  const line = (x1: number, y1: number, x2: number, y2: number, weight: 'fine' | 'heavy'): Primitive => ({
    kind: 'line',
    id: memberId,
    layer: 'joints',
    x1,
    y1,
    x2,
    y2,
    weight,
    stroke: 'solid',
  })
  return [
    line(a, y, a, y + HEIGHT, 'heavy'),
    line(b, y, b, y + HEIGHT, 'fine'),
    line(a, y + HEIGHT * 0.3, b, y + HEIGHT * 0.7, 'fine'),
    line(a, y + HEIGHT * 0.7, b, y + HEIGHT * 0.3, 'fine'),
    {
      kind: 'text',
      id: memberId,
      layer: 'marks',
      x: (a + b) / 2,
      y: y - inches(3.5),
      text: mark,
      anchor: 'middle',
      size: 'small',
    },
    {
      kind: 'text',
      id: memberId,
      layer: 'dimensions',
      x: a,
      y: y + HEIGHT + FIGURES,
      text: printLength(at),
      anchor: 'end',
      size: 'small',
      turned: true,
    },
  ]
}
