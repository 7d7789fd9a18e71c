import type { Design } from '../estimate-types.ts'
import type { HoleSetOut } from '../frame/index.ts'
import { feet, inches, type Ticks, ticks } from '../units/index.ts'
import { frameEdges, overallEdges } from './frame-edges.ts'
import { allHolesSetOut } from './holes.ts'
import { cutAtWalls, offsetOf } from './strings-around-house.ts'
import { isBeforeOneWall } from './wall-ties.ts'

/** How far outside the frame and the holes a string's ends stand on their batter boards: common practice, no source. */
export const BATTER_BOARDS_OUT = feet(2)

/** Centres that are no farther apart than this share a string: what a tape shows. */
const ONE_STRING = inches(1 / 16)

/** A string, set up between two batter boards or between one and the wall. */
export interface LayoutString {
  /** A, B, … along the wall; a, b, … square to it; the frame's own edges by their side */
  readonly name: string
  readonly runs: 'along the wall' | 'square to the wall'
  /** how far from what is named in `from` */
  readonly offset: Ticks
  readonly from: string
  /** the outside of the frame lies under it */
  readonly edge: boolean
  /** numbers of the holes whose centres lie under it */
  readonly holes: readonly number[]
  readonly x1: number
  readonly y1: number
  readonly x2: number
  readonly y2: number
}

/** Where two strings cross over a hole's centre, and what proves it. */
export interface Crossing extends HoleSetOut {
  /** names of its two strings, such as A × b */
  readonly strings: string
}

/**
 * Strings over the outside of the frame, of the level at the house where there are several, whose corners the long
 * diagonals are taken from, and which reach past the frames of all levels; and one over each row of holes
 * along the wall and one square to it over each line of holes, so that two strings cross over every centre, now for the
 * hole and later for the anchor bolt. Holes of any places in the plane; a frame of any outline lies within its edges.
 * Where the deck goes around the house, a string ends at its walls, and offsets are measured from the frame's edges.
 */
export function layoutStrings(design: Design): {
  readonly strings: readonly LayoutString[]
  readonly crossings: readonly Crossing[]
} {
  const { layout, job } = design
  const holes = allHolesSetOut(design)
  const attached = job.site.attachment === 'ledger'
  const around = !isBeforeOneWall(design)
  const whole = overallEdges(layout)
  // where one wall gives the line that all is squared from, the edges are those of the level that stands at it
  const edges = around ? whole : frameEdges(layout)
  // holes of stairs lie beyond the frame
  const far = {
    left: Math.min(whole.left, ...holes.map((hole) => hole.along)),
    right: Math.max(whole.right, ...holes.map((hole) => hole.along)),
    rear: Math.min(whole.rear, ...holes.map((hole) => hole.fromWall)),
    front: Math.max(whole.front, ...holes.map((hole) => hole.fromWall)),
  }
  const ends = {
    x1: far.left - BATTER_BOARDS_OUT,
    x2: far.right + BATTER_BOARDS_OUT,
    y1: far.rear - BATTER_BOARDS_OUT,
    y2: far.front + BATTER_BOARDS_OUT,
  }
  // the wall stops a string where there is one; beside it a string begins before its first hole, for nothing says where
  // the house ends
  const start = (x: number, under: readonly HoleSetOut[]): number => {
    if (!attached || around) return ends.y1
    if (hasWallAt(layout, x)) return 0
    return Math.max(0, Math.min(...under.map(({ fromWall }) => fromWall)) - BATTER_BOARDS_OUT)
  }
  const rows = different(holes.map(({ fromWall }) => fromWall))
  const lines = different(holes.map(({ along }) => along))
  const wall = attached ? 'the wall' : 'the rear rim’s outer face'
  const along = (name: string, y: number, edge: boolean): LayoutString => ({
    name,
    runs: 'along the wall',
    ...(around ? offsetOf(design, 'y', y, edge) : { offset: ticks(y), from: wall }),
    edge,
    holes: holes.filter(({ fromWall }) => isUnder(fromWall, y)).map(({ number }) => number),
    x1: ends.x1,
    y1: y,
    x2: ends.x2,
    y2: y,
  })
  const square = (name: string, x: number, edge: boolean): LayoutString => {
    const under = holes.filter(({ along: at }) => isUnder(at, x))
    return {
      name,
      runs: 'square to the wall',
      ...(around ? offsetOf(design, 'x', x, edge) : { offset: ticks(x), from: 'the deck’s left end' }),
      edge,
      holes: under.map(({ number }) => number),
      x1: x,
      y1: start(x, under),
      x2: x,
      y2: ends.y2,
    }
  }
  const strings = [
    square('left', edges.left, true),
    square('right', edges.right, true),
    ...(attached ? [] : [along('rear', edges.rear, true)]),
    along('front', edges.front, true),
    ...rows.map((y, i) => along(letter(i, 'A'), y, false)),
    ...lines.map((x, i) => square(letter(i, 'a'), x, false)),
  ]
  return {
    strings: around ? strings.map((string) => cutAtWalls(string, design)) : strings,
    crossings: holes.map((hole) => ({
      ...hole,
      strings: `${letter(
        rows.findIndex((y) => isUnder(hole.fromWall, y)),
        'A',
      )} × ${letter(
        lines.findIndex((x) => isUnder(hole.along, x)),
        'a',
      )}`,
    })),
  }
}

/** Whether the house stands along the deck at so far from its left end. */
function hasWallAt({ levels }: Design['layout'], x: number): boolean {
  return levels
    .flatMap(({ edges }) => edges)
    .some(
      ({ kind, from, to }) =>
        kind === 'wall' &&
        from.y === 0 &&
        to.y === 0 &&
        x >= Math.min(from.x, to.x) &&
        x <= Math.max(from.x, to.x),
    )
}

/** The least of places that share a string, in order. */
function different(places: readonly number[]): readonly number[] {
  const strings: number[] = []
  for (const place of [...places].sort((a, b) => a - b))
    if (!isUnder(place, strings.at(-1) ?? Number.NEGATIVE_INFINITY)) strings.push(place)
  return strings
}

function isUnder(place: number, string: number): boolean {
  return place >= string && place - string <= ONE_STRING
}

/** A to Z, then A2 to Z2 and so on. */
function letter(index: number, first: 'A' | 'a'): string {
  const round = Math.floor(index / 26)
  return String.fromCharCode(first.charCodeAt(0) + (index % 26)) + (round === 0 ? '' : `${round + 1}`)
}
