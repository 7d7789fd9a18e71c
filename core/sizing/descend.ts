import type { Job } from '../job/index.ts'
import type { Effort } from './effort.ts'
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
  readonly effort: Effort
}

/** Frames checked on the way down, and before it until one passes. */
const MOST_CHECKS = 60
const MOST_STARTS = 60
/** Options of one part that are tried in a way that fails. */
const MOST_OF_A_PART = 24

/**
 * From sizes that pass, part by part to the cheapest that still pass with the others as they are. Null where the strongest
 * sizes do not pass either. No proof: a way beside it may cost less.
 */
export function descend(descent: Descent, from: CountedWay | null): PlacedChoice | null {
  const { framing, places, effort } = descent
  let now = from?.placed ?? mended(descent) ?? firstPassing(descent)
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
      if (framing.checks >= most || effort.left === 0) return now
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

/**
 * The way that failed on the fewest checks, one part after another changed to those that cost most nearly the same until it passes or fails on
 * fewer: what is stated often lacks little.
 */
function mended(descent: Descent): PlacedChoice | null {
  const { catalogue, framing, places, effort } = descent
  const most = framing.checks + MOST_STARTS
  for (let from = framing.nearest, before = null; from !== null && from !== before; ) {
    before = from
    const { choice: now } = from
    const least = leastOfChoice(places, now) ?? 0
    const options = [fronts, rears, joists, postSizes, footings].flatMap((part) =>
      part(now, catalogue, places)
        .map((choice) => ({ choice, beyond: Math.abs((leastOfChoice(places, choice) ?? 0) - least) }))
        .sort((a, b) => a.beyond - b.beyond)
        .slice(0, MOST_OF_A_PART),
    )
    for (const { choice } of options) {
      if (framing.checks >= most || effort.left === 0) return null
      const placed = passing(descent, choice)
      if (placed !== null) return placed
      if (framing.nearest !== from) break
    }
    from = framing.nearest
  }
  return null
}

/** Strong sizes, each start far from the last. */
function firstPassing(descent: Descent): PlacedChoice | null {
  const { catalogue, framing, places, effort } = descent
  const all = starts(catalogue, places)
  const step = strideOf(all.length)
  const most = framing.checks + MOST_STARTS
  for (let k = 0; k < all.length && framing.checks < most && effort.left > 0; k += 1) {
    const choice = all[(k * step) % all.length]
    const placed = choice === undefined ? null : passing(descent, choice)
    if (placed !== null) return placed
  }
  return null
}

/** By so many a walk comes to each of them once, and soon has been everywhere: nearly the golden section of them. */
function strideOf(count: number): number {
  let step = Math.max(1, Math.round(count * 0.618))
  while (greatestCommonDivisor(step, count) > 1) step += 1
  return step
}

function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b)
}

/** Shares of the list of footings: the widest run into each other where beams meet. */
const FOOTINGS = [0.5, 0.25, 1]

/** The strongest beams of each number of plies and posts under joists of each depth, on the widest posts and the last listed. */
function starts(catalogue: Catalogue, places: Places): readonly Choice[] {
  const { joists, setbacks, postSizes } = catalogue
  const depths = [...new Map(joists.map((joist) => [joist.size, joist])).values()]
  const pairs = pairsOf(catalogue)
  return [...new Set([widestOf(postSizes), ...postSizes])].slice(0, 2).flatMap((postSize) =>
    footingsOf(postSize, places).flatMap((footing) =>
      depths.flatMap((joist) =>
        pairs.flatMap(({ front, rear, alike }) =>
          setbacks.map((at): Choice => {
            const choice = { setbacks: at, joist, front, rear, postSize, footing }
            return { ...strongestLike(choice, alike), postSize, footing }
          }),
        ),
      ),
    ),
  )
}

function footingsOf(postSize: Choice['postSize'], places: Places): readonly Choice['footing'][] {
  const all = places.footingsUnder(postSize)
  return FOOTINGS.flatMap((share) => all[Math.max(0, Math.ceil(all.length * share) - 1)] ?? [])
}

interface Pair extends Pick<Choice, 'front' | 'rear'> {
  /** beams of as many plies */
  readonly alike: Catalogue
}

/** Beams on as many posts on both sides, of any plies on either. */
function pairsOf(catalogue: Catalogue): readonly Pair[] {
  const fronts = [...new Map(catalogue.front.map((one) => [`${one.plies} ${one.posts}`, one])).values()]
  const rears = [...new Map(catalogue.rear.map((one) => [one?.plies, one])).values()]
  return fronts.flatMap((front) =>
    rears.map((one): Pair => {
      const alike = {
        ...catalogue,
        front: catalogue.front.filter(({ plies }) => plies === front.plies),
        rear: catalogue.rear.filter((other) => other?.plies === one?.plies),
      }
      const rear = alike.rear.find((other) => other?.posts === front.posts) ?? one
      return { front, rear, alike }
    }),
  )
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
