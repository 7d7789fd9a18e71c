import type { SheetId } from './sheet-types.ts'
import type { Weight } from './type/measure.ts'

export type Tone = 'ink' | 'soft' | 'hair'
export type Fill = 'none' | 'white' | 'wood' | 'tint' | 'ink'

/**
 * What a page is made of, in points from its upper left corner, y downward, in the order of drawing. A renderer only
 * writes these down; a text's `y` is its baseline, its letters stand as they follow from left to right whatever their
 * script, `turned` ones read from the bottom up. `id` is that of what it shows.
 */
export type Mark =
  | {
      readonly kind: 'text'
      readonly id: string
      readonly x: number
      readonly y: number
      readonly text: string
      /** points that it takes along its line */
      readonly width: number
      readonly size: number
      readonly weight: Weight
      readonly anchor: 'start' | 'middle' | 'end'
      readonly turned: boolean
      readonly tone: Tone
    }
  | {
      /** the firm's logo */
      readonly kind: 'image'
      readonly id: string
      readonly x: number
      readonly y: number
      readonly w: number
      readonly h: number
    }
  | {
      readonly kind: 'line'
      readonly id: string
      readonly x1: number
      readonly y1: number
      readonly x2: number
      readonly y2: number
      readonly width: number
      readonly dash: readonly number[]
      readonly tone: Tone
    }
  | {
      readonly kind: 'path'
      readonly id: string
      readonly points: readonly (readonly [number, number])[]
      readonly width: number
      readonly dash: readonly number[]
      readonly fill: Fill
      readonly tone: Tone
    }
  | {
      readonly kind: 'circle'
      readonly id: string
      readonly cx: number
      readonly cy: number
      readonly r: number
      readonly width: number
      readonly dash: readonly number[]
      readonly fill: Fill
      readonly tone: Tone
    }

/** How a drawing stands on its page: x' = left + (x − x0) · scale, in points. */
export interface Placed {
  readonly drawing: string
  readonly scale: number
  readonly left: number
  readonly top: number
  readonly x0: number
  readonly y0: number
}

export interface Page {
  readonly sheet: SheetId
  readonly title: string
  readonly number: number
  readonly of: number
  /** points */
  readonly width: number
  readonly height: number
  readonly marks: readonly Mark[]
  readonly drawings: readonly Placed[]
}
