import type { Check } from '../checks/index.ts'
import type { Watch } from '../cutting/index.ts'
import type { Design } from '../estimate-types.ts'
import type { Job } from '../job/index.ts'
import { type Cents, type Ticks, ticks } from '../units/index.ts'
import { waysOf, widthOf } from './catalogue.ts'
import { choiceOf } from './choice.ts'
import { descend } from './descend.ts'
import { EFFORT, type Effort } from './effort.ts'
import { Framing } from './framing.ts'
import { Heap } from './heap.ts'
import { KnownFailures, type PlacedChoice } from './known-failures.ts'
import type { LeastCents } from './least-cost.ts'
import { leastOfWay, type OpenFrame, openFrame } from './open-frame.ts'
import type { Places } from './places.ts'
import { RuledOut } from './ruled-out.ts'
import { type Series, seriesOf } from './series.ts'
import type { Skeleton } from './skeleton.ts'
import type { Catalogue, Choice, SizingBasis, SizingWork } from './types.ts'
import type { CountedWay, WayCosts } from './way-costs.ts'

/** A way that passes, with its cost by the whole estimate. */
export interface Found {
  readonly way: CountedWay
  readonly choice: Choice
  readonly design: Design
  readonly cost: Cents
  /** by plans whose search ended before their proof: at most so much */
  readonly atMost: boolean
}

export interface SearchResult {
  readonly best: Found | null
  /** the way that failed on the fewest checks, where none passes */
  readonly nearest: { readonly choice: Choice; readonly checks: readonly Check[] } | null
  readonly work: SizingWork
}

export interface SearchInput {
  readonly basis: SizingBasis
  readonly places: Places
  readonly job: Job
  readonly catalogue: Catalogue
  readonly costs: WayCosts
  readonly effort: Effort
  readonly watch: Watch
}

/** The best way so far, with the contents of its cutting jobs. */
interface Best extends Found {
  readonly contents: ReadonlySet<string>
}

/** Of a way whose posts stand as those of none in the catalogue. */
const UNKNOWN = -1

/** Work that the short way may take beyond what is allowed. */
const SETTLING = 36_000
/** The same where bounds alone were too much work. */
const MOST_SETTLING = 78_000
const SETTLING_A_PLAN = 8_000

const ANY_WIDTH = ticks(0)

/** No cutting jobs. */
const NOTHING: ReadonlySet<string> = new Set()

/** What waits in the heap, its bound growing with what is known of it. */
type Waiting =
  /** joists, posts and the i-th and j-th cheapest beams, with the cheapest footing there is */
  | { readonly kind: 'frames'; readonly series: Series; readonly i: number; readonly j: number }
  /** a frame with its g-th cheapest footing, and all dearer ones */
  | { readonly kind: 'footings'; readonly frame: OpenFrame; readonly g: number }
  /** one way, not framed yet */
  | { readonly kind: 'way'; readonly frame: OpenFrame; readonly choice: Choice }
  /** counted; it passes, or where it is not checked its frame is known from other footings alone */
  | { readonly kind: 'counted'; readonly way: CountedWay; readonly checked: boolean }

/**
 * Best first, ways of the catalogue by a bound below their cost. What is seen to fail rules out its like; of what passes
 * as much is planned as it takes to tell it from the others, until no way that is left can cost less. Where the work
 * allowed ends before that, sizes that pass are looked for on a short way, and nothing is proven.
 */
export function searchSizes(input: SearchInput): SearchResult {
  return new Search(input).run()
}

class Search {
  readonly #input: SearchInput
  readonly #places: Places
  readonly #heap = new Heap<Waiting>()
  readonly #failures = new KnownFailures()
  readonly #ruledOut = new Map<Series, RuledOut>()
  readonly #framing: Framing
  readonly #costs: WayCosts
  #best: Best | null = null
  /** plans that are not proven might have told two ways apart otherwise */
  #doubtful = false

  constructor(input: SearchInput) {
    this.#input = input
    this.#places = input.places
    this.#framing = new Framing(input, this.#failures)
    this.#costs = input.costs
  }

