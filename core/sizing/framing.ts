import {
  type Check,
  checkFrame,
  checkSpansOfBeams,
  checksWith,
  checkWood,
  type WoodChecks,
} from '../checks/index.ts'
import { sectionOf } from '../data/index.ts'
import { type FramedJob, frameJob } from '../design.ts'
import type { Design } from '../estimate-types.ts'
import { footingUnder } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import { type Laid, layAdditions } from '../lay-additions.ts'
import { takeOff } from '../takeoff/index.ts'
import { coveredInNoSize, heldByCalculation } from './by-calculation.ts'
import { beamKey, setbacksKey } from './catalogue.ts'
import { withChoice } from './choice.ts'
import { EFFORT, type Effort } from './effort.ts'
import { type KnownFailures, type PlacedChoice, standsInTheWay } from './known-failures.ts'
import type { PartsOnce } from './parts-once.ts'
import type { Places } from './places.ts'
import { farthestReach, strongestLike } from './strongest-like.ts'
import type { Catalogue, Choice, SizingBasis } from './types.ts'

/** A way framed, with the checks of its wood. */
interface Framed extends FramedJob {
  readonly wood: WoodChecks
  /** laid where the wood passes or it is asked for; what stands on it loads none of it */
  readonly laid: Laid | null
}

interface FramingInput {
  readonly job: Job
  readonly catalogue: Catalogue
  readonly places: Places
  readonly effort: Effort
  readonly basis: SizingBasis
}

/** Frames ways and checks them, and asks of a failure which others fail with it. */
export class Framing {
  readonly #job: Job
  readonly #catalogue: Catalogue
  readonly #parts: PartsOnce
  readonly #failures: KnownFailures
  readonly #effort: Effort
  readonly #basis: SizingBasis
  /** decks framed so far, on some footings each */
  readonly #framed = new Map<string, Framed>()
  readonly #probed = new Set<string>()
  /** places of beams of which it was asked whether joists can reach so far at all */
  readonly #reaches = new Set<string>()
  #nearest: { readonly choice: Choice; readonly checks: readonly Check[] } | null = null
  #checks = 0

  /** @param failures what is seen to fail is put there */
  constructor({ job, catalogue, places, effort, basis }: FramingInput, failures: KnownFailures) {
    this.#job = job
    this.#catalogue = catalogue
    this.#parts = places.parts
    this.#failures = failures
    this.#effort = effort
    this.#basis = basis
  }

  /** Ways framed and checked so far. */
  get checks(): number {
    return this.#checks
  }

  /** The way that failed on the fewest checks so far. */
  get nearest(): { readonly choice: Choice; readonly checks: readonly Check[] } | null {
    return this.#nearest
  }

  /** The design where every check that sizes can mend passes; else what fails is remembered. */
  check(placed: PlacedChoice): Design | null {
    this.#checks += 1
    this.#effort.add(EFFORT.check)
    const { choice } = placed
    const made = this.#frame(placed)
    if (made === null) return null
    const checks = made.wood.checks.flat()
    const held = heldByCalculation(this.#basis, { ...made, checks })
    const failing = checks.filter((one) => standsInTheWay(one, held))
    if (failing.length === 0) return this.#checkWhole(placed, made)
    this.#framed.set(frameKey(placed), made)
    this.#remember(placed, failing)
    this.#askTables(placed, failing, made)
    this.#askCantilevers(placed, failing)
    this.#askDeeperBeams(placed, made, failing, held)
    if (placed.skeleton === null) this.#probe(choice, failing)
    return null
  }

  /** A way whose wood passes, with what stands on it. */
  #checkWhole(placed: PlacedChoice, made: Framed): Design | null {
    const laid = this.#lay(made)
    if (laid === null) return null
    this.#framed.set(frameKey(placed), { ...made, laid })
    const { job, layout } = made
    const { frame, ...additions } = laid
    const checks =
      frame === made.frame ? checksWith(made.wood, additions) : checkFrame(job, layout, frame, additions)
    const held = heldByCalculation(this.#basis, { job, layout, frame, checks })
    const failing = checks.filter((one) => standsInTheWay(one, held))
    if (failing.length === 0)
      return { job, given: [], layout, frame, ...additions, checks, takeoff: takeOff(job, frame, additions) }
    this.#remember(placed, failing)
    return null
  }

  #remember(placed: PlacedChoice, failing: readonly Check[]): void {
    for (const check of failing) this.#failures.addCheck(check, placed)
    if (this.#nearest === null || failing.length < this.#nearest.checks.length)
      this.#nearest = { choice: placed.choice, checks: failing }
  }

  /** What stands on a frame; null where it cannot be built. */
  #lay({ job, layout, frame }: FramedJob): Laid | null {
    const laid = layAdditions(job, layout, frame)
    if (!laid.ok) return null
    this.#effort.add(additionsIn(laid.value) * EFFORT.addition)
    return laid.value
  }

