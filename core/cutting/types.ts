import type { Cents, Ticks } from '../units/index.ts'

/** One thing that can be cut from: a stock length on sale, or an offcut on hand. */
export interface StockOption {
  readonly id: string
  /** nominal length; over-length is never counted on */
  readonly length: Ticks
  readonly price: Cents
  /** how many there are; null: as many as wanted */
  readonly supply: number | null
  readonly offcut: boolean
  /** bought in multiples of this; 1 by default */
  readonly pack?: number
  /** if any are bought, at least this many */
  readonly minimum?: number
  /** unit price for the whole count once that many are bought */
  readonly breaks?: readonly { readonly from: number; readonly price: Cents }[]
}

/**
 * Cuts of a piece's left and right end, in hundredths of a degree off square; its length is to the long points.
 * Positive: the far edge ends further right. Turned end for end, the two change places and keep their signs.
 */
export interface Mitres {
  /** of the board, at right angles to its length: its width where it lies flat, its thickness where it stands */
  readonly across: Ticks
  readonly ends: readonly [number, number]
}

/** One piece of fixed length. */
export interface FixedPiece {
  readonly id: string
  readonly mark: string
  /** what is cut from the board: what runs wild included */
  readonly length: Ticks
  /** how much of it is cut off in place; nothing where absent */
  readonly wild?: Ticks
  /** where an end is not square */
  readonly mitres?: Mitres
}

/** An admissible joint point of a run group. */
export interface JointPoint {
  readonly at: Ticks
  readonly label: string
  /** real money: plates, nails and minutes of one joint here */
  readonly cost: Cents
  /** added to both pieces that meet here: 0 for a butt joint, the overhang past the point for a lap */
  readonly lap: Ticks
  /** most members jointed here; null: any number */
  readonly cap: number | null
  /** price of each member above the cap; null: the cap is hard. A preference, never in the cost. */
  readonly excess: Cents | null
}

/** Equal members side by side, each in one piece or jointed at the points. */
export interface RunGroup {
  readonly id: string
  readonly label: string
  readonly members: readonly { readonly id: string; readonly mark: string }[]
  /** what runs wild included */
  readonly length: Ticks
  /** how much of its far end is cut off in place; nothing where absent */
  readonly wild?: Ticks
  /** cuts of its own ends and of its joints, where one is not square */
  readonly mitres?: Mitres & { readonly joint: number }
  /** inner points, ascending */
  readonly points: readonly JointPoint[]
  /** what would give it another point, in words; any bearing where absent */
  readonly another?: string
  /** bearings along it, ends included; a piece must cover at least `minSupports` of them */
  readonly supports: readonly Ticks[]
  readonly minSupports: number
  readonly minPiece: Ticks
  /** most joints in one member; null: any number */
  readonly maxJoints: number | null
  /** neighbours in the order of `members` may not be jointed at one point; the plan orders the members */
  readonly neighboursApart: boolean
  /** caps over several points together: at most `cap` joints at `points` (indices into points) of all members */
  readonly windows?: readonly { readonly points: readonly number[]; readonly cap: number }[]
}

export type Objective = 'least cost' | 'fewest joints' | 'least waste' | 'fewest lengths'

/** Everything the optimiser sees for one product class. Lengths are integers of any one unit. */
export interface CutJob {
  readonly id: string
  readonly label: string
  readonly kerf: Ticks
  /** taken off each end of a bought board */
  readonly endTrim: Ticks
  readonly stock: readonly StockOption[]
  readonly pieces: readonly FixedPiece[]
  readonly runs: readonly RunGroup[]
  /** preference: cost per board handled and per saw cut; steers, never in the cost */
  readonly handling: Cents
  readonly perCut: Cents
  /** preference: an offcut at least this long is worth this much per foot; null: offcuts are worth nothing */
  readonly keep: { readonly from: Ticks; readonly centsPerFoot: number } | null
  /** in order; the first decides, the next among equals. ['least cost'] by default */
  readonly objectives: readonly Objective[]
  /** only these stock ids, where given */
  readonly onlyStock?: readonly string[]
  readonly atMost?: readonly { readonly stockId: string; readonly count: number }[]
  /** most different lengths bought */
  readonly maxLengths?: number
}

/** Limits of work, never of time, so that the same job gives the same plan every day. */
export interface WorkLimits {
  readonly columns: number
  readonly nodes: number
  readonly patterns: number
  /** rows by columns of one integer program of a proof: above a million its nodes take seconds each; none where absent */
  readonly program?: number
}

