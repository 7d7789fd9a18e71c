import type { Cut } from '../cutting/index.ts'
import type { Ticks } from '../units/index.ts'
import type { Logo } from './source.ts'
import type { Drawing, Layer, PaperTable } from './types.ts'

export type SheetId =
  | 'contents'
  | 'framing'
  | 'decking'
  | 'footings'
  | 'marking'
  | 'strips'
  | 'cutting'
  | 'order'
  | 'checks'
  | 'section'
  | 'details'
  | 'stairs'
  | 'steps'
  | 'cost'
  | 'quote'
  | 'change'
  | 'inspections'
  | 'record'

/** Who a sheet is for: a customer's sheet shows no cost of ours. */
export type Audience = 'crew' | 'permit office' | 'yard' | 'customer' | 'office'

export interface Step {
  readonly text: string
  /** figures or reasons under it, soft */
  readonly notes?: readonly string[]
  readonly cautions?: readonly string[]
}

/** A mark on a board at true scale: a pencil line, and the side of it on which the member stands. */
export interface StripMark {
  /** from the strip's own zero, ticks */
  readonly at: number
  readonly label: string
  /** the X: what stands there reaches from the line to this side; null for a bare line */
  readonly side: 'right' | 'left' | null
  /** how far the X reaches, ticks */
  readonly wide: number
}

/** Neighbours of one name belong together: side by side in columns where the page is wide enough, or all on one page. */
interface Grouped {
  readonly columns?: string
  readonly together?: string
}

/** What stands on a sheet, in reading order. No place, no format: a page lay-out decides those. */
export type Block = Grouped & BlockKind

type BlockKind =
  | { readonly kind: 'heading'; readonly text: string }
  | {
      readonly kind: 'text'
      readonly text: string
      readonly tone?: 'soft' | 'strong'
      /** somebody's own words: printed as they are */
      readonly foreign?: boolean
    }
  | { readonly kind: 'caution'; readonly text: string }
  | { readonly kind: 'steps'; readonly items: readonly Step[]; readonly from?: number }
  | { readonly kind: 'checklist'; readonly items: readonly string[] }
  | { readonly kind: 'facts'; readonly rows: readonly (readonly [string, string])[] }
  | {
      readonly kind: 'table'
      readonly table: PaperTable
      /** a box before each row, to tick off */
      readonly tick?: boolean
      /** rows in strong type: totals */
      readonly strong?: readonly number[]
      /** not parted where a page holds it */
      readonly whole?: true
      /** said where there are no rows */
      readonly empty: string
      /** what the lines after it take that should not stand overleaf alone, points */
      readonly follows?: number
    }
  | {
      readonly kind: 'drawing'
      readonly drawing: Drawing
      /** from the lowest up */
      readonly layers: readonly Layer[]
      /** largest share of a page's height that it may take, 0 to 1 */
      readonly share?: number
      /** a part seen near: as large as fits, for a scale that is stated is that of plans, sections and elevations */
      readonly near?: true
      /** not to scale: said so, without a bar */
      readonly sketch?: boolean
      /** points of room that what follows wants on the same page */
      readonly follows?: number
      /** drawings of one name are drawn to one scale, that of the one that needs the smallest */
      readonly alike?: string
    }
  | {
      /** at true scale, in bands to be cut out and joined */
      readonly kind: 'strip'
      readonly id: string
      readonly title: string
      readonly length: number
      readonly marks: readonly StripMark[]
    }
  | {
      /** boards that are sawn alike, with a box to tick for each */
      readonly kind: 'set-up'
      readonly title: string
      readonly length: Ticks
      /** the longest board of its kind, which fills the page's width */
      readonly longest: number
      readonly cuts: readonly Pick<Cut, 'from' | 'to' | 'length' | 'mitres'>[]
      /** where the lines of the saw meet the near edge */
      readonly lines: readonly Ticks[]
      readonly offcut: Ticks
      readonly fate: string
      readonly boards: readonly {
        readonly name: string
        readonly marks: readonly string[]
        /** names of the holds for which it is not sawn yet */
        readonly waits?: string
      }[]
    }
  | { readonly kind: 'signatures'; readonly lines: readonly string[] }
  | {
      /** the sheets that follow it, in their order; their pages are known once all are laid out */
      readonly kind: 'contents'
      readonly rows: readonly {
        readonly title: string
        readonly readers: string
        readonly use: string
      }[]
    }
  | { readonly kind: 'page break' }

export interface Sheet {
  readonly id: SheetId
  /** what its files are called, where one id has several sheets */
  readonly name?: string
  readonly title: string
  readonly audience: Audience
  readonly across: boolean
  readonly blocks: readonly Block[]
}

/** What stands at the foot of every page; all of it stated, nothing read from a clock. */
export interface About {
  readonly job: string
  readonly firm: string
  readonly logo: Logo | null
  readonly revision: string
  /** as stated; '' where no date was */
  readonly date: string
  /** the price list by its name and date, for those who work with it */
  readonly prices: string
  /** the date alone, for the customer */
  readonly pricesOf: string
  readonly code: string
}

export type PaperName = 'letter' | 'tabloid' | 'a4' | 'a3'

export interface PageOptions {
  readonly paper: PaperName
  /** scale of drawings as 1 : n; null: the largest usual one that fits */
  readonly scale: number | null
  /** lengths in millimetres in place of feet and inches */
  readonly metric?: boolean | undefined
}