  /** A way framed, with the checks of its wood; null where it cannot be, which is remembered. */
  #frame(placed: PlacedChoice): Framed | null {
    const framed = frameJob(withChoice(this.#job, placed.choice), this.#parts.of)
    if (!framed.ok) {
      for (const fault of framed.error) this.#failures.addFault(fault, placed)
      return null
    }
    const { job, layout, frame } = framed.value
    this.#effort.add(frame.members.length * EFFORT.member)
    return { ...framed.value, wood: checkWood(job, layout, frame), laid: null }
  }

  /**
   * Where joists reach too far beyond a beam that lies so, the deepest ones too, between the thinnest beams and between the
   * thickest, no size passes there: how far they may reach hangs on nothing else.
   */
  #askCantilevers({ choice }: PlacedChoice, failing: readonly Check[]): void {
    const { setbacks } = choice
    // where no row covers a reach, one may cover that of other joists
    const fails = ({ id, status }: Check) => status === 'fails' && id.startsWith('joist-cantilever-')
    const tooFar = failing.filter(fails).map(({ id }) => id)
    if (tooFar.length === 0 || this.#failures.isHopeless(setbacks)) return
    const key = setbacksKey(setbacks)
    if (this.#reaches.has(key)) return
    this.#reaches.add(key)
    let always = tooFar
    for (const most of [false, true]) {
      this.#checks += 1
      this.#effort.add(EFFORT.check)
      const made = this.#frame({ choice: farthestReach(choice, this.#catalogue, most), skeleton: null })
      if (made === null) return
      const stillTooFar = new Set(
        made.wood.checks
          .flat()
          .filter(fails)
          .map(({ id }) => id),
      )
      always = always.filter((id) => stillTooFar.has(id))
    }
    if (always.length > 0) this.#failures.addHopeless(setbacks)
  }

  /** Where no table ever covers a member that lies so, no size passes there. */
  #askTables(
    { choice: { setbacks } }: PlacedChoice,
    failing: readonly Check[],
    { job, layout, frame }: Framed,
  ): void {
    const open = failing.filter(({ status }) => status === 'calculated only')
    if (open.length === 0 || this.#failures.isHopeless(setbacks)) return
    const never = coveredInNoSize({ job, layout, frame, checks: open })
    if (open.some(({ id }) => never.has(id))) this.#failures.addHopeless(setbacks)
  }

  /** The design of a frame that is known, on these footings, which nothing has checked; null where the frame is not known. */
  onOtherFootings(placed: PlacedChoice): Design | null {
    const known = this.#framed.get(frameKey(placed))
    if (known === undefined) return null
    this.#effort.add(EFFORT.otherFootings)
    const job = withChoice(this.#job, placed.choice)
    const footings = known.frame.posts.map((post) => footingUnder(job, post))
    const { layout } = known
    // a landing stands on such footings as well
    const asBefore = known.laid?.stairs.length === 0 ? known.laid : null
    const laid = asBefore ?? this.#lay({ job, layout, frame: { ...known.frame, footings } })
    if (laid === null) return null
    if (known.laid === null) this.#framed.set(frameKey(placed), { ...known, laid })
    const { frame: built, ...additions } = laid
    const frame = { ...built, footings }
    const takeoff = takeOff(job, frame, additions)
    return { job, given: [], layout, frame, ...additions, checks: NO_CHECKS, takeoff }
  }

  /** Where a beam is too weak, asks which deeper ones of as many plies are: in the same frame, for only its depth changes. */
  #askDeeperBeams(
    { choice, skeleton }: PlacedChoice,
    { frame: framed, wood: { context } }: Framed,
    failing: readonly Check[],
    held: ReadonlySet<string>,
  ): void {
    for (const side of ['front', 'rear'] as const) {
      const beam = choice[side]
      const tooWeak = failing.find(
        ({ id, status }) =>
          status === 'fails' &&
          framed.beams.some((one) => one.beam === side && id === `beam-span-${one.key}`),
      )
      if (beam === null || tooWeak === undefined) continue
      const deeper = [...new Set(this.#catalogue[side].flatMap((one) => one?.size ?? []))]
        .filter((size) => sectionOf(size).depth > sectionOf(beam.size).depth)
        .sort((a, b) => sectionOf(a).depth - sectionOf(b).depth)
      for (const size of deeper) {
        const other = { ...choice, [side]: { ...beam, size } }
        const frame = {
          ...framed,
          beams: framed.beams.map((one) => (one.beam === side ? { ...one, size } : one)),
        }
        this.#effort.add(EFFORT.otherDepth)
        const checks = checkSpansOfBeams(context, withChoice(this.#job, other), frame)
        const check = checks.find(({ id }) => id === tooWeak.id)
        if (check === undefined || !standsInTheWay(check, held)) break
        this.#failures.addCheck(check, { choice: other, skeleton })
      }
    }
  }

  /**
   * Where a beam or joists are too weak, asks of the strongest beams on as many posts under the joists as near together
   * as any: where those are too weak as well, none of their like need be framed.
   */
  #probe(choice: Choice, failing: readonly Check[]): void {
    if (!failing.some(({ id, status }) => status === 'fails' && TOO_WEAK.test(id))) return
    const placed: PlacedChoice = { choice: strongestLike(choice, this.#catalogue), skeleton: null }
    const key = frameKey(placed)
    if (this.#probed.has(key) || this.#framed.has(key)) return
    this.#probed.add(key)
    this.check(placed)
  }
}

/** A way that is told from another is not checked. */
const NO_CHECKS: readonly Check[] = []

/** Checks that say that a beam or joists carry too little. */
const TOO_WEAK = /^(joist-span|beam-span-(front|rear))$/

function frameKey({ choice, skeleton }: PlacedChoice): string {
  const { setbacks, joist, front, rear, postSize } = choice
  return `${setbacksKey(setbacks)} ${joist.size} ${joist.spacing} ${beamKey(front)} ${beamKey(rear)} ${postSize} ${skeleton}`
}

/** Posts of guards and members of stairs. */
function additionsIn({ stairs, guard }: Laid): number {
  return stairs.reduce((sum, { members }) => sum + members.length, guard?.deckPosts ?? 0)
}
