import type { Design } from '../../estimate-types.ts'
import {
  allHoles,
  frameEdges,
  type Hole,
  isBeforeOneWall,
  type LayoutString,
  layoutChecks,
  layoutCorners,
  layoutStrings,
  overallEdges,
} from '../../ground/index.ts'
import type { Spot } from '../../stairs/index.ts'
import { inches, printLength } from '../../units/index.ts'
import { holdsOnHole, waitingHoles } from '../order/waiting-holes.ts'
import type { Drawing, Primitive } from '../types.ts'
import { houseWalls } from './house-walls.ts'
import { drawingOf, levelDimension, text, uprightDimension } from './shapes.ts'
import { padCorners, padSpots, stairChains } from './stair-places.ts'

const HOUSE = inches(14)
const MARGIN = inches(6)
/** Half of a batter board, seen from above. */
const BOARD = inches(10)
/** From a string's end to its name, and from the strings' ends to the dimensions. */
const NAME_OUT = inches(9)
const DIMENSION_OUT = inches(30)
/** From a corner of the frame to its number. */
const CORNER_OUT = inches(16)
/** From a corner of a pad in to its name. */
const PAD_NAME = inches(9)
/** From a pad to the dimensions that pass it: its own chain stands between. */
const PAST_PAD = inches(24)

/**
 * The footing layout from above: strings between their batter boards, holes with base and tube and the number of the
 * crossing over each centre, offsets from the deck's left end and from the wall, and the two diagonals that must agree.
 * Ids are those of the footings, so that what is pointed at can be asked for.
 */
export function footingLayout(design: Design): Drawing {
  const { strings } = layoutStrings(design)
  const primitives: readonly Primitive[] = [
    ...house(design),
    ...outline(design),
    ...corners(design),
    ...longDiagonals(design),
    ...strings.flatMap((string) => drawnString(string, (x, y) => isAtWall(design, x, y))),
    ...pads(design),
    ...holes(design),
    ...offsets(design, strings),
  ]
  return drawingOf('footing-layout', 'Footing layout', primitives, MARGIN)
}

function house(design: Design): readonly Primitive[] {
  const { job, layout } = design
  if (job.site.attachment === 'freestanding') return []
  if (!isBeforeOneWall(design)) return houseWalls(design)
  const { left, right } = frameEdges(layout)
  return [
    {
      kind: 'rect',
      id: 'house-wall',
      layer: 'house',
      x: left - HOUSE,
      y: -HOUSE,
      w: right - left + 2 * HOUSE,
      h: HOUSE,
      weight: 'heavy',
      stroke: 'solid',
      fill: 'house',
    },
  ]
}

/** The outside of the frames of all levels. */
function outline({ layout }: Design): readonly Primitive[] {
  return layout.levels
    .flatMap(({ edges }) => edges)
    .map(
      ({ number, from, to }): Primitive => ({
        kind: 'line',
        id: `outline-${number}`,
        layer: 'decking',
        x1: from.x,
        y1: from.y,
        x2: to.x,
        y2: to.y,
        weight: 'fine',
        stroke: 'hidden',
      }),
    )
}

/** Numbers of the corners, each beside its corner; those on the line of the one wall need none. */
function corners(design: Design): readonly Primitive[] {
  const { left, right } = overallEdges(design.layout)
  const isNamed = isBeforeOneWall(design) ? (away: number): boolean => away > 0 : (): boolean => true
  return layoutCorners(design)
    .filter(({ fromWall }) => isNamed(fromWall))
    .map(({ number, along, fromWall }) => {
      const out = along < (left + right) / 2 ? -CORNER_OUT : CORNER_OUT
      return text(
        `corner-${number}`,
        'dimensions',
        along + out,
        fromWall + (fromWall > 0 ? CORNER_OUT / 2 : -CORNER_OUT / 2),
        `corner ${number}`,
      )
    })
}

/** The long lines that prove the corners square, and what each must measure. */
function longDiagonals(design: Design): readonly Primitive[] {
  return layoutChecks(design)
    .filter(({ kind }) => kind === 'square' || kind === 'level')
    .flatMap(({ lines, measures }) => lines.map((line) => ({ line, measures })))
    .flatMap(({ line, measures }, i): readonly Primitive[] => {
      const id = `long-diagonal-${i + 1}`
      const at = { x: line.x1 + 0.3 * (line.x2 - line.x1), y: line.y1 + 0.3 * (line.y2 - line.y1) }
      return [
        { kind: 'line', id, layer: 'dimensions', ...line, weight: 'fine', stroke: 'hidden' },
        text(id, 'dimensions', at.x, at.y, printLength(measures)),
      ]
    })
}

/** Whether a string ends at the house, a tick more or less. */
function isAtWall({ layout, job }: Design, x: number, y: number): boolean {
  if (job.site.attachment === 'freestanding') return false
  const near = (a: number, b: number, at: number): boolean =>
    at >= Math.min(a, b) - 1 && at <= Math.max(a, b) + 1
  return layout.edges.some(
    ({ kind, from, to }) => kind === 'wall' && near(from.x, to.x, x) && near(from.y, to.y, y),
  )
}

