import type { Ticks } from '../units/index.ts'

export interface Point {
  readonly x: Ticks
  readonly y: Ticks
}

/** A line that carries joists: the ledger, a beam's centre line. */
export interface SupportLine {
  readonly id: string
  readonly kind: 'ledger' | 'beam'
  /** 'front' or 'rear' for a beam */
  readonly beam: 'front' | 'rear' | null
  /** ledger: its outer face (where joists butt); beam: its centre line */
  readonly y: Ticks
  readonly from: Ticks
  readonly to: Ticks
}

/** A region framed one way. Joists run along y in this version. */
export interface Zone {
  readonly id: string
  readonly outline: readonly Point[]
  readonly supports: readonly SupportLine[]
}

export interface Layout {
  /** outside of the frame, counter-clockwise seen from above with y away from the house */
  readonly outline: readonly Point[]
  readonly zones: readonly Zone[]
  /** top of the decking above the datum */
  readonly deckTop: Ticks
  /** square inches of the outline, exact */
  readonly areaSquareFeet: number
}
