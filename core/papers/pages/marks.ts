import type { Fill, Mark, Tone } from '../page-types.ts'
import { type Weight, widthOf } from '../type/measure.ts'
import { visualOrder } from '../type/visual-order.ts'
import type { Room } from './rooms.ts'

/** Widths of lines after ISO 128 and ASME Y14.2 in spirit: one to two to three, points. */
export const LINE = { fine: 0.35, medium: 0.7, heavy: 1.3 } as const

export interface TextLook {
  readonly size?: number
  readonly weight?: Weight
  readonly anchor?: 'start' | 'middle' | 'end'
  readonly turned?: boolean
  readonly tone?: Tone
  readonly id?: string
}

export function textMark(x: number, y: number, text: string, look: TextLook = {}): Mark {
  const { size = 9, weight = 'regular', anchor = 'start', turned = false, tone = 'ink', id = '' } = look
  const width = widthOf(text, size, weight)
  return { kind: 'text', id, x, y, text: visualOrder(text), width, size, weight, anchor, turned, tone }
}

export interface LineLook {
  readonly width?: number
  readonly dash?: readonly number[]
  readonly tone?: Tone
  readonly id?: string
}

export function lineMark(x1: number, y1: number, x2: number, y2: number, look: LineLook = {}): Mark {
  const { width = LINE.fine, dash = [], tone = 'ink', id = '' } = look
  return { kind: 'line', id, x1, y1, x2, y2, width, dash, tone }
}

export function pathMark(
  points: readonly (readonly [number, number])[],
  look: LineLook & { readonly fill?: Fill } = {},
): Mark {
  const { width = LINE.fine, dash = [], tone = 'ink', id = '', fill = 'none' } = look
  return { kind: 'path', id, points, width, dash, fill, tone }
}

export function boxMark(
  x: number,
  y: number,
  w: number,
  h: number,
  look: LineLook & { readonly fill?: Fill } = {},
): Mark {
  return pathMark(
    [
      [x, y],
      [x + w, y],
      [x + w, y + h],
      [x, y + h],
    ],
    look,
  )
}

/** White behind what is written over lines. */
export function halo({ x0, y0, x1, y1 }: Room): Mark {
  return boxMark(x0, y0, x1 - x0, y1 - y0, { fill: 'white', width: 0 })
}

/** The sign before a caution: a triangle with its point up, filled, so that it is seen in black and white. */
export function cautionSign(x: number, baseline: number, size: number): Mark {
  const h = size * 0.75
  return pathMark(
    [
      [x, baseline],
      [x + size * 0.85, baseline],
      [x + size * 0.425, baseline - h],
    ],
    { fill: 'ink', width: 0 },
  )
}
