import type { Design } from '../estimate-types.ts'
import { diagonal } from '../frame/index.ts'
import type { Level, Point } from '../layout/index.ts'
import { inches, nearestSixteenth, printLength, type Ticks } from '../units/index.ts'
import { frameEdges, overallEdges } from './frame-edges.ts'
import { allHoles, type Hole } from './holes.ts'
import { type LayoutString, layoutStrings } from './layout-strings.ts'
import { sightOf } from './sight.ts'
import { isBeforeOneWall } from './wall-ties.ts'

/** How near a hole's centre is set to its place with strings and a tape: common practice, no source. */
const LAYOUT_TOLERANCE = inches(1 / 4)

/** A measure that a person takes when all is marked, to find a mistake. */
export interface LayoutCheck {
  /** level: of a further level, once its corners are marked */
  readonly kind: 'square' | 'level' | 'crossings' | 'apart'
  readonly what: string
  readonly measures: Ticks
  /** apart from this by more than the tolerance, something is wrong */
  readonly tolerance: Ticks
  /** what to look for where it does not come out */
  readonly otherwise: string
  /** what is measured, from one end to the other */
  readonly lines: readonly MeasuredLine[]
}

interface MeasuredLine {
  readonly x1: number
  readonly y1: number
  readonly x2: number
  readonly y2: number
}

/**
 * Checks of a layout, of any outline. One finds a corner that is not square; one, where the strings over the holes cross
 * in more than a row, a string that was moved; and one a hole that was measured from the wrong end or left out: it uses
 * neither the strings nor the offsets that the holes were marked by.
 */
export function layoutChecks(design: Design): readonly LayoutCheck[] {
  const strings = layoutStrings(design).strings.filter(({ edge }) => !edge)
  const rows = strings.filter(({ runs }) => runs === 'along the wall')
  const lines = strings.filter(({ runs }) => runs === 'square to the wall')
  const { isClear } = sightOf(design.layout)
  const crossings = crossingsOf(rows, lines).filter((check) =>
    check.lines.every(({ x1, y1, x2, y2 }) => isClear({ x: x1, y: y1 }, { x: x2, y: y2 })),
  )
  const square = isBeforeOneWall(design) ? [squareOf(design)] : squareByTies(design)
  return [...square, ...furtherLevels(design), ...crossings, ...apartOf(allHoles(design), rows)]
}

/** Of the smallest rectangle on the job's axes that holds the frame. */
function squareOf({ layout }: Design): LayoutCheck {
  const of = layout.levels.length > 1 ? 'Level 1: both' : 'Both'
  const { left, right, rear, front } = frameEdges(layout)
  const long = diagonal(right - left, front - rear)
  // of a parallelogram that leans by s, the squares of its diagonals differ by four times s by its width
  const perInch = nearestSixteenth((inches(1) * long) / (2 * (right - left)))
  return {
    kind: 'square',
    what: `${of} diagonals between the corners of the strings over ${layout.levels.length > 1 ? 'its' : 'the frame’s'} edges`,
    measures: long,
    tolerance: LAYOUT_TOLERANCE,
    otherwise: `The longer one ends at the front corner that must come in: move the outer ends of both side strings alike, away from it, by ${printLength(perInch)} for each inch that the two differ; never the wall.`,
    lines: [
      { x1: left, y1: rear, x2: right, y2: front },
      { x1: right, y1: rear, x2: left, y2: front },
    ],
  }
}

/** Of each further level of four square corners: no string lies over its edges, so its marked corners are measured. */
function furtherLevels({ layout }: Design): readonly LayoutCheck[] {
  return layout.levels.slice(1).flatMap((level): readonly LayoutCheck[] => {
    const [one, two, three, four] = level.outline.map((corner, i) => ({
      ...corner,
      number: level.edges[i]?.number ?? i + 1,
    }))
    if (one === undefined || two === undefined || three === undefined || four === undefined) return []
    if (!hasSquareCorners(level)) return []
    return [
      {
        kind: 'level',
        what: `Level ${level.number}: both diagonals, corner ${one.number} to ${three.number} and corner ${two.number} to ${four.number}`,
        measures: diagonal(three.x - one.x, three.y - one.y),
        tolerance: LAYOUT_TOLERANCE,
        otherwise:
          'Measure each of its corners anew by the two diagonals in the table of corners: the one that does not agree is off.',
        lines: [
          { x1: one.x, y1: one.y, x2: three.x, y2: three.y },
          { x1: two.x, y1: two.y, x2: four.x, y2: four.y },
        ],
      },
    ]
  })
}

/** Whether it is a rectangle in any position: of four corners whose diagonals are alike and halve each other. */
function hasSquareCorners({ outline }: Level): boolean {
  const [one, two, three, four] = outline
  if (outline.length !== 4 || !one || !two || !three || !four) return false
  return (
    one.x + three.x === two.x + four.x &&
    one.y + three.y === two.y + four.y &&
    apart(one, three) === apart(two, four)
  )
}

