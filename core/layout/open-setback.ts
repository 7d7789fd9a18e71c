import { edgeAt, heightAt, type Polygon } from '../geometry/index.ts'
import { greatestSetback, type Job } from '../job/index.ts'
import { type Ticks, ticks } from '../units/index.ts'

/** From an end of an edge to the centre of the joist beside it: half of its thickness. */
const TO_JOIST = ticks(24)

/** What joists start at short of the edge behind: the header at a hole, a middle beam. */
export interface Stop {
  readonly x0: number
  readonly x1: number
  readonly y: number
}

/**
 * The setback behind an edge where the job states none: the job's own, or less where the joists that end there are too
 * short to reach so far past their beam. Joists run along y and end at the edge's far side.
 * @param takenBehind what lies between the start of the joists at another edge and the face where their clear span
 * begins, for a setback
 */
export function openSetback(
  job: Job,
  {
    polygon,
    edge,
    stops,
  }: { readonly polygon: Polygon; readonly edge: number; readonly stops: readonly Stop[] },
  most: Ticks,
  half: number,
  takenBehind: (edge: number, setback: Ticks) => number,
): Ticks {
  const joists = joistsAt(polygon, edge, stops)
  return greatestSetback(
    (setback) =>
      Math.min(
        ...joists.map(
          ({ length, behind }) =>
            length - setback - half - (behind === null ? 0 : takenBehind(behind, setback)),
        ),
      ),
    { size: job.frame.joists.size, species: job.frame.species },
    most,
    isLevel(polygon, edge) ? 0 : ROUNDED_UP,
  )
}

/** Joists that end at a slant are cut to the next tick. */
const ROUNDED_UP = 1

function isLevel(polygon: Polygon, edge: number): boolean {
  const { from, to } = edgeAt(polygon, edge)
  return from.y === to.y
}

interface EndingJoist {
  readonly length: number
  /** edge at which it starts; null at a stop */
  readonly behind: number | null
}

/** Joists that end at an edge, where their length may be the least. */
function joistsAt(polygon: Polygon, edge: number, stops: readonly Stop[]): readonly EndingJoist[] {
  const { from: right, to: left } = edgeAt(polygon, edge)
  const inner = polygon.flatMap(({ x }) => [x - TO_JOIST, x + TO_JOIST])
  const beyond = stops.flatMap(({ x0, x1 }) => [
    Math.max(x0, left.x + TO_JOIST),
    Math.min(x1, right.x - TO_JOIST),
  ])
  const places = [left.x + TO_JOIST, right.x - TO_JOIST, ...inner, ...beyond].filter(
    (x) => x >= left.x + TO_JOIST && x <= right.x - TO_JOIST,
  )
  return [...new Set(places)].flatMap((x) => {
    const far = heightAt({ from: right, to: left }, x)
    const starts = [
      ...polygon.flatMap((_, i) => {
        const line = edgeAt(polygon, i)
        const spans = Math.min(line.from.x, line.to.x) < x && Math.max(line.from.x, line.to.x) > x
        return i !== edge && spans ? [{ y: heightAt(line, x), behind: i }] : []
      }),
      ...stops.flatMap(({ x0, x1, y }) => (x0 <= x && x <= x1 ? [{ y, behind: null }] : [])),
    ].filter(({ y }) => y < far)
    const nearest = starts.reduce<(typeof starts)[number] | null>(
      (a, b) => (a === null || b.y > a.y ? b : a),
      null,
    )
    return nearest === null ? [] : [{ length: far - nearest.y, behind: nearest.behind }]
  })
}