/** A string with a batter board at each free end, the wall holds the others; those of the edges need no name. */
function drawnString(
  { name, runs, edge, x1, y1, x2, y2 }: LayoutString,
  atWall: (x: number, y: number) => boolean,
): readonly Primitive[] {
  const id = `string-${name}`
  const along = runs === 'along the wall'
  const board = (x: number, y: number): Primitive => ({
    kind: 'line',
    id,
    layer: 'strings',
    x1: along ? x : x - BOARD,
    y1: along ? y - BOARD : y,
    x2: along ? x : x + BOARD,
    y2: along ? y + BOARD : y,
    weight: 'medium',
    stroke: 'solid',
  })
  return [
    { kind: 'line', id, layer: 'strings', x1, y1, x2, y2, weight: 'fine', stroke: 'centre' },
    ...(atWall(x1, y1) ? [] : [board(x1, y1)]),
    ...(atWall(x2, y2) ? [] : [board(x2, y2)]),
    ...(edge
      ? []
      : [
          along ? text(id, 'strings', x1 - NAME_OUT, y1, name) : text(id, 'strings', x2, y2 + NAME_OUT, name),
        ]),
  ]
}

function holes(design: Design): readonly Primitive[] {
  const waiting = waitingHoles(design)
  return allHoles(design).flatMap((footing): readonly Primitive[] => {
    const circle = (r: number, weight: 'fine' | 'medium', stroke: 'solid' | 'hidden'): Primitive => ({
      kind: 'circle',
      id: footing.id,
      layer: 'footings',
      cx: footing.x,
      cy: footing.y,
      r,
      weight,
      stroke,
    })
    const away = footing.holeDiameter / 2
    return [
      circle(footing.holeDiameter / 2, 'fine', 'hidden'),
      ...(footing.base > 0 ? [circle(footing.base / 2, 'fine', 'solid')] : []),
      circle(footing.tube / 2, 'medium', 'solid'),
      text(
        footing.id,
        'posts',
        footing.x + away,
        footing.y - away,
        `${nameOf(footing)}${holdsOnHole(waiting, footing.number) === '' ? '' : ', waits'}`,
      ),
    ]
  })
}

/** The pads at the feet of stairs, which no string crosses: their corners by name, and how they lie to the deck's edge. */
function pads({ stairs }: Design): readonly Primitive[] {
  return padSpots(stairs).flatMap(({ plan, corners }): readonly Primitive[] => {
    const middle = (pick: (spot: Spot) => number) =>
      corners.reduce((sum, { spot }) => sum + pick(spot), 0) / corners.length
    const [x, y] = [middle((spot) => spot.x), middle((spot) => spot.y)]
    const inside = ({ x: cx, y: cy }: Spot) => ({
      x: cx + Math.sign(x - cx) * PAD_NAME,
      y: cy + Math.sign(y - cy) * PAD_NAME,
    })
    return [
      ...corners.map(({ spot: from }, i): Primitive => {
        const to = corners[(i + 1) % corners.length]?.spot ?? from
        return {
          kind: 'line',
          id: 'stair-pad',
          layer: 'footings',
          x1: from.x,
          y1: from.y,
          x2: to.x,
          y2: to.y,
          weight: 'medium',
          stroke: 'solid',
        }
      }),
      text('stair-pad', 'posts', x, y, 'pad'),
      ...corners.map(({ name, spot }) => {
        const at = inside(spot)
        return text('stair-pad', 'posts', at.x, at.y, name)
      }),
      ...stairChains(
        plan,
        corners.map(({ spot }) => spot),
        [],
      ),
    ]
  })
}

/** A hole under stairs with the mark of the post that stands on it: its number is no post's of the deck. */
function nameOf({ number, under, post }: Hole): string {
  return under === 'stairs' && post !== null ? `${number} (${post.mark})` : `${number}`
}

/** Offsets in a chain: along the wall below the strings, away from it at their right. */
function offsets({ layout, stairs }: Design, strings: readonly LayoutString[]): readonly Primitive[] {
  const { left, right } = overallEdges(layout)
  const below = Math.max(...strings.map(({ y2 }) => y2))
  const beside = Math.max(...strings.map(({ x2 }) => x2))
  const spots = stairs.flatMap(padCorners)
  const past = (from: number, pick: (spot: Spot) => number): number =>
    Math.max(DIMENSION_OUT, ...spots.map((spot) => pick(spot) + PAST_PAD - from))
  const [under, aside] = [past(below, ({ y }) => y), past(beside, ({ x }) => x)]
  const places = (runs: LayoutString['runs']) =>
    strings.filter((one) => one.runs === runs).map(({ x1, y1 }) => (runs === 'along the wall' ? y1 : x1))
  return [
    ...steps([left, ...places('square to the wall'), right]).map(([from, to], i) =>
      levelDimension(`offset-along-${i + 1}`, from, to, below, under),
    ),
    ...steps([0, ...places('along the wall')]).map(([from, to], i) =>
      uprightDimension(`offset-away-${i + 1}`, from, to, beside, aside),
    ),
  ]
}

function steps(places: readonly number[]): readonly (readonly [number, number])[] {
  const stops = [...new Set(places)].sort((a, b) => a - b)
  return stops.slice(1).map((to, i) => [stops[i] ?? 0, to])
}
