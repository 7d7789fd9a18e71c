import type { Member } from '../frame/index.ts'
import type { DeckEdge } from '../stairs/index.ts'
import type { Ticks } from '../units/index.ts'

/** A part of an edge, along it from its near end. */
export interface EdgePart {
  readonly from: number
  readonly to: number
}

/** An open edge and how far the ground lies below it. */
export interface GuardedEdge {
  readonly edge: DeckEdge
  /** number of the stairs on whose landing it is; null: of the deck */
  readonly landing: number | null
  /** greatest drop within 36 in of the edge, ticks, exact */
  readonly drop: number
  /** IRC 2021 R312.1.1: more than 30 in */
  readonly needed: boolean
  /** where that is so, to the next foot of it */
  readonly parts: readonly EdgePart[]
}

export interface GuardPost {
  readonly id: string
  /** centre, along the edge from its near end; ticks, not always whole */
  readonly at: number
  /** whether it stands beside a joist that runs into the edge */
  readonly onJoist: boolean
  /** its bolts go through a joint of the board along the edge, and it has no other place */
  readonly atJoint?: true
  /** it stands in lumber of the frame or in another post, and has no other place */
  readonly inWood?: true
}

/** The clear opening between two posts. */
export interface GuardBay {
  /** between the posts' faces, along the edge; beside stairs level, down from the head of the flight */
  readonly from: number
  readonly to: number
  /** the same to the tick below */
  readonly clear: Ticks
  /** balusters in it, and the opening left between them, ticks, exact; none in a panel */
  readonly balusters: number
  readonly opening: number
}

/** A stretch of guard along one edge, from corner, wall or stairs to the next. */
export interface GuardStretch {
  readonly number: number
  readonly edge: DeckEdge
  /** number of the stairs on whose landing it stands; null: on the deck */
  readonly landing: number | null
  readonly from: number
  readonly to: number
  /** from the edge to the face of its posts: as thick as the boards along the edge */
  readonly behind: number
  /** whether joists run squarely into the edge */
  readonly crossed: boolean
  /** how its cap is cut at either end: by how much its inner edge is shorter for each tick that it lies further in */
  readonly mitres: readonly [number, number]
  readonly posts: readonly GuardPost[]
  readonly bays: readonly GuardBay[]
  /** whether rails past its first and its last post end at a post of the next edge */
  readonly closed: readonly [boolean, boolean]
}

/** What holds a post of the deck or of a landing besides the board along its edge: blocks of its own and of the frame. */
export interface Backing {
  readonly post: string
  readonly blocks: readonly string[]
}

/** What a post's hold-down is fixed to. */
export interface HoldDownFace {
  readonly post: string
  /** id of the joist or block on whose side its leg lies; null where nothing has such a side */
  readonly wood: string | null
  /** how far the leg may reach behind the post, and the block that stands tight behind it; ticks */
  readonly room: number
  /** from the post to the wood that stands across straight behind it; less than nothing where it stands in that, null where none is near */
  readonly clear: number | null
}

/** A post bolted to a stringer's outer face. */
export interface StairPost {
  readonly id: string
  /** centre, level from the head of its flight */
  readonly at: number
  /** lower end, and the long point of its upper end, which is cut to the slope */
  readonly z0: number
  readonly z1: number
}

/** The guard on one side of a flight of stairs. */
export interface StairGuard {
  /** from 1 through all sides of all flights */
  readonly number: number
  readonly flight: number
  /** from the near side of the flight to the middle of the posts */
  readonly across: number
  /** level, from the head of the flight to where it begins and ends */
  readonly from: number
  readonly to: number
  /** along the slope */
  readonly length: Ticks
  /** rise for each tick of run, and the same in degrees, hundredths */
  readonly slope: number
  readonly degrees: number
  /** of the line of the nosings at the head, above the datum */
  readonly headLevel: number
  /** upright, from the nosings to the lower edge of the lower rail */
  readonly lowerRail: Ticks
  /** ball that passes between a tread, its riser and the lower rail, ticks */
  readonly triangle: number
  /** its own; at the head it may end at a post of the deck, and after a turn at one of the flight above */
  readonly posts: readonly StairPost[]
  readonly bays: readonly GuardBay[]
}

/** Balusters are bought in stock lengths. */
export interface Balusters {
  /** beside stairs; both ends are then cut to the slope, and the length is to the long points */
  readonly sloped: boolean
  readonly length: Ticks
  readonly stock: Ticks
  readonly count: number
}

/** What closes a side of stairs or of a landing: a wall that is stated, or one taken to go on past the deck's end. */
export type HouseSide = 'wall' | 'wall going on'

/** A side of a flight, or of stairs' landing, that has no guard, for the house closes it. */
export interface HouseBeside {
  readonly stairs: number
  /** null: of the landing */
  readonly flight: number | null
  /** a stated wall along all of it, or one that is taken to go on past the deck's end */
  readonly closes: HouseSide
}

/** What lies between an end post of the guard beside stairs and the nearest post of the level guard there. */
export interface StairOpening {
  /** ids of the two posts */
  readonly stairs: string
  readonly level: string
  /** the narrowest way between them, or to what is fixed to the level one, ticks */
  readonly clear: number
}

export interface GuardPlan {
  /** every open edge of the deck and of landings, guarded or not */
  readonly edges: readonly GuardedEdge[]
  readonly stretches: readonly GuardStretch[]
  readonly stairs: readonly StairGuard[]
  readonly house: readonly HouseBeside[]
  readonly openings: readonly StairOpening[]
  readonly members: readonly Member[]
  readonly backing: readonly Backing[]
  /** of every post of the deck and of landings */
  readonly faces: readonly HoldDownFace[]
  /** ids of the frame's blocks under a border that are left out, for one behind a post stands in their place */
  readonly replaced: readonly string[]
  /** on the level and along stairs; none where panels fill the bays */
  readonly balusters: readonly Balusters[]
  /** panels by the length they are sold in, on the level and along stairs */
  readonly panels: readonly { readonly stock: Ticks; readonly sloped: boolean; readonly count: number }[]
  /** posts on the deck and on landings; those of the stairs are fixed to stringers */
  readonly deckPosts: number
  readonly stairPosts: number
  readonly gates: number
  /** all rails on the level and along stairs, ticks */
  readonly levelLength: number
  readonly slopedLength: number
}
