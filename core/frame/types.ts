import type { Grade, LumberSize, Species, Treatment } from '../data/index.ts'
import type { FieldPath } from '../job/index.ts'
import type { Ticks } from '../units/index.ts'

/** What lumber a member is made of; members of one class are cut from the same boards. */
export interface ProductClass {
  readonly size: LumberSize
  readonly species: Species
  readonly grade: Grade
  readonly treatment: Treatment
}

/** Why a thing is there: fields of the job, other members, clauses. The chain that *why* walks. */
export interface Cause {
  readonly fields: readonly FieldPath[]
  readonly ids: readonly string[]
  readonly rule: string
}

export type Role =
  | 'ledger'
  | 'joist'
  | 'end joist'
  | 'rim'
  | 'header'
  | 'hip'
  | 'beam ply'
  | 'blocking'
  | 'knee brace'
  | 'step frame'
  | 'step tread'
  | 'post'
  | 'decking'
  | 'fascia'
  | 'stringer'
  | 'stair header'
  | 'stair upright'
  | 'stair strip'
  | 'tread'
  | 'riser'
  | 'landing beam'
  | 'landing joist'
  | 'landing decking'
  | 'landing post'
  | 'landing brace'
  | 'guard post'
  | 'guard rail'
  | 'guard cap'
  | 'guard blocking'

/** An axis-aligned place in the deck, in ticks; z up from the datum. */
export interface Box {
  readonly x0: number
  readonly x1: number
  readonly y0: number
  readonly y1: number
  readonly z0: number
  readonly z1: number
}

/**
 * Cuts of the left and the right end seen from above, in hundredths of a degree off square; 0 is square. Positive: the
 * far edge ends further right for one who has the first end at the left; of a board along the house the far edge is the
 * one towards it, of a board away from the house, its rear end first, the right one. Lengths are to the long points.
 */
export type EndCuts = readonly [number, number]

/** A place on the plan, in ticks; off the grid where lines meet at an angle. */
export interface PlanPoint {
  readonly x: number
  readonly y: number
}

/** How a board of the decking is laid. */
export interface Lay {
  readonly part: 'field' | 'border' | 'breaker'
  /** id of its zone; of a border board that of its level, "level-1" */
  readonly zone: string
  /** courses of a zone are counted from 1 outward; parts of one course share their number */
  readonly row: number
  /** degrees off square to the joists, with the sign of a cut along them; of a border or a breaker 0 */
  readonly degrees: number
  /** it lies along the joists, not over them */
  readonly alongJoists: boolean
}

/** The field of one zone's decking. */
export interface DeckedZone {
  readonly zone: string
  readonly degrees: number
  readonly rows: number
  /** across the boards, from the field's first edge to its last */
  readonly cover: Ticks
  /** gaps included, square ticks */
  readonly area: number
}

/** A stretch of the deck's edge with neither wall nor a higher level along it. */
export interface FreeEdge {
  readonly level: number
  /** of the outline's edge */
  readonly number: number
  readonly length: Ticks
  /** the lower level whose boards run along it; null over the ground */
  readonly over: number | null
  /** from the ground, or those boards, to the joists' underside at either end, between which the ground is taken to be straight */
  readonly clear: readonly [Ticks, Ticks]
}

/** How a member climbs whose ends are cut plumb: the ends of its upper edge, the higher first. */
export interface Slope {
  readonly from: PlanPoint & { readonly z: number }
  readonly to: PlanPoint & { readonly z: number }
  /** measured upright, from its upper to its lower edge */
  readonly upright: number
}

/** One stick of lumber as it stands in the deck. A long one may be cut as several pieces (see runs in takeoff). */
export interface Member {
  /** stable while unrelated fields change, e.g. "joist-7", "beam-front-ply-2" */
  readonly id: string
  /** as written on the wood: J7, B1b */
  readonly mark: string
  readonly role: Role
  readonly product: ProductClass
  /** finished length */
  readonly length: Ticks
  /** dimension across, where a board is ripped; else the full width of the size */
  readonly ripTo: Ticks | null
  readonly box: Box
  /** its shape from above, where that is not its box */
  readonly plan?: readonly PlanPoint[]
  /** its middle line from the left end, where it does not lie along the house: what joints are measured on */
  readonly line?: readonly [PlanPoint, PlanPoint]
  /** degrees off square in hundredths at its two ends, where one is not square */
  readonly ends?: EndCuts
  /** of a rail or a cap beside stairs */
  readonly slope?: Slope
  /** of a board of the decking */
  readonly lay?: Lay
  /** ids of what carries it, in order along its length */
  readonly bearings: readonly string[]
  readonly cause: Cause
}

