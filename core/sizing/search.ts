import { type Check, checkFrame } from '../checks/index.ts'
import type { CutPlan, Infeasible, LpEngine, Watch } from '../cutting/index.ts'
import { costDesign } from '../estimate.ts'
import type { Design } from '../estimate-types.ts'
import { frameDeck } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import { layAdditions } from '../lay-additions.ts'
import { layOut } from '../layout/index.ts'
import { cutJobs, type PriceBook, priceJob, productKey } from '../pricing/index.ts'
import { takeOff } from '../takeoff/index.ts'
import type { Cents, Result } from '../units/index.ts'
import { footingKey, postTakesBeams, tubeTakesPost } from './catalogue.ts'
import { choiceOf, withChoice, withSetbacks } from './choice.ts'
import { type CostModel, costModel } from './cost-model.ts'
import { Heap } from './heap.ts'
import { KnownFailures, standsInTheWay } from './known-failures.ts'
import { costOf, leastLumber, sharesOf } from './least-cost.ts'
import { PlannedBounds } from './planned-bounds.ts'
import type {
  BeamChoice,
  Catalogue,
  Choice,
  FootingChoice,
  Setbacks,
  SizingLimits,
  SizingWork,
} from './types.ts'

export type Plans = Map<string, Result<CutPlan, Infeasible>>

/** Roundings of lines and totals that a bound must not count on, cents. */
const ROUNDINGS = 200

/** A way that passes, with its cost by the whole estimate. */
export interface Found {
  readonly choice: Choice
  readonly design: Design
  readonly cost: Cents
}

export interface SearchResult {
  readonly best: Found | null
  /** the way that failed on the fewest checks, where none passes */
  readonly nearest: { readonly choice: Choice; readonly checks: readonly Check[] } | null
  readonly work: SizingWork
}

export interface SearchInput {
  readonly job: Job
  readonly book: PriceBook
  readonly engine: LpEngine
  readonly catalogue: Catalogue
  readonly limits: SizingLimits
  readonly plans: Plans
  readonly watch: Watch
}

/** What waits in the heap, its bound growing with what is known of it. */
type Waiting =
  /** joists, posts and the i-th and j-th cheapest beams, with the cheapest footing there is */
  | { readonly kind: 'frames'; readonly series: Series; readonly i: number; readonly j: number }
  /** a frame with its g-th cheapest footing */
  | {
      readonly kind: 'way'
      readonly frame: Omit<Choice, 'footing'>
      readonly cost: number
      readonly g: number
    }
  /** framed, checked, and it passes */
  | { readonly kind: 'passing'; readonly choice: Choice; readonly design: Design }

/** All frames of one joist and one post size: beams by rising cost. */
interface Series {
  readonly joist: Choice['joist']
  readonly postSize: Choice['postSize']
  readonly cost: number
  readonly front: readonly CostedBeam[]
  readonly rear: readonly CostedBeam[]
}
interface CostedBeam {
  readonly beam: BeamChoice | null
  readonly cost: number
}

/**
 * Setbacks one after the other, and for each, best first: ways of the catalogue by a bound below their cost. What is seen to fail rules out its like; what passes
 * is priced in full, until no way that is left can cost less. The least cost is proven, as far as the limits of work go.
 */
export function searchSizes(input: SearchInput): SearchResult {
  const { limits, catalogue } = input
  let sum: SearchResult = {
    best: null,
    nearest: null,
    work: { ways: waysOf(catalogue), checked: 0, priced: 0, proven: true },
  }
  let apart: CostModel['apart'] | null = null
  for (const setbacks of catalogue.setbacks) {
    const job = withSetbacks(input.job, setbacks)
    const model: CostModel | null = costModel(job, input.book, catalogue, apart)
    if (model === null) continue
    apart = model.apart
    const { checked, priced } = sum.work
    const left = { ...limits, checked: limits.checked - checked, priced: limits.priced - priced }
    sum = joined(sum, new Search({ ...input, job, limits: left }, model, sum.best).run())
  }
  return sum
}

/** What two searches found together; the later began with the best of the earlier. */
function joined(a: SearchResult, b: SearchResult): SearchResult {
  const nearer =
    a.nearest === null || (b.nearest !== null && b.nearest.checks.length < a.nearest.checks.length)
  return {
    best: b.best,
    nearest: nearer ? b.nearest : a.nearest,
    work: {
      ways: a.work.ways,
      checked: a.work.checked + b.work.checked,
      priced: a.work.priced + b.work.priced,
      proven: a.work.proven && b.work.proven,
    },
  }
}

export function waysOf({ setbacks, joists, front, rear, postSizes, footings }: Catalogue): number {
  return setbacks.length * joists.length * front.length * rear.length * postSizes.length * footings.length
}

