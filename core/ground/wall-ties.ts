import type { Design } from '../estimate-types.ts'
import { diagonal } from '../frame/index.ts'
import type { Ticks } from '../units/index.ts'
import { allHoles } from './holes.ts'
import { type Sight, sightOf, type WallCorner } from './sight.ts'

/** A distance by tape from a corner of the outline that stands at the house. */
export interface Tie {
  readonly corner: WallCorner
  /** level, nearest 1/16 in */
  readonly measures: Ticks
}

/** Two ties that meet at less than this are too near one line to fix a place: sine of their angle. */
const OPEN_ENOUGH = 0.5

/**
 * Whether the deck's left and right corners, on one line along the wall, are in sight of every hole and every corner of
 * the frame: then the two diagonals from them prove a place. Beside a house that the deck goes around they are not.
 */
export function isBeforeOneWall(design: Pick<Design, 'layout' | 'frame' | 'stairs' | 'job'>): boolean {
  const { layout, job } = design
  if (job.site.attachment !== 'ledger') return true
  const { corners, isClear } = sightOf(layout)
  const ends = [0, job.size.width].map((x) => ({ x, y: 0 }))
  return ends.every(
    (end) =>
      corners.some(({ x, y }) => x === end.x && y === end.y) &&
      [...layout.levels.flatMap(({ outline }) => outline), ...allHoles(design)].every((place) =>
        isClear(end, place),
      ),
  )
}

/** The shortest two ties that fix a place, from corners of the house that are in sight of it; fewer where there are none. */
export function tiesTo(
  place: { readonly x: number; readonly y: number },
  { corners, isClear }: Sight,
): readonly Tie[] {
  const seen = corners
    .filter((corner) => isClear(corner, place) && (corner.x !== place.x || corner.y !== place.y))
    .map((corner): Tie => ({ corner, measures: diagonal(place.x - corner.x, place.y - corner.y) }))
    .sort((a, b) => a.measures - b.measures)
  const pairs = seen.flatMap((one, i) => seen.slice(i + 1).map((other) => [one, other] as const))
  const open = pairs
    .filter((pair) => angleAt(place, pair) >= OPEN_ENOUGH)
    .sort(([a, b], [c, d]) => a.measures + b.measures - c.measures - d.measures)
  const widest = [...pairs].sort((a, b) => angleAt(place, b) - angleAt(place, a))
  return open[0] ?? widest[0] ?? seen
}

/** Sine of the angle at which two ties meet. */
function angleAt(
  { x, y }: { readonly x: number; readonly y: number },
  [one, other]: readonly [Tie, Tie],
): number {
  const [ax, ay] = [one.corner.x - x, one.corner.y - y]
  const [bx, by] = [other.corner.x - x, other.corner.y - y]
  return Math.abs(ax * by - ay * bx) / (Math.hypot(ax, ay) * Math.hypot(bx, by))
}
