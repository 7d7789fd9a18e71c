import { fromAbove, type Member } from '../frame/index.ts'
import type { PlacedFlight, StairPlan } from '../stairs/index.ts'

/** What a foot meets on a flight, measured from its boards as they lie; ticks. */
export interface StepPlaces {
  /** from each nosing to the next, the uppermost first, that of the boards above at its head */
  readonly goings: readonly number[]
  /** each nosing past the face of the riser under it, the uppermost first */
  readonly nosings: readonly number[]
}

/** The steps of every flight, that from the boards above and the lowest too. IRC 2021 R311.7.5.2 and R311.7.5.3. */
export function stepPlaces(stairs: StairPlan): readonly StepPlaces[] {
  return stairs.flights.map((flight, i) => {
    const treads = reaches(stairs, flight, `tread-${flight.number}-`)
    const boards = reaches(stairs, flight, `riser-${flight.number}-`)
    const run = stairs.patterns[i]?.run ?? 0
    // where risers are open the nosing is past the rise cut
    const faces = treads.map((_, k) => boards[k] ?? flight.run - (treads.length - 1 - k) * run)
    const above = i === 0 ? flight.over : Math.max(...reaches(stairs, flight, '', 'landing decking'))
    const edges = [above, ...treads]
    return {
      goings: treads.map((one, k) => one - (edges[k] ?? 0)),
      nosings: [above, ...treads.map((one, k) => one - (faces[k] ?? 0))],
    }
  })
}

/** How far down the flight boards reach, one figure for all that lie on one level, the highest first. */
function reaches(
  { members }: StairPlan,
  flight: PlacedFlight,
  id: string,
  role?: Member['role'],
): readonly number[] {
  const own = members.filter((one) => one.id.startsWith(id) && (role === undefined || one.role === role))
  const levels = Map.groupBy(own, ({ box }) => Math.round(box.z1))
  return [...levels]
    .toSorted(([a], [b]) => b - a)
    .map(([, boards]) =>
      Math.max(
        ...boards.flatMap((board) =>
          fromAbove(board).map(
            ({ x, y }) => (x - flight.head.x) * flight.down.x + (y - flight.head.y) * flight.down.y,
          ),
        ),
      ),
    )
}