class Search {
  readonly #input: SearchInput
  readonly #model: CostModel
  readonly #heap = new Heap<Waiting>()
  readonly #failures = new KnownFailures()
  readonly #bounds: PlannedBounds
  readonly #footings: ReadonlyMap<string, readonly FootingChoice[]>
  readonly #leastFooting: ReadonlyMap<string, number>
  readonly #setbacks: Setbacks
  #best: Found | null
  #nearest: SearchResult['nearest'] = null
  #looked = 0
  #checked = 0
  #priced = 0

  /** @param best the way to beat, of other setbacks */
  constructor(input: SearchInput, model: CostModel, best: Found | null) {
    this.#input = input
    this.#model = model
    this.#best = best
    this.#setbacks = choiceOf(input.job).setbacks
    this.#bounds = new PlannedBounds(input.job, input.book)
    const stated = choiceOf(input.job)
    const takes = (footing: FootingChoice, post: Choice['postSize']) =>
      tubeTakesPost(footing.tube, post) || (post === stated.postSize && footing.tube === stated.footing.tube)
    this.#footings = new Map(
      input.catalogue.postSizes.map((post) => [
        post,
        input.catalogue.footings
          .filter((footing) => takes(footing, post))
          .sort((a, b) => model.footing(a) - model.footing(b) || (footingKey(a) < footingKey(b) ? -1 : 1)),
      ]),
    )
    this.#leastFooting = new Map(
      [...this.#footings].flatMap(([post, [first]]) =>
        first === undefined ? [] : [[post, model.footing(first)]],
      ),
    )
  }

  run(): SearchResult {
    this.#tryStated()
    for (const series of this.#series()) this.#pushFrames(series, 0, 0)
    const { limits, watch } = this.#input
    let proven = true
    for (let next = this.#heap.pop(); next !== null; next = this.#heap.pop()) {
      if (this.#best !== null && next.bound >= this.#best.cost) break
      this.#looked += 1
      if (
        this.#looked > limits.looked ||
        this.#checked >= limits.checked ||
        this.#priced >= limits.priced ||
        watch.stop?.() === true
      ) {
        proven = false
        break
      }
      this.#take(next.entry, next.bound)
      if (next.entry.kind === 'passing') this.#tell(next.bound)
    }
    const { checked, priced } = { checked: this.#checked, priced: this.#priced }
    const work = { ways: waysOf(this.#input.catalogue), checked, priced, proven }
    return { best: this.#best, nearest: this.#nearest, work }
  }

  /** No way that is left can cost less than the bound of the one just taken. */
  #tell(bound: number): void {
    this.#input.watch.onProgress?.({
      subject: 'Sizes that pass',
      part: this.#priced,
      parts: this.#input.limits.priced,
      bound: Math.floor(bound),
      best: this.#best?.cost ?? null,
      lengthUnit: null,
    })
  }

  /** The job as it stands is the first to beat, where it passes. */
  #tryStated(): void {
    const choice = choiceOf(this.#input.job)
    const design = this.#check(choice)
    if (design !== null) this.#price(choice, design)
  }

  *#series(): Iterable<Series> {
    const { catalogue, job } = this.#input
    for (const joist of catalogue.joists) {
      const joistCost = this.#model.joist(joist)
      if (joistCost === null) continue
      for (const postSize of catalogue.postSizes) {
        const each = this.#leastFooting.get(postSize)
        if (each === undefined) continue
        const costed = (side: 'front' | 'rear', beams: readonly (BeamChoice | null)[]) =>
          beams
            .flatMap((beam): readonly CostedBeam[] => {
              if (beam === null) return [{ beam, cost: 0 }]
              if (!postTakesBeams(job, { ...choiceOf(job), front: beam, rear: null, postSize })) return []
              const plies = this.#model.beam(side, beam)
              const posts = this.#model.posts(side, beam, joist.size, postSize)
              return plies === null || posts === null
                ? []
                : [{ beam, cost: plies + posts + beam.posts * each }]
            })
            .sort((a, b) => a.cost - b.cost)
        yield {
          joist,
          postSize,
          cost: this.#model.base + joistCost - ROUNDINGS,
          front: costed('front', catalogue.front),
          rear: costed('rear', catalogue.rear),
        }
      }
    }
  }

  #pushFrames(series: Series, i: number, j: number): void {
    const [front, rear] = [series.front[i], series.rear[j]]
    if (front === undefined || rear === undefined) return
    this.#heap.push(series.cost + front.cost + rear.cost, { kind: 'frames', series, i, j })
  }

  #take(entry: Waiting, bound: number): void {
    if (entry.kind === 'frames') this.#takeFrames(entry)
    else if (entry.kind === 'way') this.#takeWay(entry, bound)
    else this.#price(entry.choice, entry.design)
  }

  #takeFrames({ series, i, j }: Extract<Waiting, { kind: 'frames' }>): void {
    const [front, rear] = [series.front[i], series.rear[j]]
    if (front?.beam === undefined || front.beam === null || rear === undefined) return
    if (j === 0) this.#pushFrames(series, i + 1, 0)
    this.#pushFrames(series, i, j + 1)
    const { joist, postSize } = series
    const posts = front.beam.posts + (rear.beam?.posts ?? 0)
    const least = this.#leastFooting.get(postSize) ?? 0
    const cost = series.cost + front.cost + rear.cost - posts * least
    this.#pushWay({ setbacks: this.#setbacks, joist, front: front.beam, rear: rear.beam, postSize }, cost, 0)
  }

  /** The next footing that is not known to fail under this frame. */
  #pushWay(frame: Omit<Choice, 'footing'>, cost: number, from: number): void {
    const footings = this.#footings.get(frame.postSize) ?? []
    const posts = frame.front.posts + (frame.rear?.posts ?? 0)
    for (let g = from; g < footings.length; g += 1) {
      const footing = footings[g]
      if (footing === undefined) return
      const choice = { ...frame, footing }
      if (g === from && this.#failures.hasFrame(choice)) return
      if (this.#failures.hasFooting(choice)) continue
      const beyond = this.#bounds.beyondLeast(choice)
      if (!Number.isFinite(beyond)) return
      const bound = cost + posts * this.#model.footing(footing) + beyond
      this.#heap.push(bound, { kind: 'way', frame, cost, g })
      return
    }
  }

  #takeWay({ frame, cost, g }: Extract<Waiting, { kind: 'way' }>, bound: number): void {
    const footing = this.#footings.get(frame.postSize)?.[g]
    if (footing === undefined) return
    const choice = { ...frame, footing }
    if (this.#failures.hasFrame(choice)) return
    if (this.#failures.hasFooting(choice)) {
      this.#pushWay(frame, cost, g + 1)
      return
    }
    const posts = frame.front.posts + (frame.rear?.posts ?? 0)
    const now = cost + posts * this.#model.footing(footing) + this.#bounds.beyondLeast(choice)
    if (now > bound + 1e-6) {
      if (Number.isFinite(now)) this.#heap.push(now, { kind: 'way', frame, cost, g })
      return
    }
    this.#pushWay(frame, cost, g + 1)
    const design = this.#check(choice)
    if (design === null) return
    const sharper = this.#sharperBound(design)
    if (sharper !== null && Number.isFinite(sharper))
      this.#heap.push(Math.max(bound, sharper), { kind: 'passing', choice, design })
  }

  /** The design where every check that sizes can mend passes; else what fails is remembered. */
  #check(choice: Choice): Design | null {
    this.#checked += 1
    const job = withChoice(this.#input.job, choice)
    const layout = layOut(job)
    const frame = layout.ok ? frameDeck(job, layout.value) : layout
    if (!layout.ok || !frame.ok) {
      const faults = layout.ok ? (frame.ok ? [] : frame.error) : layout.error
      for (const fault of faults) this.#failures.addFault(fault, choice)
      return null
    }
    const additions = layAdditions(job, layout.value, frame.value)
    if (!additions.ok) return null
    const checks = checkFrame(job, layout.value, frame.value, additions.value)
    const failing = checks.filter(standsInTheWay)
    for (const check of failing) this.#failures.addCheck(check, choice)
    if (failing.length > 0) {
      if (this.#nearest === null || failing.length < this.#nearest.checks.length)
        this.#nearest = { choice, checks: failing }
      return null
    }
    const takeoff = takeOff(job, frame.value, additions.value)
    return {
      job,
      given: [],
      layout: layout.value,
      frame: frame.value,
      ...additions.value,
      checks,
      takeoff,
    }
  }

  /** With goods and hours exact, and lumber by the plans that are known; null where something has no price. */
  #sharperBound(design: Design): number | null {
    const { book } = this.#input
    const priced = priceJob(design, [], book)
    const { classes, faults } = cutJobs(design, book)
    if (!priced.ok || faults.length > 0) return null
    const { material, labour, other } = priced.value.totals
    const least = leastLumber(design.job, book, design.takeoff)
    let lumber = 0
    let beyond = 0
    for (const { product, cutJob } of classes) {
      lumber += least.get(productKey(product)) ?? 0
      beyond += this.#bounds.beyond(cutJob)
    }
    return costOf(sharesOf(design.job), material + lumber, labour + beyond, other) - ROUNDINGS
  }

  #price(choice: Choice, design: Design): void {
    this.#priced += 1
    const { book, engine, plans } = this.#input
    const { stop } = this.#input.watch
    const costed = costDesign(design, book, engine, { known: plans, stop })
    this.#bounds.learn(choice, design, costed)
    if (costed.pricing === null) return
    const { cost } = costed.pricing.totals
    if (this.#best === null || cost < this.#best.cost) this.#best = { choice, design, cost }
  }
}
