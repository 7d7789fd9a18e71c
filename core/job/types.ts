import type { Grade, LumberSize, SoilClass, Species, Treatment } from '../data/index.ts'
import type { Cents, Psf, Share, Ticks } from '../units/index.ts'
import type { EntryKind, HoursWorked, KeptLine, LineState, Purchase } from './costing-entries.ts'

/** A job as its file or the window states it: sparse, in the user's own words; what is absent is a default. */
export type JobStatement = { readonly [key: string]: JsonValue }
export type JsonValue =
  | string
  | number
  | boolean
  | null
  | readonly JsonValue[]
  | { readonly [key: string]: JsonValue }

/** Dotted path of a field of the job, e.g. "frame.joists.spacing". */
export type FieldPath = string

/** What is wrong with a stated job: where, what, and what would be right. */
export interface Fault {
  readonly path: FieldPath
  readonly message: string
  readonly fix: string
  /** place in the job file's text, from 1, where it came from a file */
  readonly line?: number
  readonly column?: number
}

export interface BeamSpec {
  /** under the joists, or between them with its top level with theirs: then they hang from it */
  readonly set: 'dropped' | 'flush'
  readonly size: LumberSize
  readonly plies: number
  /** outer face of the rim on its side to the beam's centre line */
  readonly setback: Ticks
  /** false: the setback is the most that it may be, less behind an edge whose joists are too short for it */
  readonly setbackStated: boolean
  readonly posts: number
  /** end of the beam to the centre of its end post */
  readonly inset: Ticks
}

/** Ground under the deck; heights above the datum, which is the ground at the wall's left end. */
export type Ground =
  | {
      readonly kind: 'plane'
      /** drop (positive is down) over a run, along the wall to the right and away from it */
      readonly along: { readonly fall: Ticks; readonly over: Ticks }
      readonly away: { readonly fall: Ticks; readonly over: Ticks }
    }
  | {
      readonly kind: 'spots'
      readonly spots: readonly { readonly x: Ticks; readonly y: Ticks; readonly z: Ticks }[]
    }

/** Things builders forget; each is priced by a stated sum, counted by the program, or said not to be included. */
export type ScopeTopic =
  | 'stairs'
  | 'guard'
  | 'taking away'
  | 'hauling'
  | 'delivery'
  | 'permit'
  | 'marking'
  | 'flashing'
  | 'fasteners'
  | 'hire'
  | 'clean-up'

export type CutObjective = 'least cost' | 'fewest joints' | 'least waste' | 'fewest lengths'

/** How joists pass a middle beam; by stock: whole up to the longest to be had, else lapped. */
export type JoistOverMiddle = 'by stock' | 'one piece' | 'lapped' | 'butted'

export type Stagger = 'preferred' | 'required' | 'none'

/** One of the stairs from the deck to the ground. */
export interface StairSpec {
  readonly kind: 'none' | 'straight' | 'full width' | 'landing' | 'landing left' | 'landing right'
  readonly side: 'front' | 'left' | 'right' | 'rear'
  /** number of the outline's edge, from 1 at the house wall; 0 goes by the side */
  readonly edge: number
  readonly align: 'middle' | 'near' | 'far' | 'stated'
  /** from the edge's left or house end to the near side of the stairs, where the place is stated */
  readonly place: Ticks
  readonly width: Ticks
  readonly run: Ticks
  readonly stringers: 'cut' | 'closed'
  readonly treads: 'as the decking' | '5/4x6' | '2x6'
  readonly risers: 'a board' | 'open'
  readonly foot: 'pad' | 'footings' | 'existing'
  readonly padDepth: Ticks
  readonly padThickness: Ticks
  readonly landingDepth: Ticks
  readonly handrail: 'one side' | 'both sides' | 'none'
}

