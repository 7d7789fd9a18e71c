import type { Design } from '../estimate-types.ts'
import { diagonal, type Footing } from '../frame/index.ts'
import { inches, nearestSixteenth, printLength, type Ticks } from '../units/index.ts'
import { frameEdges, type LayoutString, layoutStrings } from './layout-strings.ts'

/** How near a hole's centre is set to its place with strings and a tape: common practice, no source. */
const LAYOUT_TOLERANCE = inches(1 / 4)

/** A measure that a person takes when all is marked, to find a mistake. */
export interface LayoutCheck {
  readonly kind: 'square' | 'crossings' | 'apart'
  readonly what: string
  readonly measures: Ticks
  /** apart from this by more than the tolerance, something is wrong */
  readonly tolerance: Ticks
  /** what to look for where it does not come out */
  readonly otherwise: string
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
  return [squareOf(design), ...crossingsOf(rows, lines), ...apartOf(design.frame.footings, rows)]
}

/** Of the smallest rectangle on the job's axes that holds the frame. */
function squareOf({ layout }: Design): LayoutCheck {
  const { left, right, rear, front } = frameEdges(layout)
  return {
    kind: 'square',
    what: 'Both diagonals between the corners of the strings over the frame’s edges',
    measures: diagonal(right - left, front - rear),
    tolerance: LAYOUT_TOLERANCE,
    otherwise:
      'The longer one ends at the front corner that must come in: move the outer ends of both side strings alike, away from it; never the wall.',
  }
}

/** Of the rectangle that the outermost strings over the holes make, where they make one. */
function crossingsOf(rows: readonly LayoutString[], lines: readonly LayoutString[]): readonly LayoutCheck[] {
  const [nearest, farthest, first, last] = [rows[0], rows.at(-1), lines[0], lines.at(-1)]
  if (nearest === undefined || farthest === undefined || first === undefined || last === undefined) return []
  if (nearest === farthest || first === last) return []
  const named = (row: LayoutString, line: LayoutString) => `${row.name} × ${line.name}`
  return [
    {
      kind: 'crossings',
      what: `Both diagonals of the crossings: ${named(nearest, first)} to ${named(farthest, last)}, and ${named(nearest, last)} to ${named(farthest, first)}`,
      measures: diagonal(last.offset - first.offset, farthest.offset - nearest.offset),
      tolerance: LAYOUT_TOLERANCE,
      otherwise: 'One of these four strings is off its offset at one end: measure both ends of each anew.',
    },
  ]
}

/** The outer holes of the front row in one pull; where no row has two, the two holes that lie farthest apart. */
function apartOf(holes: readonly Footing[], rows: readonly LayoutString[]): readonly LayoutCheck[] {
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
    },
  ]
}

function farthestOf(holes: readonly Footing[]): readonly [Footing?, Footing?] {
  const pairs = holes.flatMap((one, i) => holes.slice(i + 1).map((other) => [one, other] as const))
  return pairs.reduce<readonly [Footing?, Footing?]>((best, pair) => {
    const [one, other] = best
    return one === undefined || other === undefined || distance(...pair) > distance(one, other) ? pair : best
  }, [])
}

/** Centre to centre, nearest 1/16 in. */
function distance(one: Footing, other: Footing): Ticks {
  return diagonal(other.x - one.x, other.y - one.y)
}