  run(): SearchResult {
    const { job, catalogue } = this.#input
    const stated = this.#checkStated()
    const hopeful = this.#hopeful()
    const { effort } = this.#input
    for (const series of seriesOf(job, hopeful, this.#places)) {
      // then nothing is proven, and the bounds of the others are not needed
      if (effort.boundsAreDone) break
      this.#pushFrames(series, 0, 0)
    }
    let proven = true
    if (effort.boundsAreDone && hopeful.setbacks.length > 0) {
      proven = false
      this.#settle(null, stated)
    }
    for (let next = proven ? this.#heap.pop() : null; next !== null; next = this.#heap.pop()) {
      if (this.#best !== null && next.bound >= this.#best.cost) break
      effort.add(EFFORT.look)
      if (this.#isSpent()) {
        proven = false
        this.#settle(next.entry, stated)
        break
      }
      this.#take(next.entry, next.bound)
      if (next.entry.kind === 'counted') this.#tell(next.bound)
    }
    const { checks, nearest } = this.#framing
    const work = {
      ways: waysOf(catalogue),
      checked: checks,
      priced: this.#costs.priced,
      proven: proven && !this.#doubtful,
      basis: this.#input.basis,
    }
    return { best: this.#best, nearest, work }
  }

  /** The catalogue without places of beams where a table covers none of their sizes. */
  #hopeful(): Catalogue {
    const { job, catalogue } = this.#input
    const stated = choiceOf(job)
    if (!this.#failures.isHopeless(stated.setbacks)) return catalogue
    for (const setbacks of catalogue.setbacks) {
      if (this.#failures.isHopeless(setbacks)) continue
      const placed = this.#places.placed({ ...stated, setbacks })
      if (placed !== null) this.#framing.check(placed)
    }
    return { ...catalogue, setbacks: catalogue.setbacks.filter((one) => !this.#failures.isHopeless(one)) }
  }

  #isSpent(): boolean {
    const { effort, watch } = this.#input
    return effort.left === 0 || watch.stop?.() === true
  }

  /** Where the work allowed is done: the cheapest way that is known to pass, and those that lie near it. */
  #settle(last: Waiting | null, stated: CountedWay | null): void {
    const { job, catalogue, effort, watch } = this.#input
    if (watch.stop?.() === true) return
    effort.grant(SETTLING, MOST_SETTLING, SETTLING_A_PLAN)
    let passing: CountedWay | null = null
    for (let entry: Waiting | null = last; entry !== null; entry = this.#heap.pop()?.entry ?? null) {
      if (entry.kind !== 'counted' || !entry.checked) continue
      passing = entry.way
      break
    }
    const from = passing ?? this.#best?.way ?? stated
    const found = descend(
      { job, catalogue, places: this.#places, framing: this.#framing, failures: this.#failures, effort },
      from,
    )
    for (const placed of [found, passing?.placed, stated?.placed]) if (placed) this.#tryWhole(placed)
  }

  /** Checks a way and takes it where it passes and costs less than the best. */
  #tryWhole(placed: PlacedChoice): void {
    const design = this.#framing.check(placed)
    const way = design && this.#costs.counted(placed, design)
    const below = this.#best?.cost ?? Number.POSITIVE_INFINITY
    const cost = way === null ? null : this.#costs.planned(way, below)
    if (way === null || cost === null || cost >= below) return
    this.#takeBest(way, way.design, cost)
  }

  #takeBest(way: CountedWay, design: Design, cost: Cents): Best {
    const contents = new Set(way.classes.map(({ content }) => content))
    const atMost = this.#costs.isOpen(way, NOTHING)
    this.#best = { choice: way.placed.choice, design, cost, atMost, way, contents }
    return this.#best
  }

  /** No way that is left can cost less than the bound of the one just taken. */
  #tell(bound: number): void {
    const { effort, watch } = this.#input
    watch.onProgress?.({
      subject: 'Sizes that pass, hundredths of the work',
      part: Math.ceil((100 * effort.spent) / effort.limit),
      parts: 100,
      bound: Math.floor(bound),
      best: this.#best?.cost ?? null,
      lengthUnit: null,
    })
  }

  /** The job as it stands waits among the others, where it passes. */
  #checkStated(): CountedWay | null {
    const choice = choiceOf(this.#input.job)
    // a narrowed catalogue may not know where its posts stand
    const placed = this.#places.placed(choice) ?? { choice, skeleton: UNKNOWN }
    const design = this.#framing.check(placed)
    const way = design && this.#costs.counted(placed, design)
    if (way !== null) this.#pushCounted(way, true, 0)
    return way
  }

  /** The next pair of beams that is not known to fail with these joists and posts. */
  #pushFrames(series: Series, i: number, from: number): void {
    if (this.#failures.isHopeless(series.setbacks)) return
    for (let j = from; ; j += 1) {
      const [front, rear] = [series.front[i], series.rear[j]]
      if (front === undefined || rear === undefined) return
      if (!this.#isRuledOut(series, i, j)) {
        this.#heap.push(series.cost + front.cost + rear.cost, { kind: 'frames', series, i, j })
        return
      }
      if (j === 0) this.#pushFrames(series, i + 1, 0)
    }
  }

  #isRuledOut(series: Series, i: number, j: number): boolean {
    const [footing] = this.#places.footingsUnder(series.postSize)
    const known =
      this.#ruledOut.get(series) ?? new RuledOut(series, footing, this.#failures, this.#places.plain)
    this.#ruledOut.set(series, known)
    return known.has(i, j)
  }

  #take(entry: Waiting, bound: number): void {
    switch (entry.kind) {
      case 'frames':
        this.#takeFrames(entry)
        break
      case 'footings':
        this.#takeFootings(entry, bound)
        break
      case 'way':
        this.#takeWay(entry.frame, entry.choice, bound)
        break
      case 'counted':
        this.#takeCounted(entry, bound)
    }
  }

