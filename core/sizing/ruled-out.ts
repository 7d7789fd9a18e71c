import type { KnownFailures, PlacedChoice } from './known-failures.ts'
import type { Series } from './series.ts'
import type { BeamChoice, FootingChoice } from './types.ts'

/**
 * Which pairs of beams of a series are known to fail. It is asked of joists and of each beam apart, for they fail with
 * whatever lies on the other side in as many plies; what is known to fail stays so, the rest is asked again once more is known.
 */
export class RuledOut {
  readonly #series: Series
  readonly #footing: FootingChoice | undefined
  readonly #failures: KnownFailures
  readonly #plain: boolean
  readonly #joists = new Verdicts()
  readonly #fronts = new Verdicts()
  readonly #rears = new Verdicts()

  /**
   * @param footing any that the posts stand on
   * @param plain posts stand by their number alone, so that what beams do is known before they are placed
   */
  constructor(series: Series, footing: FootingChoice | undefined, failures: KnownFailures, plain: boolean) {
    this.#series = series
    this.#footing = footing
    this.#failures = failures
    this.#plain = plain
  }

  has(i: number, j: number): boolean {
    const front = this.#series.front[i]?.beam ?? null
    const rear = this.#series.rear[j]?.beam ?? null
    if (front === null || this.#footing === undefined) return true
    const failures = this.#failures
    const { version } = failures
    const [own, others] = [front.plies, rear?.plies ?? 0]
    const placed = () => this.#placed(front, rear)
    if (this.#joists.has(own * PLIES + others, version, () => failures.hasJoists(placed()))) return true
    if (!this.#plain) return false
    return (
      this.#fronts.has(i * PLIES + others, version, () => failures.hasBeam('front', placed())) ||
      this.#rears.has(j * PLIES + own, version, () => failures.hasBeam('rear', placed())) ||
      failures.hasPair(placed)
    )
  }

  #placed(front: BeamChoice, rear: BeamChoice | null): PlacedChoice {
    const { setbacks, joist, postSize } = this.#series
    if (this.#footing === undefined) throw new Error('posts that stand on no footing')
    return { choice: { setbacks, joist, front, rear, postSize, footing: this.#footing }, skeleton: null }
  }
}

/** More than any beam has. */
const PLIES = 8

/** What is known to fail, by a number of it, and when it was last not known to. */
class Verdicts {
  readonly #known = new Map<number, number>()

  has(key: number, version: number, asked: () => boolean): boolean {
    const known = this.#known.get(key)
    if (known === FAILS) return true
    if (known === version) return false
    const fails = asked()
    this.#known.set(key, fails ? FAILS : version)
    return fails
  }
}

const FAILS = -1
