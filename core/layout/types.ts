import type { Segment } from '../geometry/index.ts'
import type { Ticks } from '../units/index.ts'

export interface Point {
  readonly x: Ticks
  readonly y: Ticks
}

/** An edge of the outline; number 1 runs from the first stated corner to the second. */
export interface OutlineEdge {
  readonly number: number
  readonly from: Point
  readonly to: Point
  readonly kind: 'wall' | 'open'
}

/** An edge of a zone: on the outline, around an opening, or where it meets another zone. */
export interface ZoneEdge {
  readonly from: Point
  readonly to: Point
  readonly kind: 'wall' | 'open' | 'seam'
  /** of the outline's edge that it lies on; null on a seam */
  readonly number: number | null
  /**
   * on a seam: what carries joists that end there, or which of two zones has the end joist; on an open edge: that the
   * beam behind it carries a lower level's joists too, or that they hang from that of a higher level
   */
  readonly seam:
    | 'own beam'
    | 'shared beam'
    | 'other zone’s beam'
    | 'end joist'
    | 'other zone’s joist'
    | 'hip'
    | 'lower level’s joists'
    | 'higher level’s beam'
    | null
}

/** A line that carries joists: a ledger, a beam's centre line. */
export interface SupportLine {
  readonly id: string
  readonly kind: 'ledger' | 'beam'
  /** whose size, plies, posts and inset a beam has; null for a ledger */
  readonly beam: 'front' | 'rear' | null
  /** names a beam: front, rear, front-b */
  readonly key: string
  /** a beam between the joists, which hang from it */
  readonly flush: boolean
  /** where two parts of the deck meet */
  readonly seam: boolean
  /** a higher level's beam, at whose side joists of this zone hang: it is framed with that level */
  readonly ofHigher?: true
  /** ledger: its outer face (where joists butt); beam: its centre line; of a line at an angle: its left end */
  readonly y: Ticks
  readonly from: Ticks
  readonly to: Ticks
  /** the same line from its left end, exact or nearly so */
  readonly line: Segment
  /** a beam's ends that are not square: the line of the cut, and the beam that it meets there */
  readonly cuts: readonly [SlantCut | null, SlantCut | null]
  /** the edge of the zone that it follows, by index; -1 for a beam that follows none */
  readonly edge: number
}

export interface SlantCut {
  readonly cut: Segment
  /** null where it meets none */
  readonly meets: string | null
}

/** A hole in the frame, for a chimney or a tree. */
export interface Opening {
  readonly number: number
  readonly x0: Ticks
  readonly y0: Ticks
  readonly x1: Ticks
  readonly y1: Ticks
}

/** A platform: the deck itself is the first. */
export interface Level {
  /** from 1 */
  readonly number: number
  readonly outline: readonly Point[]
  /** edges of a further level are numbered from 201, 301 */
  readonly edges: readonly OutlineEdge[]
  readonly deckTop: Ticks
}

/** A region framed one way. */
export interface Zone {
  readonly id: string
  /** number of the level that it is a part of */
  readonly level: number
  readonly outline: readonly Point[]
  /** edge i runs from corner i of the outline to the next */
  readonly edges: readonly ZoneEdge[]
  /** the way its joists run: away from the house (along y) or along it */
  readonly joists: 'away' | 'along'
  readonly supports: readonly SupportLine[]
  readonly openings: readonly Opening[]
}

export interface Layout {
  /** outside of the frame, counter-clockwise seen from above with y away from the house */
  readonly outline: readonly Point[]
  readonly edges: readonly OutlineEdge[]
  readonly zones: readonly Zone[]
  /** the deck and further platforms beside it; outline, edges and top of the first are the layout's own */
  readonly levels: readonly Level[]
  /** top of the decking above the datum */
  readonly deckTop: Ticks
  /** of all levels, exact */
  readonly areaSquareFeet: number
}
