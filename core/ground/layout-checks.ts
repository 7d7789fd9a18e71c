import type { Design } from '../estimate-types.ts'
import { diagonal, holeSetOut } from '../frame/index.ts'
import { inches, nearestSixteenth, printLength, type Ticks, ticks } from '../units/index.ts'
import { frameEdges } from './layout-strings.ts'

/** How near a hole's centre is set to its place with strings and a tape: common practice, no source. */
const LAYOUT_TOLERANCE = inches(1 / 4)

/** A measure that a person takes when all is marked, to find a mistake. */
export interface LayoutCheck {
  readonly what: string
  readonly measures: Ticks
  /** apart from this by more than the tolerance, something is wrong */
  readonly tolerance: Ticks
  /** what to look for where it does not come out */
  readonly otherwise: string
}

/**
 * The two checks of a layout. The first finds a corner that is not square, the second a hole that was measured from the
 * wrong end or left out: it uses neither the strings nor the offsets that the holes were marked by.
 */
export function layoutChecks({ job, frame, layout }: Design): readonly LayoutCheck[] {
  const holes = holeSetOut(frame, job)
  const rows = [...new Set(holes.map(({ fromWall }) => fromWall))].sort((a, b) => a - b)
  const row = holes.filter(({ fromWall }) => fromWall === rows.at(-1)).sort((a, b) => a.along - b.along)
  const [first, last] = [row[0], row.at(-1)]
  const square: LayoutCheck = {
    what: 'Both diagonals between the corners of the strings over the frame’s edges',
    measures: longDiagonal(layout),
    tolerance: LAYOUT_TOLERANCE,
    otherwise:
      'The longer one leads to the corners that must come in: shift the front string along, never the wall.',
  }
  if (first === undefined || last === undefined || first === last) return [square]
  const apart = ticks(last.along - first.along)
  const steps = row.slice(1).map((hole, i) => printLength(ticks(hole.along - (row[i]?.along ?? 0))))
  return [
    square,
    {
      what: `Hole ${first.number} to hole ${last.number}, centre to centre in one pull; between them ${steps.join(', ')}`,
      measures: nearestSixteenth(apart),
      tolerance: LAYOUT_TOLERANCE,
      otherwise:
        'Measure each hole anew from the left corner: one was taken from the other end, or its neighbour.',
    },
  ]
}

/** Of the smallest rectangle on the job's axes that holds the frame. */
function longDiagonal(layout: Design['layout']): Ticks {
  const { left, right, rear, front } = frameEdges(layout)
  return diagonal(right - left, front - rear)
}
