import type { Job } from '../job/index.ts'
import type { Framing } from './framing.ts'
import type { KnownFailures, PlacedChoice } from './known-failures.ts'
import { leastOfChoice } from './least-of-choice.ts'
import type { Places } from './places.ts'
import { strongestLike, widestOf } from './strongest-like.ts'
import type { Catalogue, Choice } from './types.ts'
import type { CountedWay } from './way-costs.ts'

interface Descent {
  readonly job: Job
  readonly catalogue: Catalogue
  readonly places: Places
  readonly framing: Framing
  readonly failures: KnownFailures
}

/** Frames checked on the way down, and before it until one passes. */
const MOST_CHECKS = 60
const MOST_STARTS = 60

/**
 * From sizes that pass, part by part to the cheapest that still pass with the others as they are. Null where the strongest
 * sizes do not pass either. No proof: a way beside it may cost less.
 */
export function descend(descent: Descent, from: CountedWay | null): PlacedChoice | null {
  const { framing, places } = descent
  let now = from?.placed ?? firstPassing(descent)
  if (now === null) return null
  const most = framing.checks + MOST_CHECKS
  for (const part of [footings, fronts, rears, joists, postSizes, footings]) {
    const least = leastOfChoice(places, now.choice) ?? Number.POSITIVE_INFINITY
    const { catalogue } = descent
    const options = part(now.choice, catalogue, places)
      .map((choice) => ({ choice, cost: leastOfChoice(places, choice) ?? Number.POSITIVE_INFINITY }))
      .filter(({ cost }) => cost < least)
      .sort((a, b) => a.cost - b.cost)
    for (const { choice } of options) {
      if (framing.checks >= most) return now
      const placed = passing(descent, choice)
      if (placed === null) continue
      now = placed
      break
    }
  }
  return now
}

/** Null where it fails, or is known to. */
function passing({ places, framing, failures }: Descent, choice: Choice): PlacedChoice | null {
  const placed = places.placed(choice)
  if (placed === null || failures.hasFrame(placed) || failures.hasFooting(placed)) return null
  return framing.check(placed) === null ? null : placed
}

/** The strongest sizes on few posts, then on more. */
function firstPassing(descent: Descent): PlacedChoice | null {
  const { catalogue, framing, places } = descent
  const most = framing.checks + MOST_STARTS
  for (const choice of starts(catalogue, places)) {
    if (framing.checks >= most) return null
    const placed = passing(descent, choice)
    if (placed !== null) return placed
  }
  return null
}

function* starts(catalogue: Catalogue, places: Places): Iterable<Choice> {
  const { front, rear, joists, setbacks, postSizes } = catalogue
  const postSize = widestOf(postSizes)
  const footings = places.footingsUnder(postSize)
  const counts = [...new Set(front.map(({ posts }) => posts))].sort((a, b) => a - b)
  const deepFirst = [...new Map(joists.map((joist) => [joist.size, joist])).values()].reverse()
  for (const joist of deepFirst) {
    // the widest run into each other where beams meet
    for (const share of [0.5, 0.25, 1]) {
      const footing = footings[Math.max(0, Math.ceil(footings.length * share) - 1)]
      if (footing === undefined) return
      for (const posts of counts)
        for (const at of setbacks) {
          const frontLike = front.find((one) => one.posts === posts)
          const rearLike = rear.find((one) => one === null || one.posts === posts) ?? rear[0]
          if (frontLike === undefined || rearLike === undefined) continue
          const like = { setbacks: at, joist, front: frontLike, rear: rearLike, postSize, footing }
          yield { ...strongestLike(like, catalogue), footing }
        }
    }
  }
}

type Part = (choice: Choice, catalogue: Catalogue, places: Places) => readonly Choice[]

const footings: Part = (choice, _, places) =>
  places.footingsUnder(choice.postSize).map((footing) => ({ ...choice, footing }))
const fronts: Part = (choice, catalogue) => catalogue.front.map((front) => ({ ...choice, front }))
const rears: Part = (choice, catalogue) => catalogue.rear.map((rear) => ({ ...choice, rear }))
const joists: Part = (choice, catalogue) => catalogue.joists.map((joist) => ({ ...choice, joist }))
/** each on the nearest of its footings that is no cheaper than the one chosen */
const postSizes: Part = (choice, catalogue, places) =>
  catalogue.postSizes.flatMap((postSize) =>
    places.footingsUnder(postSize).includes(choice.footing) ? [{ ...choice, postSize }] : [],
  )