/** The whole statement about one deck, every field present and valid. The only input of the pipeline beside the price book. */
export interface Job {
  readonly version: number
  readonly name: string
  readonly notes: string
  /** who it is built for; '' where it is not stated */
  readonly customer: { readonly name: string; readonly address: string; readonly contact: string }
  /** who builds: decides whether wages, overhead and margin are in the price */
  readonly builder: 'contractor' | 'owner'
  readonly size: { readonly width: Ticks; readonly depth: Ticks; readonly height: Ticks }
  /** what makes it other than a rectangle, as typed: see cornerList, edgeList, zoneList, rectangleList */
  readonly shape: {
    readonly outline: string
    readonly walls: string
    readonly joists: 'away' | 'along'
    readonly zones: string
    /** where two zones meet: end joists side by side one, or one of each zone; a hip; joists hung from a flush beam */
    readonly seams: 'single' | 'doubled' | 'hip' | 'flush'
    readonly openings: string
    readonly setbacks: string
    readonly middleBeams: string
    readonly levels: string
    /** where one level's joists end against a higher one's: a beam of each, or the higher one's for both */
    readonly levelBeams: 'own' | 'shared'
    /** what leads from one level to the next where they lie more than a riser apart */
    readonly steps: 'box' | 'none'
    readonly stepWidth: Ticks
  }
  readonly site: {
    readonly attachment: 'ledger' | 'freestanding'
    readonly ground: Ground
    readonly frostDepth: Ticks
    /** whether the job says it; where not, the depth is that of a very cold place */
    readonly frostStated: boolean
    readonly frostSource: string
    readonly soil: SoilClass
    readonly soilBearing: Psf
    readonly snowLoad: Psf
    /** whether the job says it; where not, the load is the most that the deck tables cover */
    readonly snowStated: boolean
    readonly liveLoad: Psf
    readonly deadLoad: Psf
    readonly ledgerFastener: 'lag' | 'bolt'
    /** sheathing between ledger and band joist */
    readonly sheathing: 'up to 1/2 in' | 'up to 1 in'
    /** what the ledger would hang on */
    readonly band: 'sound' | 'masonry veneer' | 'cantilevered bay' | 'I-joists or trusses' | 'unknown'
    /** what stands on the deck beside people and furniture */
    readonly onDeck: 'none' | 'hot tub' | 'roof' | 'planters' | 'several' | 'unknown'
    /** lb at one place; 0: none */
    readonly concentratedLoad: number
    readonly snowSource: string
    readonly soilSource: string
    readonly windExposure: 'unknown' | 'B' | 'C' | 'D'
    readonly windSource: string
  }
  readonly code: { readonly edition: 'IRC 2021'; readonly governs: 'prescriptive' | 'calculated' }
  readonly frame: {
    readonly species: Species
    readonly grade: Grade
    readonly treatment: Treatment
    readonly joists: {
      readonly size: LumberSize
      readonly spacing: Ticks
      readonly layoutFrom: 'left' | 'right'
      readonly overMiddle: JoistOverMiddle
      /** longest joist to be had; longer ones are jointed over a middle beam */
      readonly longest: Ticks
    }
    readonly rimPlies: number
    readonly beams: { readonly front: BeamSpec; readonly rear: BeamSpec }
    readonly postSize: LumberSize
    readonly blocking: 'over beams' | 'over beams and mid-span' | 'none'
    /** what holds a freestanding deck upright sideways */
    readonly bracing: 'none stated' | 'knee braces' | 'designed'
    readonly stagger: Stagger
  }
  readonly ground: {
    readonly tube: Ticks
    /** 0 where the tube stands on the ground itself */
    readonly base: Ticks
    readonly baseThickness: Ticks
    readonly projection: Ticks
    readonly standoff: Ticks
    readonly holeRoom: Ticks
    /** posts that stand elsewhere along their beam: to the right of their place, left is minus */
    readonly moved: string
    /** lengths of posts taken at the finished piers; both as typed, see postList */
    readonly measured: string
    /** holes that were found off or barred and what was done about each, as typed, see settledList */
    readonly found: string
    readonly concreteWaste: Share
    readonly swell: Share
    readonly concrete: 'bags' | 'ready-mix' | 'cheaper of both'
    readonly placing: 'by barrow' | 'from the chute'
    /** cubic yards below which ready-mix pays for what is missing, and the least that is delivered */
    readonly fullLoad: number
    readonly leastLoad: number
    readonly digging: 'by hand' | 'two-person auger' | 'machine auger'
    readonly breakerDays: number
  }
  readonly decking: {
    readonly size: LumberSize
    readonly edges: 'solid' | 'grooved'
    readonly fastening: 'face screws' | 'hidden clips'
    /** degrees off square to the joists */
    readonly angle: number
    readonly leans: 'right' | 'left'
    /** courses of a picture frame along the open edges */
    readonly border: number
    /** breaker boards, and parts laid another way, as typed: see lengthList, deckPartList */
    readonly breakers: string
    readonly parts: string
    readonly fascia: 'none' | '1x8' | '1x10' | '1x12'
    readonly skirting: 'none' | 'boards' | 'lattice'
    readonly overhang: Ticks
    readonly gap: Ticks
    readonly wallGap: Ticks
  }
  /** steps from the deck to the ground: the first of them, and what further ones there are */
  readonly stairs: StairSpec & { readonly second: StairSpec; readonly third: StairSpec }
  readonly guard: {
    readonly where: 'none' | 'where needed' | 'all open edges'
    readonly height: Ticks
    readonly infill: 'balusters' | 'panels'
    readonly cap: '2x6' | '5/4x6' | 'none'
    readonly postSize: LumberSize
    /** greatest distance between two post centres */
    readonly postSpacing: Ticks
    readonly fixing: 'hold-downs' | 'bolts'
    /** pounds that the hold-down of a post is listed for */
    readonly holdDown: number
    readonly gate: boolean
  }
  /** what is done before and after, and what makes the hours longer */
  readonly work: {
    readonly crew: 'two' | 'three or more' | 'alone' | 'with a helper' | 'handy owner' | 'first-time owner'
    readonly access: 'easy' | 'slope, narrow gate or steps'
    readonly weather: 'fair' | 'above 90 F or below 25 F'
    readonly heightAndSize: boolean
    readonly markServices: boolean
    /** square feet */
    readonly oldDeck: number
    readonly oldFootings: number
    /** square feet */
    readonly slab: number
    readonly slabThickness: Ticks
    readonly slabSteel: boolean
    readonly haulSpoil: boolean
    readonly delivery: boolean
    readonly groundCover: boolean
    readonly joistTape: boolean
    /** coats of stain */
    readonly coating: number
  }
  readonly cutting: {
    readonly kerf: Ticks
    readonly endTrim: Ticks
    /** order length of a post beyond its length: it is cut in place */
    readonly postAllowance: Ticks
    /** order length of a joist beyond its length: it is cut off in place */
    readonly joistsWild: Ticks
    /** order length of a course beyond its length, at its far end: it is cut off in place */
    readonly deckingWild: Ticks
    readonly staggerPenalty: Cents
    readonly handling: Cents
    readonly keepOffcutsFrom: Ticks
    /** cut from offcuts on hand where that makes the order cheaper */
    readonly useOffcuts: boolean
    /** share of boards that turn out unusable; spare boards are chosen for it, not added as a percentage */
    readonly unusableShare: Share
    /** with the spares, the chance that no second trip is needed */
    readonly finishProbability: Share
    /** what the order is chosen for, and what decides among orders equal in that */
    readonly objective: CutObjective
    readonly objectiveThen: CutObjective
    /** runs held in one piece, lengths not to be bought, most boards of a length; as typed, see their readers */
    readonly onePiece: string
    readonly doWithout: string
    readonly atMost: string
  }
  readonly pricing: {
    readonly method: 'margin' | 'markup'
    readonly margin: Share
    readonly markup: Share
    readonly salesTax: Share
    readonly priceTax: Share
    readonly contingency: Share
    readonly overhead: Share
    /** set-up and clean-up of every day on site are counted */
    readonly dailySetUp: boolean
    /** lines of the price stated by hand, as typed: see statedLines */
    readonly lines: string
    /** what the customer may choose otherwise, as typed: see optionList */
    readonly options: string
    /** what may be spent; 0: nothing stated */
    readonly budget: Cents
    /** file of the price book, from the job file's folder; '' for none. Only the command line opens it. */
    readonly book: string
  }
  /** a stated sum, or null: not included. Flashing and fasteners are counted from the takeoff unless excluded here. */
  readonly scope: {
    readonly [topic in ScopeTopic]: { readonly included: boolean; readonly allowance: Cents }
  }
  /** what the job really took, beside the estimate that it was begun on */
  readonly costing: {
    /** ISO dates; '' until then */
    readonly begun: string
    readonly finished: string
    /** the estimate as it stood then; empty: as it is now */
    readonly estimate: readonly KeptLine[]
    /** what the customer pays before tax, and what one worker hour costs; 0: as it is now */
    readonly price: Cents
    readonly hourly: Cents
    readonly bought: readonly Purchase[]
    readonly worked: readonly HoursWorked[]
    readonly lines: readonly LineState[]
  }
}