export interface Post {
  /** "post-front-2" */
  readonly id: string
  /** number as on the ground, from 1 */
  readonly number: number
  /** whose field of the job it goes by */
  readonly beam: 'front' | 'rear'
  readonly beamId: string
  readonly x: Ticks
  readonly y: Ticks
  /** ground above the datum at the post, ticks, exact or nearly so */
  readonly ground: number
  /** cut length, rounded up to a tick */
  readonly length: Ticks
  readonly cause: Cause
}

export interface Footing {
  readonly id: string
  readonly postId: string
  readonly number: number
  readonly x: Ticks
  readonly y: Ticks
  readonly tube: Ticks
  readonly tubeLength: Ticks
  /** 0: none */
  readonly base: Ticks
  readonly baseThickness: Ticks
  /** bottom of everything under the ground at this post */
  readonly depth: Ticks
  readonly holeDiameter: Ticks
  readonly ground: number
  readonly topOfConcrete: number
  readonly cause: Cause
}

/** A beam as built: its plies are members, its posts are posts. */
export interface Beam {
  readonly id: string
  /** whose field of the job it goes by */
  readonly beam: 'front' | 'rear'
  /** its own name: front, rear, front-b */
  readonly key: string
  /** where it lies on the plan, for whoever looks for it */
  readonly lies: 'front' | 'middle' | 'rear' | 'left' | 'right'
  readonly mark: string
  /** between the joists, which hang from it, its top level with theirs */
  readonly flush: boolean
  readonly size: LumberSize
  readonly plies: number
  readonly plyIds: readonly string[]
  readonly postIds: readonly string[]
  /** where its posts stand along it, from its left end; two beams that meet share a post */
  readonly postsAt: readonly Ticks[]
  /** centre line; y and from are those of the left end where it does not lie along the house */
  readonly y: Ticks
  readonly from: Ticks
  readonly to: Ticks
  readonly line: readonly [PlanPoint, PlanPoint]
  readonly length: Ticks
}

/** What carries a joist at one place. */
export interface JoistSupport {
  /** id of the ledger, the beam or the header */
  readonly id: string
  readonly kind: 'ledger' | 'beam' | 'header'
  /** along the joist from the plan's origin, in ticks: a ledger's face, a beam's centre line */
  readonly at: number
  /** half of what it bears on, along the joist; 0 at a ledger's face */
  readonly half: number
  /** degrees between a support and square to the joist, in hundredths */
  readonly skew: number
  /** bears on all of its thickness or, where joists are butted over it, on half of it; or hangs from its face */
  readonly seat: 'whole' | 'half' | 'hung'
}

/** Joists that lie alike. */
export interface JoistLine {
  readonly memberIds: readonly string[]
  /** where load begins and ends: a ledger's face, the outer face of a rim */
  readonly from: number
  readonly to: number
  readonly supports: readonly JoistSupport[]
  /** deck that each of them carries, from middle to middle of the bays beside it, ticks; the least to the greatest */
  readonly widths: readonly number[]
}

/** Joists of a zone that lie on the same supports. */
export interface JoistGroup {
  readonly id: string
  /** the zone; where its joists are jointed over a beam, with which of their runs it is */
  readonly zone: string
  readonly supports: readonly string[]
  readonly lines: readonly JoistLine[]
}

export type ConnectorKind =
  | 'joist hanger'
  | 'uplift tie'
  | 'end joist angle'
  | 'post base'
  | 'post cap'
  | 'hold-down'
  | 'brace bolt'
  | 'joist lap'
  | 'joist splice'
  | 'joist pair'

