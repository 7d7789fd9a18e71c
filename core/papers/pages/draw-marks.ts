import { strokeWithin } from '../drawings/joint-stroke.ts'
import type { Mark, Placed } from '../page-types.ts'
import { widthOf } from '../type/measure.ts'
import { plainText } from '../type/plain-text.ts'
import type { Drawing, Layer, Primitive, Stroke } from '../types.ts'
import { dimensionFigures, dimensionLines } from './dimension-marks.ts'
import { hatch } from './hatch.ts'
import { boxMark, halo, LINE, lineMark, pathMark, textMark } from './marks.ts'
import type { Room, ToPage } from './rooms.ts'
import { clearBy, slidesOf } from './slides.ts'

const DASHES: { readonly [stroke in Stroke]: readonly number[] } = {
  solid: [],
  hidden: [3.5, 2],
  centre: [9, 2, 2, 2],
}
const SIZES = { small: 7, normal: 8.5 } as const
/** the stroke of a joint passes the faces of a member on edge by so much, points */
const JOINT_REACH = 5

/**
 * A drawing's primitives as marks of a page, layer by layer from the lowest up; what is written comes after all that is
 * drawn, so that no line runs through a number.
 */
export function drawMarks(drawing: Drawing, layers: readonly Layer[], placed: Placed): readonly Mark[] {
  const x = (at: number): number => placed.left + (at - placed.x0) * placed.scale
  const y = (at: number): number => placed.top + (at - placed.y0) * placed.scale
  const shown = layers.flatMap((layer) => drawing.primitives.filter((primitive) => primitive.layer === layer))
  const taken: Room[] = []
  return [
    ...shown.flatMap((primitive) => drawn(primitive, x, y, placed.scale)),
    ...shown.flatMap((primitive) => written(primitive, x, y, taken, drawing.primitives)),
  ]
}

function drawn(p: Primitive, x: ToPage, y: ToPage, scale: number): readonly Mark[] {
  switch (p.kind) {
    case 'rect': {
      const box = { x: x(p.x), y: y(p.y), w: p.w * scale, h: p.h * scale }
      if (p.fill === 'house') return house(p.id, box)
      const fill = p.fill === 'wood' ? 'wood' : p.fill === 'ground' ? 'tint' : 'none'
      return [
        boxMark(box.x, box.y, box.w, box.h, {
          id: p.id,
          fill,
          width: LINE[p.weight],
          dash: DASHES[p.stroke],
        }),
      ]
    }
    case 'polygon': {
      const fill = p.fill === 'wood' ? 'wood' : p.fill === 'none' ? 'none' : 'tint'
      const points = p.points.map((point) => [x(point.x), y(point.y)] as const)
      const width = p.fill === 'house' ? 0 : LINE[p.weight]
      return [pathMark(points, { id: p.id, fill, width, dash: DASHES[p.stroke] })]
    }
    case 'line':
      return [
        lineMark(x(p.x1), y(p.y1), x(p.x2), y(p.y2), {
          id: p.id,
          width: LINE[p.weight],
          dash: DASHES[p.stroke],
        }),
      ]
    case 'circle':
      return [
        {
          kind: 'circle',
          id: p.id,
          cx: x(p.cx),
          cy: y(p.cy),
          r: p.r * scale,
          width: LINE[p.weight],
          dash: DASHES[p.stroke],
          fill: 'none',
          tone: 'ink',
        },
      ]
    case 'text':
      return []
    case 'dimension':
      return dimensionLines(p, x, y)
    case 'joint': {
      const within = strokeWithin(p.half)
      const reach = within === null ? p.half * scale + JOINT_REACH : within * scale
      const [cx, cy] = [x(p.x), y(p.y)]
      const look = { id: p.id, width: 2.2 }
      return p.along === 'x'
        ? [lineMark(cx, cy - reach, cx, cy + reach, look)]
        : [lineMark(cx - reach, cy, cx + reach, cy, look)]
    }
  }
}

function written(
  p: Primitive,
  x: ToPage,
  y: ToPage,
  taken: Room[],
  all: Drawing['primitives'],
): readonly Mark[] {
  if (p.kind === 'dimension') return dimensionFigures(p, x, y, all, taken)
  if (p.kind !== 'text') return []
  const size = SIZES[p.size]
  const words = plainText(p.text)
  const wide = widthOf(words, size)
  if (p.turned === true) {
    const top = y(p.y) - (p.anchor === 'middle' ? wide / 2 : p.anchor === 'start' ? wide : 0)
    const room = { x0: x(p.x) - size / 2, x1: x(p.x) + size / 2, y0: top, y1: top + wide }
    taken.push(room)
    return [
      halo(room),
      textMark(x(p.x) + size * 0.33, y(p.y), words, { id: p.id, size, anchor: p.anchor, turned: true }),
    ]
  }
  const left = x(p.x) - (p.anchor === 'middle' ? wide / 2 : p.anchor === 'end' ? wide : 0)
  const own = { x0: left - 1.5, x1: left + wide + 1.5, y0: y(p.y) - size / 2, y1: y(p.y) + size / 2 }
  const by = clearBy(own, taken, slidesOf(p, all, x, y))
  // a mark that finds no room gives way to those before it; anything else is written where it stands
  if (by === null && p.layer === 'marks') return []
  const [dx, dy] = by ?? [0, 0]
  const room = { x0: own.x0 + dx, x1: own.x1 + dx, y0: own.y0 + dy, y1: own.y1 + dy }
  taken.push(room)
  return [
    ...(p.layer === 'beams' ? [] : [halo(room)]),
    textMark(x(p.x) + dx, y(p.y) + dy + size * 0.33, words, { id: p.id, size, anchor: p.anchor }),
  ]
}

/** The house: hatched, the face of its wall heavy. */
function house(
  id: string,
  { x, y, w, h }: { readonly x: number; readonly y: number; readonly w: number; readonly h: number },
): readonly Mark[] {
  return [
    ...hatch(x, y, w, h, 6).map(([x1, y1, x2, y2]) =>
      lineMark(x1, y1, x2, y2, { id, width: 0.25, tone: 'soft' }),
    ),
    lineMark(x, y + h, x + w, y + h, { id, width: LINE.heavy }),
    boxMark(x + w / 4 - 16, y + h / 2 - 6, 32, 12, { fill: 'white', width: 0 }),
    textMark(x + w / 4, y + h / 2 + 3, 'house', { id, size: 8.5, anchor: 'middle' }),
  ]
}