export interface ReadJob {
  readonly job: Job
  /** paths stated by the user; every other field is a default and is shown as one */
  readonly given: readonly FieldPath[]
}

export type FieldKind =
  | 'text'
  | 'length'
  | 'money'
  | 'share'
  | 'count'
  | 'psf'
  | 'choice'
  | 'ground'
  | 'flag'
  | 'entries'

/** One field of the job: the single source of its default, its bounds, its form control, its help and its faults. */
export interface FieldSpec {
  readonly path: FieldPath
  readonly label: string
  readonly section:
    | 'job'
    | 'size'
    | 'shape'
    | 'site'
    | 'code'
    | 'frame'
    | 'ground'
    | 'decking'
    | 'stairs'
    | 'guard'
    | 'work'
    | 'cutting'
    | 'pricing'
    | 'scope'
    | 'costing'
  readonly kind: FieldKind
  /** of what kind the entries of a list are */
  readonly entries?: EntryKind
  /** what a text lists: lengths by post, holes found off, parts of the shape, names of runs, stock lengths or counts by size */
  readonly lists?:
    | 'posts'
    | 'settled holes'
    | 'corners'
    | 'edges'
    | 'zones'
    | 'rectangles'
    | 'lengths'
    | 'middle beams'
    | 'edge lengths'
    | 'levels'
    | 'decked parts'
    | 'options'
    | 'runs'
    | 'stock lengths'
    | 'stock counts'
    | 'stated lines'
    | 'a day'
  readonly choices?: readonly string[]
  /** the choices in words, where they are codes of the trade */
  readonly choiceLabels?: readonly string[]
  /** bounds in the field's own unit (ticks, cents, 1/100 %, psf, count, characters of a text), inclusive */
  readonly min?: number
  readonly max?: number
  /** why a value outside the bounds is refused */
  readonly boundsReason?: string
  /** default as a person would write it in a job file */
  readonly default: JsonValue
  /** plain words, for an owner who has never framed a deck */
  readonly help: string
  /** where the default comes from: a clause, or "common practice, no source" */
  readonly basis: string
}
