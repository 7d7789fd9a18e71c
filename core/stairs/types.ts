import type { Cause, Member, ProductClass } from '../frame/index.ts'
import type { StairBranch } from '../job/index.ts'
import type { Ticks } from '../units/index.ts'

/** A place on the plan, ticks, not always whole. */
export interface Spot {
  readonly x: number
  readonly y: number
}

export type Side = 'front' | 'left' | 'right' | 'rear'

/** One edge of the deck's outline, seen from outside: what stairs leave from and guards stand on. */
export interface DeckEdge {
  readonly id: string
  /** round the outline, from 1 */
  readonly number: number
  /** where it faces */
  readonly side: Side
  /** the end from which places along it are measured: nearer the house, or left where both are as near */
  readonly near: Spot
  readonly far: Spot
  readonly length: number
  /** unit vectors: from the near end to the far one, and away from the deck */
  readonly along: Spot
  readonly out: Spot
  /** whether the house stands there */
  readonly wall: boolean
  /** walking surface above the datum */
  readonly top: Ticks
}

/** One straight flight as it stands. */
export interface PlacedFlight {
  /** from 1 through all stairs of the deck, in each the upper one first */
  readonly number: number
  readonly risers: number
  readonly treads: number
  /** where the walking surface above ends: the corner from which `across` runs */
  readonly head: Spot
  /** unit vectors: the way down, and along the width */
  readonly down: Spot
  readonly across: Spot
  readonly width: Ticks
  /** above the datum, ticks, not always whole for a flight below a landing */
  readonly topLevel: number
  readonly bottomLevel: number
  /** from the face of the edge above to the lowest rise cut, on which the lowest riser's board stands */
  readonly run: Ticks
  /** what the boards above reach over the face of their edge: the nosing of the uppermost riser */
  readonly over: Ticks
}

/** A mark on the upper edge of a stringer, where a riser's notch meets it. */
export interface StringerMark {
  /** from 1, the lowest riser first */
  readonly riser: number
  /** along the edge from the lowest mark, nearest tick */
  readonly at: Ticks
}

/** One pattern for every stringer of a flight. */
export interface StringerPattern {
  readonly flight: number
  readonly kind: 'cut' | 'closed'
  readonly count: number
  /** centre to centre, ticks, not always whole */
  readonly spacing: number
  /** ticks, exact: total rise ÷ risers */
  readonly rise: number
  readonly run: Ticks
  /** level from the head to the uppermost rise cut: a run, less what riser board and nosing reach further than the boards above */
  readonly topRun: Ticks
  /** along the edge from one mark to the next, ticks, exact */
  readonly step: number
  /** cut off the bottom so that the lowest riser is as high as the others */
  readonly drop: Ticks
  /** from the landing's boards down to the level cut that stands on a strip at its beam; 0 where the foot stands on what it comes down to */
  readonly below: Ticks
  /** wood left under the notches, square to the edge, ticks; the whole depth where nothing is notched */
  readonly throat: number
  /** length of the board that holds it, rounded up to a tick */
  readonly length: Ticks
  /** level between the face above and the lowest rise cut */
  readonly span: Ticks
  readonly marks: readonly StringerMark[]
}

/** The platform between two flights, on its own posts. */
export interface Platform {
  readonly corner: Spot
  readonly down: Spot
  readonly across: Spot
  readonly depth: Ticks
  readonly width: Ticks
  readonly level: number
  readonly joistSpan: Ticks
  /** thickness of the board before the outer beam that the next flight hangs on; 0 where that flight turns */
  readonly faced: Ticks
  /** from the middle of the outer posts out to that of the beam on them: it is flush with their faces where a header lies on those */
  readonly outerOff: Ticks
  readonly beamSpan: Ticks
}

/** Concrete that stands in the ground under stairs. */
export interface StairFooting {
  readonly id: string
  readonly x: number
  readonly y: number
  readonly tube: Ticks
  readonly tubeLength: Ticks
  readonly base: Ticks
  readonly baseThickness: Ticks
  readonly depth: Ticks
  readonly holeDiameter: Ticks
  readonly cause: Cause
}

/** The concrete slab that the stairs end on. */
export interface Pad {
  readonly corner: Spot
  readonly width: Ticks
  readonly depth: Ticks
  readonly thickness: Ticks
  /** from the face of the lowest riser outward */
  readonly landing: Ticks
}

export type StairConnectorKind =
  | 'stringer hanger'
  | 'stringer foot angle'
  | 'stringer landing angle'
  | 'header bolt'
  | 'tread bracket'
  | 'landing hanger'
  | 'landing end angle'
  | 'landing post base'
  | 'landing post cap'
  | 'landing brace bolt'

export interface StairConnector {
  readonly kind: StairConnectorKind
  readonly count: number
  readonly cause: Cause
}

/** A lower level of the deck that stairs come down to. */
export interface StairFloor {
  /** number of the level */
  readonly level: number
  /** of it before the lowest riser, on the way that one walks, where there is least */
  readonly landing: Ticks
}

export interface StairPlan {
  /** from 1: which of the job's stairs these are */
  readonly number: number
  /** where the job states them */
  readonly branch: StairBranch
  readonly edge: DeckEdge
  /** from the near end of the edge to the near side of the stairs, and their width along it */
  readonly place: Ticks
  readonly width: Ticks
  /** from the deck's surface to the landing */
  readonly totalRise: Ticks
  /** ground or floor at the foot, above the datum */
  readonly landingLevel: Ticks
  /** what the stairs come down to where it is not the ground */
  readonly floor: StairFloor | null
  readonly risers: number
  /** ticks, exact */
  readonly rise: number
  /** level, from the nosing above each flight to its lowest, all flights together */
  readonly run: Ticks
  readonly flights: readonly PlacedFlight[]
  readonly patterns: readonly StringerPattern[]
  readonly platform: Platform | null
  readonly tread: {
    readonly product: ProductClass
    readonly boards: number
    /** front to back, gaps included */
    readonly depth: Ticks
    readonly nosing: Ticks
    /** thickness of the board that stands on each rise cut and that treads butt against; 0 where risers are open */
    readonly riserBoard: Ticks
    /** clear opening between two treads; 0 where a board closes it within a ball's width */
    readonly opening: number
  }
  readonly members: readonly Member[]
  readonly connectors: readonly StairConnector[]
  /** what the first flight hangs on at the deck: the rim, or the joist that runs along its edge, with its mark */
  readonly headBoard: string
  /** posts of the landing that the lower flight's header is bolted to */
  readonly behindHeader: number
  readonly pad: Pad | null
  readonly footings: readonly StairFooting[]
  /** on each of its sides: along all flights together, and the rail of each flight, none of which turns at a landing */
  readonly handrail: {
    readonly sides: number
    readonly each: Ticks
    readonly flights: readonly Ticks[]
    readonly needed: boolean
  }
  readonly cause: Cause
}
