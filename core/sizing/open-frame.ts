import type { CostModel } from './cost-model.ts'
import type { LeastCents } from './least-cost.ts'
import type { Series } from './series.ts'
import type { Choice } from './types.ts'

/** A frame on any footing. */
export interface OpenFrame {
  readonly model: CostModel
  readonly choice: Omit<Choice, 'footing'>
  /** of all but posts and footings */
  readonly bare: LeastCents
  /** of all but footings, at least */
  readonly least: LeastCents
  /** footings, at least */
  readonly fewest: number
}

/** The frame of the i-th and j-th cheapest beams of a series; null where there is no such pair. */
export function openFrame(
  { model, setbacks, joist, postSize, cost, front: fronts, rear: rears }: Series,
  i: number,
  j: number,
  cheapest: Choice['footing'],
): OpenFrame | null {
  const [front, rear] = [fronts[i], rears[j]]
  if (front === undefined || front.beam === null || rear === undefined) return null
  const fewest = front.fewest + rear.fewest
  return {
    model,
    choice: { setbacks, joist, front: front.beam, rear: rear.beam, postSize },
    bare: cost + front.plies + rear.plies,
    least: cost + front.cost + rear.cost - fewest * model.footing(cheapest),
    fewest,
  }
}

/** What one way of a frame costs at least, with its posts where they stand; infinite where they cannot. */
export function leastOfWay({ model, bare }: OpenFrame, choice: Choice): LeastCents {
  const { front, rear, joist, postSize, footing } = choice
  const posts = model.skeletons.of(choice)
  if (posts === null) return Number.POSITIVE_INFINITY
  const ofFront = model.posts(posts.front, front, joist.size, postSize)
  const ofRear = rear === null ? 0 : model.posts(posts.rear, rear, joist.size, postSize)
  if (ofFront === null || ofRear === null) return Number.POSITIVE_INFINITY
  const footings = posts.front.count + (rear === null ? 0 : posts.rear.count)
  return bare + ofFront + ofRear + footings * model.footing(footing)
}