/**
 * Where the house stands within the rectangle around the frame, its diagonals cannot be measured: the two corners farthest
 * out are proved from the house, each by one slanting line.
 */
function squareByTies(design: Design): readonly LayoutCheck[] {
  const { layout } = design
  const sight = sightOf(layout)
  const { front } = overallEdges(layout)
  const outer = layout.levels
    .flatMap(({ edges }) => edges)
    .filter(({ from }) => from.y === front)
    .sort((a, b) => a.from.x - b.from.x)
  return [...new Set([outer[0], outer.at(-1)])].flatMap((edge): readonly LayoutCheck[] => {
    if (edge === undefined) return []
    const { from: place, number } = edge
    const [corner] = sight.corners
      .filter((one) => one.x !== place.x && one.y !== place.y && sight.isClear(one, place))
      .sort((a, b) => apart(a, place) - apart(b, place))
    if (corner === undefined) return []
    return [
      {
        kind: 'square',
        what: `Corner ${corner.number}, at the house, to corner ${number} of the frame, where its strings cross`,
        measures: diagonal(place.x - corner.x, place.y - corner.y),
        tolerance: LAYOUT_TOLERANCE,
        otherwise:
          'Measure both strings’ distances from the house anew, at both ends; then move the outer end of the string that is square to the wall.',
        lines: [{ x1: corner.x, y1: corner.y, x2: place.x, y2: place.y }],
      },
    ]
  })
}

function apart(one: Point, other: Point): number {
  return Math.hypot(other.x - one.x, other.y - one.y)
}

/** Of the rectangle that the outermost strings over the holes make, where they make one. */
function crossingsOf(rows: readonly LayoutString[], lines: readonly LayoutString[]): readonly LayoutCheck[] {
  const [nearest, farthest] = [rows[0], rows.at(-1)]
  // a string that begins farther out does not cross the nearest row
  const met = lines.filter(({ y1 }) => nearest !== undefined && y1 <= nearest.y1)
  const [first, last] = [met[0], met.at(-1)]
  if (nearest === undefined || farthest === undefined || first === undefined || last === undefined) return []
  if (nearest === farthest || first === last) return []
  const named = (row: LayoutString, line: LayoutString) => `${row.name} × ${line.name}`
  return [
    {
      kind: 'crossings',
      what: `Both diagonals of the crossings: ${named(nearest, first)} to ${named(farthest, last)}, and ${named(nearest, last)} to ${named(farthest, first)}`,
      measures: diagonal(last.x1 - first.x1, farthest.y1 - nearest.y1),
      tolerance: LAYOUT_TOLERANCE,
      otherwise: 'One of these four strings is off its offset at one end: measure both ends of each anew.',
      lines: [
        { x1: first.x1, y1: nearest.y1, x2: last.x1, y2: farthest.y1 },
        { x1: last.x1, y1: nearest.y1, x2: first.x1, y2: farthest.y1 },
      ],
    },
  ]
}

/** The outer holes of the front row in one pull; where no row has two, the two holes that lie farthest apart. */
function apartOf(holes: readonly Hole[], rows: readonly LayoutString[]): readonly LayoutCheck[] {
  const row = rows
    .map((string) => holes.filter(({ number }) => string.holes.includes(number)))
    .findLast(({ length }) => length > 1)
    ?.sort((a, b) => a.x - b.x)
  const [first, last] = row === undefined ? farthestOf(holes) : [row[0], row.at(-1)]
  if (first === undefined || last === undefined) return []
  const steps = (row ?? [])
    .slice(1)
    .map((hole, i) => printLength(nearestSixteenth(hole.x - (row?.[i]?.x ?? 0))))
  const between = steps.length > 1 ? `; between them ${steps.join(', ')}` : ''
  return [
    {
      kind: 'apart',
      what: `Hole ${first.number} to hole ${last.number}, centre to centre in one pull${between}`,
      measures: distance(first, last),
      tolerance: LAYOUT_TOLERANCE,
      otherwise:
        'Measure each hole anew from the left corner: one was taken from the other end, or its neighbour.',
      lines: [{ x1: first.x, y1: first.y, x2: last.x, y2: last.y }],
    },
  ]
}

function farthestOf(holes: readonly Hole[]): readonly [Hole?, Hole?] {
  const pairs = holes.flatMap((one, i) => holes.slice(i + 1).map((other) => [one, other] as const))
  return pairs.reduce<readonly [Hole?, Hole?]>((best, pair) => {
    const [one, other] = best
    return one === undefined || other === undefined || distance(...pair) > distance(one, other) ? pair : best
  }, [])
}

/** Centre to centre, nearest 1/16 in. */
function distance(one: Hole, other: Hole): Ticks {
  return diagonal(other.x - one.x, other.y - one.y)
}