export interface Connector {
  readonly kind: ConnectorKind
  readonly size: LumberSize
  readonly count: number
  readonly at: readonly string[]
  /** of a hanger: for two boards side by side; of it or an angle: by how much it slants in plan, in hundredths of a degree */
  readonly double?: true
  readonly skew?: number
  /** shortest overlap of joists that lap; how far a pair of end joists lies side by side */
  readonly overlap?: Ticks
  readonly cause: Cause
}

/** Points at which a long member may be jointed, and those at which it may not, with the reason. */
export interface RunPoint {
  readonly at: Ticks
  readonly supportId: string
  readonly label: string
  /** most members jointed here, where it is not the run's own cap */
  readonly cap?: number
}
export interface RefusedPoint extends RunPoint {
  readonly why: string
}
export type JointKind = 'beam ply' | 'rim' | 'ledger' | 'decking'

/** Equal members side by side that may be jointed: the plies of one beam, the courses of a deck. */
export interface FrameRun {
  readonly id: string
  readonly label: string
  readonly kind: JointKind
  readonly product: ProductClass
  readonly length: Ticks
  /** cut so much longer at the far end, and cut off in place; absent: nothing */
  readonly wild?: Ticks
  readonly memberIds: readonly string[]
  /** admissible joint points, measured from the members' left end */
  readonly points: readonly RunPoint[]
  readonly refused: readonly RefusedPoint[]
  /** what in the job would give it another joint point, in words; absent: nothing but another bearing */
  readonly another?: string
  /** what a joint adds to both pieces that meet there, where it is cut at an angle; absent: 0 */
  readonly lap?: Ticks
  /** every bearing along it, ends included, measured from the left end */
  readonly supports: readonly Ticks[]
  readonly minSupports: number
  readonly minPiece: Ticks
  /** cuts of the members' own ends, where one is not square */
  readonly ends?: EndCuts
  /** most members jointed at one point; null: no limit */
  readonly cap: number | null
  /** true where the cap is a preference with a price, not a rule */
  readonly capPreferred: boolean
  /** neighbouring members must not be jointed at the same point */
  readonly neighboursApart: boolean
  readonly cause: Cause
}

/** A box step between two levels. */
export interface LevelStep {
  readonly id: string
  /** numbers of the levels, and of the higher one's edge at which it stands */
  readonly higher: number
  readonly lower: number
  readonly edge: number
  readonly risers: number
  readonly drop: Ticks
  readonly width: Ticks
  /** shallowest tread, nosing to nosing */
  readonly tread: Ticks
  /** whether the lower level goes on 36 in beyond its foot */
  readonly landing: boolean
  /** on the higher level's edge, from where to where */
  readonly line: readonly [PlanPoint, PlanPoint]
  readonly memberIds: readonly string[]
}

/** A doubled joist from an inside corner of the deck over a post to the outside corner, which joists of two parts hang from. */
export interface Hip {
  readonly id: string
  readonly memberIds: readonly string[]
  readonly inside: PlanPoint
  readonly outside: PlanPoint
  /** where the beams of both parts meet under it */
  readonly postId: string
  /** from the inside corner to the post, and from there to the outside corner */
  readonly span: Ticks
  readonly overhang: Ticks
}

export interface Frame {
  readonly members: readonly Member[]
  readonly beams: readonly Beam[]
  readonly posts: readonly Post[]
  readonly footings: readonly Footing[]
  readonly connectors: readonly Connector[]
  readonly runs: readonly FrameRun[]
  readonly decked: readonly DeckedZone[]
  readonly freeEdges: readonly FreeEdge[]
  readonly joistGroups: readonly JoistGroup[]
  /** box steps between levels */
  readonly steps: readonly LevelStep[]
  readonly hips: readonly Hip[]
  readonly areaSquareFeet: number
  /** joist centres from the left end, end joists included */
  readonly joistCentres: readonly Ticks[]
  /** set-out of the footings from the deck's corners at the wall */
  readonly layoutNotes: readonly string[]
  /** the two long diagonals of the frame, nearest 1/16 in */
  readonly longDiagonal: Ticks
}
