import { type Check, checkFrame, checkSpansOfBeams, checksBesideTables } from '../checks/index.ts'
import { sectionOf } from '../data/index.ts'
import type { Design } from '../estimate-types.ts'
import { footingUnder, frameDeck } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import { layAdditions } from '../lay-additions.ts'
import { layOut } from '../layout/index.ts'
import { type Additions, takeOff } from '../takeoff/index.ts'
import { heldByCalculation } from './by-calculation.ts'
import { beamKey, setbacksKey } from './catalogue.ts'
import { withChoice } from './choice.ts'
import { EFFORT, type Effort } from './effort.ts'
import { type KnownFailures, type PlacedChoice, standsInTheWay } from './known-failures.ts'
import { farthestReach, strongestLike } from './strongest-like.ts'
import type { Catalogue, Choice, SizingBasis } from './types.ts'

type FramedDesign = Omit<Design, 'takeoff'>

/** Frames ways and checks them, and asks of a failure which others fail with it. */
export class Framing {
  readonly #job: Job
  readonly #catalogue: Catalogue
  readonly #failures: KnownFailures
  readonly #effort: Effort
  readonly #basis: SizingBasis
  /** decks framed so far, on some footings each */
  readonly #framed = new Map<string, FramedDesign>()
  readonly #probed = new Set<string>()
  /** places of beams of which it was asked whether joists can reach so far at all */
  readonly #reaches = new Set<string>()
  #nearest: { readonly choice: Choice; readonly checks: readonly Check[] } | null = null
  #checks = 0

  /** @param failures what is seen to fail is put there */
  constructor(job: Job, catalogue: Catalogue, failures: KnownFailures, effort: Effort, basis: SizingBasis) {
    this.#job = job
    this.#catalogue = catalogue
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
    const { design, additions } = made
    const { job, frame } = design
    const held = heldByCalculation(this.#basis, design)
    const failing = design.checks.filter((one) => standsInTheWay(one, held))
    this.#askTables(placed, failing, design)
    for (const check of failing) this.#failures.addCheck(check, placed)
    this.#framed.set(frameKey(placed), design)
    if (failing.length > 0) {
      this.#askCantilevers(placed, failing)
      this.#askDeeperBeams(placed, design, failing, held)
      if (placed.skeleton === null) this.#probe(choice, failing)
      if (this.#nearest === null || failing.length < this.#nearest.checks.length)
        this.#nearest = { choice, checks: failing }
      return null
    }
    return { ...design, takeoff: takeOff(job, frame, additions) }
  }

  /** A way framed, with its checks; null where it cannot be, which is remembered. */
  #frame(placed: PlacedChoice): { readonly design: FramedDesign; readonly additions: Additions } | null {
    const job = withChoice(this.#job, placed.choice)
    const layout = layOut(job)
    const frame = layout.ok ? frameDeck(job, layout.value) : layout
    if (!layout.ok || !frame.ok) {
      const faults = layout.ok ? (frame.ok ? [] : frame.error) : layout.error
      for (const fault of faults) this.#failures.addFault(fault, placed)
      return null
    }
    this.#effort.add(frame.value.members.length * EFFORT.member)
    const laid = layAdditions(job, layout.value, frame.value)
    if (!laid.ok) return null
    const additions = laid.value
    this.#effort.add(additionsIn(additions) * EFFORT.addition)
    const checks = checkFrame(job, layout.value, frame.value, additions)
    const design = { job, given: [], layout: layout.value, frame: frame.value, ...additions, checks }
    return { design, additions }
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
      const stillTooFar = new Set(made.design.checks.filter(fails).map(({ id }) => id))
      always = always.filter((id) => stillTooFar.has(id))
    }
    if (always.length > 0) this.#failures.addHopeless(setbacks)
  }

  /** Where no table ever covers a member that lies so, no size passes there. */
  #askTables(
    { choice: { setbacks } }: PlacedChoice,
    failing: readonly Check[],
    { job, layout, frame }: Pick<FramedDesign, 'job' | 'layout' | 'frame'>,
  ): void {
    const open = failing.filter(({ status }) => status === 'calculated only')
    if (open.length === 0 || this.#failures.isHopeless(setbacks)) return
    const never = checksBesideTables(job, layout, frame)
    if (open.some(({ id }) => never.has(id))) this.#failures.addHopeless(setbacks)
  }

  /** The design of a frame that is known, on these footings, which nothing has checked; null where the frame is not known. */
  onOtherFootings(placed: PlacedChoice): Design | null {
    const known = this.#framed.get(frameKey(placed))
    if (known === undefined) return null
    this.#effort.add(EFFORT.otherFootings)
    const job = withChoice(this.#job, placed.choice)
    const footings = known.frame.posts.map((post) => footingUnder(job, post))
    const frame = { ...known.frame, footings }
    // a landing stands on such footings as well
    const laid = known.stairs.length === 0 ? null : layAdditions(job, known.layout, frame)
    const additions = laid?.ok ? laid.value : known
    return { ...known, ...additions, job, frame, takeoff: takeOff(job, frame, additions) }
  }

  /** Where a beam is too weak, asks which deeper ones of as many plies are: in the same frame, for only its depth changes. */
  #askDeeperBeams(
    { choice, skeleton }: PlacedChoice,
    design: FramedDesign,
    failing: readonly Check[],
    held: ReadonlySet<string>,
  ): void {
    for (const side of ['front', 'rear'] as const) {
      const beam = choice[side]
      const tooWeak = failing.find(
        ({ id, status }) =>
          status === 'fails' &&
          design.frame.beams.some((one) => one.beam === side && id === `beam-span-${one.key}`),
      )
      if (beam === null || tooWeak === undefined) continue
      const deeper = [...new Set(this.#catalogue[side].flatMap((one) => one?.size ?? []))]
        .filter((size) => sectionOf(size).depth > sectionOf(beam.size).depth)
        .sort((a, b) => sectionOf(a).depth - sectionOf(b).depth)
      for (const size of deeper) {
        const other = { ...choice, [side]: { ...beam, size } }
        const frame = {
          ...design.frame,
          beams: design.frame.beams.map((one) => (one.beam === side ? { ...one, size } : one)),
        }
        this.#effort.add(EFFORT.otherDepth)
        const checks = checkSpansOfBeams(withChoice(this.#job, other), design.layout, frame)
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

/** Checks that say that a beam or joists carry too little. */
const TOO_WEAK = /^(joist-span|beam-span-(front|rear))$/

function frameKey({ choice, skeleton }: PlacedChoice): string {
  const { setbacks, joist, front, rear, postSize } = choice
  return `${setbacksKey(setbacks)} ${joist.size} ${joist.spacing} ${beamKey(front)} ${beamKey(rear)} ${postSize} ${skeleton}`
}

/** Posts of guards and members of stairs. */
function additionsIn({ stairs, guard }: Additions): number {
  return stairs.reduce((sum, { members }) => sum + members.length, guard?.deckPosts ?? 0)
}
