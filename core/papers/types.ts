/** A table ready to be shown on a sheet, in a window or a workbook; no format, no colour. */
export interface PaperTable {
  readonly id: string
  readonly title: string
  readonly columns: readonly {
    readonly key: string
    readonly label: string
    readonly align: 'left' | 'right'
  }[]
  readonly rows: readonly { readonly [key: string]: string }[]
}

export type LineWeight = 'heavy' | 'medium' | 'fine'
export type Stroke = 'solid' | 'hidden' | 'centre'

/**
 * Drawing primitives in ticks on the job's axes; a renderer decides scale, colour and format.
 * A dimension's line stands `offset` from the measured points: along y where it is level, along x where it is
 * upright. A joint is a short stroke across a member that runs `along` an axis, `half` to each side.
 */
export type Primitive =
  | {
      readonly kind: 'rect'
      readonly id: string
      readonly layer: Layer
      readonly x: number
      readonly y: number
      readonly w: number
      readonly h: number
      readonly weight: LineWeight
      readonly stroke: Stroke
      readonly fill: 'wood' | 'house' | 'none' | 'ground'
    }
  | {
      readonly kind: 'polygon'
      readonly id: string
      readonly layer: Layer
      readonly points: readonly { readonly x: number; readonly y: number }[]
      readonly weight: LineWeight
      readonly stroke: Stroke
      /** shade and dark: wood on sides that turn away from the light */
      readonly fill: 'wood' | 'shade' | 'dark' | 'house' | 'none' | 'ground'
    }
  | {
      readonly kind: 'line'
      readonly id: string
      readonly layer: Layer
      readonly x1: number
      readonly y1: number
      readonly x2: number
      readonly y2: number
      readonly weight: LineWeight
      readonly stroke: Stroke
    }
  | {
      readonly kind: 'circle'
      readonly id: string
      readonly layer: Layer
      readonly cx: number
      readonly cy: number
      readonly r: number
      readonly weight: LineWeight
      readonly stroke: Stroke
    }
  | {
      readonly kind: 'text'
      readonly id: string
      readonly layer: Layer
      readonly x: number
      readonly y: number
      readonly text: string
      readonly anchor: 'start' | 'middle' | 'end'
      readonly size: 'small' | 'normal'
      /** read from the bottom up; a view may leave it level */
      readonly turned?: boolean
    }
  | {
      readonly kind: 'dimension'
      readonly id: string
      readonly layer: Layer
      readonly x1: number
      readonly y1: number
      readonly x2: number
      readonly y2: number
      readonly offset: number
      readonly text: string
    }
  | {
      readonly kind: 'joint'
      readonly id: string
      readonly layer: Layer
      readonly x: number
      readonly y: number
      readonly along: 'x' | 'y'
      readonly half: number
    }

export type Layer =
  | 'house'
  | 'decking'
  | 'joists'
  | 'beams'
  | 'posts'
  | 'footings'
  | 'strings'
  | 'stairs'
  | 'guard'
  | 'dimensions'
  | 'joints'
  | 'marks'

export interface Drawing {
  readonly id: string
  readonly title: string
  /** extent in ticks */
  readonly x0: number
  readonly y0: number
  readonly x1: number
  readonly y1: number
  readonly primitives: readonly Primitive[]
}