  #takeFrames({ series, i, j }: Extract<Waiting, { kind: 'frames' }>): void {
    if (j === 0) this.#pushFrames(series, i + 1, 0)
    this.#pushFrames(series, i, j + 1)
    if (this.#isRuledOut(series, i, j)) return
    const [cheapest] = this.#places.footingsUnder(series.postSize)
    const frame = cheapest === undefined ? null : openFrame(series, i, j, cheapest)
    if (frame !== null) this.#pushFootings(frame, 0)
  }

  /** The next footing that is not known to fail under this frame, its bound below that of any dearer one. */
  #pushFootings(frame: OpenFrame, from: number): void {
    const footings = this.#places.footingsUnder(frame.choice.postSize)
    const { skeletons } = frame.model
    const all = skeletons.onAll(frame.choice)
    if (all === null) return
    /** null where the frame is known to fail on footings so wide */
    const standing = new Map<Ticks, Skeleton | null>()
    for (let g = from; g < footings.length; g += 1) {
      const footing = footings[g]
      if (footing === undefined) return
      const choice = { ...frame.choice, footing }
      // where footings move no post, one of them tells of all
      const width = all === 'by footing' ? widthOf(footing) : ANY_WIDTH
      let skeleton = standing.get(width)
      if (skeleton === undefined) {
        skeleton = all === 'by footing' ? skeletons.of(choice) : all
        if (skeleton !== null && this.#failures.hasFrame(this.#places.placedOn(choice, skeleton)))
          skeleton = null
        standing.set(width, skeleton)
      }
      if (skeleton === null) {
        if (all === 'by footing') continue
        return
      }
      if (this.#failures.hasFooting(this.#places.placedOn(choice, skeleton))) continue
      const bound = frame.least + frame.fewest * frame.model.footing(footing)
      this.#heap.push(bound, { kind: 'footings', frame, g })
      return
    }
  }

  #takeFootings({ frame, g }: Extract<Waiting, { kind: 'footings' }>, bound: number): void {
    this.#pushFootings(frame, g + 1)
    const footing = this.#places.footingsUnder(frame.choice.postSize)[g]
    if (footing !== undefined) this.#takeWay(frame, { ...frame.choice, footing }, bound)
  }

  #takeWay(frame: OpenFrame, choice: Choice, bound: number): void {
    const placed = this.#places.placed(choice)
    if (placed === null || this.#failures.hasFrame(placed) || this.#failures.hasFooting(placed)) return
    const now = leastOfWay(frame, choice) + this.#costs.beyondLeast(placed)
    if (!Number.isFinite(now)) return
    if (now > bound + 1e-6) {
      this.#heap.push(now, { kind: 'way', frame, choice })
      return
    }
    // what it costs on other footings is told before they are checked
    const known = this.#framing.onOtherFootings(placed)
    const design = known ?? this.#framing.check(placed)
    const way = design === null ? null : this.#costs.counted(placed, design)
    if (way !== null) this.#pushCounted(way, known === null, bound)
  }

  #pushCounted(way: CountedWay, checked: boolean, bound: LeastCents): void {
    const now = Math.max(bound, this.#costs.atLeast(way))
    if (Number.isFinite(now)) this.#heap.push(now, { kind: 'counted', way, checked })
  }

  /** Plans as much of a way as it takes for another to come before it; prices it where nothing is left to plan. */
  #takeCounted({ way, checked }: Extract<Waiting, { kind: 'counted' }>, bound: LeastCents): void {
    const { placed, design } = way
    if (!checked && this.#failures.hasFooting(placed)) return
    const best = this.#best
    const settled = best?.contents ?? NOTHING
    for (;;) {
      // boards that the best is cut from as well cost both the same
      const now = this.#costs.atLeast(way, settled)
      if (best !== null && now >= best.cost) return
      if (now > bound) {
        this.#pushCounted(way, checked, now)
        return
      }
      if (!this.#costs.learn(way)) break
    }
    const cost = this.#costs.whole(way)
    if (cost === null) return
    if (best !== null && cost >= best.cost) {
      if (this.#costs.isOpen(way, settled)) this.#doubtful = true
      return
    }
    // framed anew where it was told from another: what is proposed is what the job gives
    const whole = checked ? design : this.#framing.check(placed)
    if (whole === null) return
    const { contents: now } = this.#takeBest(way, whole, cost)
    if (best !== null && this.#costs.isOpen(best.way, now) && this.#costs.atLeast(best.way, now) < cost)
      this.#doubtful = true
  }
}