/** A cut of a board: from..to measured from the board's left end, trim included. */
export interface Cut {
  readonly pieceId: string
  readonly mark: string
  readonly length: Ticks
  /** how much of it is cut off in place; nothing where absent */
  readonly wild?: Ticks
  /** its long points; where it shares a slanting cut with the piece before, `from` lies before that one's `to` */
  readonly from: Ticks
  readonly to: Ticks
  /** as it lies on the board, where an end is not square */
  readonly mitres?: Mitres
  /** it lies end for end on the board: its left end in the deck is the right one here */
  readonly turned?: true
}

export interface Board {
  readonly number: number
  readonly stockId: string
  readonly length: Ticks
  readonly cuts: readonly Cut[]
  /** what is left past the last cut and its kerf, before the right trim; 0 if none */
  readonly offcut: Ticks
}

/** One piece of a run member as cut. */
export interface RunPiece {
  readonly id: string
  readonly mark: string
  readonly memberId: string
  readonly runId: string
  /** along the member, laps not counted */
  readonly from: Ticks
  readonly to: Ticks
  readonly length: Ticks
  /** how much of it is cut off in place; nothing where absent */
  readonly wild?: Ticks
  /** where an end is not square */
  readonly mitres?: Mitres
}

export interface PlannedJoint {
  readonly runId: string
  readonly memberId: string
  readonly at: Ticks
  readonly label: string
  readonly cost: Cents
}

/**
 * Integer prices per length that prove the bound: with π ≥ 0 per length, priced knapsacks per stock
 * length and least-cost flows per run, no order can cost less than `bound`.
 */
export interface Certificate {
  /** π is stored as whole multiples of 1 / scale cent */
  readonly scale: number
  /**
   * Where mitres may share cuts: the classes of ends whose unshared ones are told apart, "across:hundredths" each. Every
   * length below is then less half of what each of its ends could save, and `ends` says of which of these classes they
   * are, sorted.
   */
  readonly shared?: readonly string[]
  readonly prices: readonly { readonly length: Ticks; readonly ends?: string; readonly price: number }[]
  /** τ ≤ 0 per cap of a run, same scale: `cap` members at `point`, or at all of `points` where the cap spans several */
  readonly capPrices: readonly {
    readonly runId: string
    readonly point: number
    readonly price: number
    readonly cap: number
    readonly points?: readonly number[]
  }[]
  /** what is added to the dual bound by exhaustive search, with its record; null where the dual bound alone proves it */
  readonly search: { readonly nodes: number; readonly patterns: number } | null
  /** the bound from the prices alone */
  readonly dualBound: Cents
}

/** What a plan has of an objective, and the least that any plan has that is as good by the objectives before it. */
export interface Aim {
  readonly objective: Objective
  /** joints; ticks of board; different lengths bought; or cents, preferences included */
  readonly value: number
  /** equal to the value where that is proven */
  readonly bound: number
}

export type PlanStatus = 'proven optimal' | 'feasible' | 'stopped'

export interface CutPlan {
  readonly jobId: string
  readonly status: PlanStatus
  readonly boards: readonly Board[]
  readonly runPieces: readonly RunPiece[]
  readonly joints: readonly PlannedJoint[]
  /** order in which members of a neighboursApart group are laid */
  readonly memberOrder: readonly { readonly runId: string; readonly memberIds: readonly string[] }[]
  readonly order: readonly {
    readonly stockId: string
    readonly length: Ticks
    readonly count: number
    readonly price: Cents
    readonly amount: Cents
  }[]
  readonly stockCost: Cents
  readonly jointCost: Cents
  /** stockCost + jointCost */
  readonly cost: Cents
  /** preferences counted beside the cost: stagger excess, handling, cuts; minus kept offcuts */
  readonly preference: Cents
  /** no plan's cost + preference is below this */
  readonly bound: Cents
  /** cost + preference − bound; 0 where proven optimal */
  readonly gap: Cents
  /** what it was chosen for, in order, least cost last; absent where that is the least cost alone */
  readonly aims?: readonly Aim[]
  readonly why: string
  readonly certificate: Certificate
  /** lengths of bought board by what became of it; a stretch that two pieces share at a slanting cut counts once */
  readonly waste: {
    readonly used: Ticks
    readonly kerf: Ticks
    readonly trim: Ticks
    readonly kept: Ticks
    readonly thrown: Ticks
  }
  readonly work: {
    readonly columns: number
    readonly nodes: number
    readonly patterns: number
    readonly engine: string
  }
}

/** Why there is no plan, and the smallest change that would help. */
export interface Infeasible {
  readonly jobId: string
  readonly subject: string
  readonly message: string
  readonly help: string
}

export type AuditFault = { readonly rule: string; readonly where: string; readonly message: string }
