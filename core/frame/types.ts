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
  | 'beam ply'
  | 'blocking'
  | 'post'
  | 'decking'
  | 'stringer'
  | 'stair header'
  | 'tread'
  | 'riser'
  | 'landing beam'
  | 'landing joist'
  | 'landing decking'
  | 'landing post'
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

/** One stick of lumber as it stands in the deck. A long one may be cut as several pieces (see runs in takeoff). */
export interface Member {
  /** stable while unrelated fields change, e.g. "joist-7", "beam-front-ply-2" */
  readonly id: string
  /** as written on the wood: J7, B1-2 */
  readonly mark: string
  readonly role: Role
  readonly product: ProductClass
  /** finished length */
  readonly length: Ticks
  /** dimension across, where a board is ripped; else the full width of the size */
  readonly ripTo: Ticks | null
  readonly box: Box
  /** ids of what carries it, in order along its length */
  readonly bearings: readonly string[]
  readonly cause: Cause
}

export interface Post {
  /** "post-front-2" */
  readonly id: string
  /** number as on the ground, from 1 */
  readonly number: number
  readonly beam: 'front' | 'rear'
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
  readonly beam: 'front' | 'rear'
  readonly mark: string
  readonly size: LumberSize
  readonly plies: number
  readonly plyIds: readonly string[]
  readonly postIds: readonly string[]
  /** centre line */
  readonly y: Ticks
  readonly from: Ticks
  readonly to: Ticks
}

export type ConnectorKind =
  | 'joist hanger'
  | 'uplift tie'
  | 'end joist angle'
  | 'post base'
  | 'post cap'
  | 'hold-down'

export interface Connector {
  readonly kind: ConnectorKind
  readonly size: LumberSize
  readonly count: number
  readonly at: readonly string[]
  readonly cause: Cause
}

/** Points at which a long member may be jointed, and those at which it may not, with the reason. */
export interface RunPoint {
  readonly at: Ticks
  readonly supportId: string
  readonly label: string
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
  readonly memberIds: readonly string[]
  /** admissible joint points, measured from the members' left end */
  readonly points: readonly RunPoint[]
  readonly refused: readonly RefusedPoint[]
  /** every bearing along it, ends included, measured from the left end */
  readonly supports: readonly Ticks[]
  readonly minSupports: number
  readonly minPiece: Ticks
  /** most members jointed at one point; null: no limit */
  readonly cap: number | null
  /** true where the cap is a preference with a price, not a rule */
  readonly capPreferred: boolean
  /** neighbouring members must not be jointed at the same point */
  readonly neighboursApart: boolean
  readonly cause: Cause
}

export interface Frame {
  readonly members: readonly Member[]
  readonly beams: readonly Beam[]
  readonly posts: readonly Post[]
  readonly footings: readonly Footing[]
  readonly connectors: readonly Connector[]
  readonly runs: readonly FrameRun[]
  /** joist centres from the left end, end joists included */
  readonly joistCentres: readonly Ticks[]
  /** set-out of the footings from the deck's corners at the wall */
  readonly layoutNotes: readonly string[]
  /** the two long diagonals of the frame, nearest 1/16 in */
  readonly longDiagonal: Ticks
}
