import { type Check, checkFrame, checkSpansOfBeams } from '../checks/index.ts'
import type { LpEngine, Watch } from '../cutting/index.ts'
import { sectionOf } from '../data/index.ts'
import { costDesign } from '../estimate.ts'
import type { Design } from '../estimate-types.ts'
import { footingUnder, frameDeck } from '../frame/index.ts'
import { isRectangle, type Job } from '../job/index.ts'
import { layAdditions } from '../lay-additions.ts'
import { layOut } from '../layout/index.ts'
import { type PriceBook, priceJob } from '../pricing/index.ts'
import { takeOff } from '../takeoff/index.ts'
import { type Cents, ticks } from '../units/index.ts'
import { footingKey, postTakesBeams, tubeTakesPost } from './catalogue.ts'
import { choiceOf, withChoice, withSetbacks } from './choice.ts'
import { type BoundedClass, ClassBounds, type Plans } from './class-bounds.ts'
import { type CostModel, costModel } from './cost-model.ts'
import { Heap } from './heap.ts'
import { KnownFailures, type PlacedChoice, standsInTheWay } from './known-failures.ts'
import { costOf, type LeastCents, type Shares, sharesOf } from './least-cost.ts'
import { partOf, sizesOf } from './part-of.ts'
import type { Skeleton } from './skeleton.ts'
import type { BeamChoice, Catalogue, Choice, FootingChoice, SizingLimits, SizingWork } from './types.ts'

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
  /** a frame with its g-th cheapest footing, and all dearer ones */
  | { readonly kind: 'footings'; readonly frame: OpenFrame; readonly g: number }
  /** one way, not framed yet */
  | { readonly kind: 'way'; readonly frame: OpenFrame; readonly choice: Choice }
  /** framed; it passes, or its frame is known and its footings are not checked yet */
  | { readonly kind: 'framed'; readonly framed: FramedWay }

/** All frames of one joist and one post size with the beams in one place: beams by rising cost. */
interface Series {
  readonly model: CostModel
  readonly setbacks: Choice['setbacks']
  readonly joist: Choice['joist']
  readonly postSize: Choice['postSize']
  /** of all but beams, posts and footings */
  readonly cost: LeastCents
  readonly front: readonly CostedBeam[]
  readonly rear: readonly CostedBeam[]
}

interface CostedBeam {
  readonly beam: BeamChoice | null
  readonly plies: LeastCents
  /** with its posts, each on the cheapest footing */
  readonly cost: LeastCents
  readonly fewest: number
}

/** A frame on any footing. */
interface OpenFrame {
  readonly model: CostModel
  readonly choice: Omit<Choice, 'footing'>
  /** of all but posts and footings */
  readonly bare: LeastCents
  /** of all but footings, at least */
  readonly least: LeastCents
  /** footings, at least */
  readonly fewest: number
}

type FramedDesign = Omit<Design, 'takeoff'>

interface FramedWay {
  readonly placed: PlacedChoice
  readonly design: Design
  /** false where its frame was checked on other footings alone */
  readonly checked: boolean
  readonly classes: readonly BoundedClass[]
  /** of all but lumber and joints */
  readonly totals: { readonly material: Cents; readonly labour: Cents; readonly other: Cents }
}

/**
 * Best first, ways of the catalogue by a bound below their cost. What is seen to fail rules out its like; of what passes
 * as much is planned as it takes to tell it from the others, until no way that is left can cost less. The least cost is
 * proven, as far as the limits of work go.
 */
export function searchSizes(input: SearchInput): SearchResult {
  return new Search(input).run()
}

export function waysOf({ setbacks, joists, front, rear, postSizes, footings }: Catalogue): number {
  return setbacks.length * joists.length * front.length * rear.length * postSizes.length * footings.length
}

class Search {
  readonly #input: SearchInput
  readonly #shares: Shares
  /** posts stand by their number alone */
  readonly #plain: boolean
  readonly #models: ReadonlyMap<string, CostModel>
  readonly #heap = new Heap<Waiting>()
  readonly #failures = new KnownFailures()
  readonly #bounds: ClassBounds
  readonly #footings: ReadonlyMap<string, readonly FootingChoice[]>
  /** decks framed so far, on some footings each */
  readonly #framed = new Map<string, FramedDesign>()
  readonly #probed = new Set<string>()
  #best: Found | null = null
  #nearest: SearchResult['nearest'] = null
  #looked = 0
  #checks = 0
  #priced = 0

  constructor(input: SearchInput) {
    const { job, book, engine, plans, watch, catalogue } = input
    this.#input = input
    this.#shares = sharesOf(job)
    this.#plain = isRectangle(job)
    this.#bounds = new ClassBounds(book, engine, plans, watch.stop)
    this.#models = modelsOf(input)
    const [model] = this.#models.values()
    const stated = choiceOf(job)
    const takes = (footing: FootingChoice, post: Choice['postSize']) =>
      tubeTakesPost(footing.tube, post) || (post === stated.postSize && footing.tube === stated.footing.tube)
    const cost = (footing: FootingChoice) => model?.footing(footing) ?? 0
    this.#footings = new Map(
      catalogue.postSizes.map((post) => [
        post,
        catalogue.footings
          .filter((footing) => takes(footing, post))
          .sort((a, b) => cost(a) - cost(b) || (footingKey(a) < footingKey(b) ? -1 : 1)),
      ]),
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
        this.#checks >= limits.checked ||
        this.#priced >= limits.priced ||
        watch.stop?.() === true
      ) {
        proven = false
        break
      }
      this.#take(next.entry, next.bound)
      if (next.entry.kind === 'framed') this.#tell(next.bound)
    }
    const { checked, priced } = { checked: this.#checks, priced: this.#priced }
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
    const placed = this.#placed(choiceOf(this.#input.job))
    const design = placed === null ? null : this.#check(placed)
    const cost = design === null ? null : this.#costOf(design)
    if (placed !== null && design !== null && cost !== null)
      this.#best = { choice: placed.choice, design, cost }
  }

  *#series(): Iterable<Series> {
    const { catalogue, job } = this.#input
    const stated = choiceOf(job)
    for (const setbacks of catalogue.setbacks) {
      const model = this.#models.get(setbacksKey(setbacks))
      if (model === undefined) continue
      for (const joist of catalogue.joists) {
        const joistCost = model.joist(joist)
        if (joistCost === null) continue
        for (const postSize of catalogue.postSizes) {
          const [footing] = this.#footings.get(postSize) ?? []
          if (footing === undefined) continue
          const each = model.footing(footing)
          const costed = (side: 'front' | 'rear', beams: readonly (BeamChoice | null)[]) =>
            beams
              .flatMap((beam): readonly CostedBeam[] => {
                if (beam === null) return [{ beam, plies: 0, cost: 0, fewest: 0 }]
                const pair = { ...stated, [side]: beam }
                if (!postTakesBeams(job, { ...pair, [side === 'front' ? 'rear' : 'front']: beam, postSize }))
                  return []
                const plies = model.beam(side, beam)
                if (plies === null) return []
                const ways = model.skeletons.sidesOf(side, beam.plies, beam.posts).flatMap((posts) => {
                  const cost = model.posts(posts, beam, joist.size, postSize)
                  return cost === null ? [] : [{ cost: cost + posts.count * each, count: posts.count }]
                })
                if (ways.length === 0) return []
                const cost = plies + Math.min(...ways.map((way) => way.cost))
                return [{ beam, plies, cost, fewest: Math.min(...ways.map(({ count }) => count)) }]
              })
              .sort((a, b) => a.cost - b.cost)
          yield {
            model,
            setbacks,
            joist,
            postSize,
            cost: model.base + joistCost - ROUNDINGS,
            front: costed('front', catalogue.front),
            rear: costed('rear', catalogue.rear),
          }
        }
      }
    }
  }

  /** The next pair of beams that is not known to fail with these joists and posts. */
  #pushFrames(series: Series, i: number, from: number): void {
    for (let j = from; ; j += 1) {
      const [front, rear] = [series.front[i], series.rear[j]]
      if (front === undefined || rear === undefined) return
      if (!this.#isRuledOut(series, front.beam, rear.beam)) {
        this.#heap.push(series.cost + front.cost + rear.cost, { kind: 'frames', series, i, j })
        return
      }
      if (j === 0) this.#pushFrames(series, i + 1, 0)
    }
  }

  #isRuledOut(
    { setbacks, joist, postSize }: Series,
    front: BeamChoice | null,
    rear: BeamChoice | null,
  ): boolean {
    const [footing] = this.#footings.get(postSize) ?? []
    if (front === null || footing === undefined) return true
    const placed = { choice: { setbacks, joist, front, rear, postSize, footing }, skeleton: null }
    return this.#plain ? this.#failures.hasFrame(placed) : this.#failures.hasJoists(placed)
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
      case 'framed':
        this.#takeFramed(entry.framed, bound)
    }
  }

  #takeFrames({ series, i, j }: Extract<Waiting, { kind: 'frames' }>): void {
    const [front, rear] = [series.front[i], series.rear[j]]
    if (front === undefined || front.beam === null || rear === undefined) return
    if (j === 0) this.#pushFrames(series, i + 1, 0)
    this.#pushFrames(series, i, j + 1)
    if (this.#isRuledOut(series, front.beam, rear.beam)) return
    const { model, setbacks, joist, postSize } = series
    const [cheapest] = this.#footings.get(postSize) ?? []
    if (cheapest === undefined) return
    const fewest = front.fewest + rear.fewest
    const frame: OpenFrame = {
      model,
      choice: { setbacks, joist, front: front.beam, rear: rear.beam, postSize },
      bare: series.cost + front.plies + rear.plies,
      least: series.cost + front.cost + rear.cost - fewest * model.footing(cheapest),
      fewest,
    }
    this.#pushFootings(frame, 0)
  }

  /** The next footing that is not known to fail under this frame, its bound below that of any dearer one. */
  #pushFootings(frame: OpenFrame, from: number): void {
    const footings = this.#footings.get(frame.choice.postSize) ?? []
    const all = frame.model.skeletons.onAll(frame.choice)
    if (all === null) return
    for (let g = from; g < footings.length; g += 1) {
      const footing = footings[g]
      if (footing === undefined) return
      const choice = { ...frame.choice, footing }
      const placed = all === 'by footing' ? this.#placed(choice) : this.#placedOn(choice, all)
      if (placed === null) continue
      if ((g === from || all === 'by footing') && this.#failures.hasFrame(placed)) {
        if (all === 'by footing') continue
        return
      }
      if (this.#failures.hasFooting(placed)) continue
      const bound = frame.least + frame.fewest * frame.model.footing(footing)
      this.#heap.push(bound, { kind: 'footings', frame, g })
      return
    }
  }

  #takeFootings({ frame, g }: Extract<Waiting, { kind: 'footings' }>, bound: number): void {
    this.#pushFootings(frame, g + 1)
    const footing = this.#footings.get(frame.choice.postSize)?.[g]
    if (footing !== undefined) this.#takeWay(frame, { ...frame.choice, footing }, bound)
  }

  #takeWay(frame: OpenFrame, choice: Choice, bound: number): void {
    const placed = this.#placed(choice)
    if (placed === null || this.#failures.hasFrame(placed) || this.#failures.hasFooting(placed)) return
    const now = this.#boundOf(frame, placed)
    if (!Number.isFinite(now)) return
    if (now > bound + 1e-6) {
      this.#heap.push(now, { kind: 'way', frame, choice })
      return
    }
    const known = this.#framed.get(frameKey(placed))
    const framed = known === undefined ? this.#checked(placed) : this.#onOtherFootings(placed, known)
    if (framed !== null) this.#pushFramed(framed, bound)
  }

  /** Of one way, with its posts where they stand and what is known of the plans of its parts. */
  #boundOf({ model, bare }: OpenFrame, placed: PlacedChoice): LeastCents {
    const { choice } = placed
    const { front, rear, joist, postSize, footing } = choice
    const posts = model.skeletons.of(choice)
    if (posts === null) return Number.POSITIVE_INFINITY
    const ofFront = model.posts(posts.front, front, joist.size, postSize)
    const ofRear = rear === null ? 0 : model.posts(posts.rear, rear, joist.size, postSize)
    if (ofFront === null || ofRear === null) return Number.POSITIVE_INFINITY
    const footings = posts.front.count + (rear === null ? 0 : posts.rear.count)
    const parts = [...sizesOf(this.#input.job, choice)].flatMap(
      (size) => partOf(this.#input.job, placed, size) ?? [],
    )
    return (
      bare +
      ofFront +
      ofRear +
      footings * model.footing(footing) +
      this.#bounds.beyondLeast(parts) * this.#shares.beyond
    )
  }

  #placed(choice: Choice): PlacedChoice | null {
    if (this.#plain) return { choice, skeleton: null }
    const skeleton = this.#models.get(setbacksKey(choice.setbacks))?.skeletons.of(choice) ?? null
    return skeleton === null ? null : this.#placedOn(choice, skeleton)
  }

  #placedOn(choice: Choice, { id }: Skeleton): PlacedChoice {
    return { choice, skeleton: this.#plain ? null : id }
  }

  /** The design where every check that sizes can mend passes; else what fails is remembered. */
  #check(placed: PlacedChoice): Design | null {
    this.#checks += 1
    const { choice } = placed
    const job = withChoice(this.#input.job, choice)
    const layout = layOut(job)
    const frame = layout.ok ? frameDeck(job, layout.value) : layout
    if (!layout.ok || !frame.ok) {
      const faults = layout.ok ? (frame.ok ? [] : frame.error) : layout.error
      for (const fault of faults) this.#failures.addFault(fault, placed)
      return null
    }
    const additions = layAdditions(job, layout.value, frame.value)
    if (!additions.ok) return null
    const checks = checkFrame(job, layout.value, frame.value, additions.value)
    const failing = checks.filter(standsInTheWay)
    for (const check of failing) this.#failures.addCheck(check, placed)
    const design = { job, given: [], layout: layout.value, frame: frame.value, ...additions.value, checks }
    this.#framed.set(frameKey(placed), design)
    if (failing.length > 0) {
      this.#askDeeperBeams(placed, design, failing)
      if (placed.skeleton === null) this.#probe(choice, failing)
      if (this.#nearest === null || failing.length < this.#nearest.checks.length)
        this.#nearest = { choice, checks: failing }
      return null
    }
    return { ...design, takeoff: takeOff(job, frame.value, additions.value) }
  }

  /** Where a beam is too weak, asks which deeper ones of as many plies are: in the same frame, for only its depth changes. */
  #askDeeperBeams({ choice, skeleton }: PlacedChoice, design: FramedDesign, failing: readonly Check[]): void {
    for (const side of ['front', 'rear'] as const) {
      const beam = choice[side]
      const tooWeak = failing.find(
        ({ id, status }) =>
          status === 'fails' &&
          design.frame.beams.some((one) => one.beam === side && id === `beam-span-${one.key}`),
      )
      if (beam === null || tooWeak === undefined) continue
      const deeper = [...new Set(this.#input.catalogue[side].flatMap((one) => one?.size ?? []))]
        .filter((size) => sectionOf(size).depth > sectionOf(beam.size).depth)
        .sort((a, b) => sectionOf(a).depth - sectionOf(b).depth)
      for (const size of deeper) {
        const other = { ...choice, [side]: { ...beam, size } }
        const frame = {
          ...design.frame,
          beams: design.frame.beams.map((one) => (one.beam === side ? { ...one, size } : one)),
        }
        const checks = checkSpansOfBeams(withChoice(this.#input.job, other), design.layout, frame)
        const check = checks.find(({ id }) => id === tooWeak.id)
        if (check === undefined || !standsInTheWay(check)) break
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
    const { joists, postSizes, front, rear, footings } = this.#input.catalogue
    const { joist } = choice
    const strongest = (beam: BeamChoice, all: readonly (BeamChoice | null)[]): BeamChoice =>
      all.reduce<BeamChoice>(
        (a, b) => (b !== null && b.posts === beam.posts && strengthOf(b) > strengthOf(a) ? b : a),
        beam,
      )
    const spacings = joists.filter(({ size }) => size === joist.size).map(({ spacing }) => spacing)
    const probe: Choice = {
      setbacks: choice.setbacks,
      joist: { size: joist.size, spacing: ticks(Math.min(...spacings)) },
      front: strongest(choice.front, front),
      rear: choice.rear && strongest(choice.rear, rear),
      postSize: postSizes.reduce((a, b) => (sectionOf(b).thickness > sectionOf(a).thickness ? b : a)),
      footing: footings.reduce((a, b) => (b.base > a.base ? b : a)),
    }
    const placed: PlacedChoice = { choice: probe, skeleton: null }
    const key = frameKey(placed)
    if (this.#probed.has(key) || this.#framed.has(key)) return
    this.#probed.add(key)
    this.#check(placed)
  }

  #checked(placed: PlacedChoice): FramedWay | null {
    const design = this.#check(placed)
    return design === null ? null : this.#withTotals(placed, design)
  }

  /** With goods and hours exact; null where something has no price. */
  #withTotals(placed: PlacedChoice, design: Design): FramedWay | null {
    const priced = priceJob(design, [], this.#input.book)
    const { classes, faults } = this.#bounds.classesOf(design, placed)
    return priced.ok && faults.length === 0
      ? { placed, design, checked: true, classes, totals: priced.value.totals }
      : null
  }

  /** A frame that is known, on other footings: what it costs is told before it is checked. */
  #onOtherFootings(placed: PlacedChoice, known: FramedDesign): FramedWay | null {
    const job = withChoice(this.#input.job, placed.choice)
    const footings = known.frame.posts.map((post) => footingUnder(job, post))
    const frame = { ...known.frame, footings }
    const takeoff = takeOff(job, frame, known)
    const way = this.#withTotals(placed, { ...known, job, frame, takeoff })
    return way === null ? null : { ...way, checked: false }
  }

  #pushFramed(framed: FramedWay, bound: LeastCents): void {
    const now = Math.max(bound, this.#costAtLeast(framed))
    if (Number.isFinite(now)) this.#heap.push(now, { kind: 'framed', framed })
  }

  #costAtLeast({ classes, totals: { material, labour, other } }: FramedWay): LeastCents {
    const lumber = classes.reduce((sum, one) => sum + this.#bounds.of(one), 0)
    return costOf(this.#shares, material, labour, other + lumber) - ROUNDINGS
  }

  /** Plans as much of a way as it takes for another to come before it; prices it where nothing is left to plan. */
  #takeFramed(way: FramedWay, bound: LeastCents): void {
    const { placed, design, checked, classes } = way
    if (!checked && this.#failures.hasFooting(placed)) return
    while (this.#bounds.learn(classes, this.#shares)) {
      if (this.#costAtLeast(way) <= bound) continue
      this.#pushFramed(way, bound)
      return
    }
    const cost = this.#costOf(design)
    if (cost === null || (this.#best !== null && cost >= this.#best.cost)) return
    // framed anew where it was told from another: what is proposed is what the job gives
    const whole = checked ? design : this.#check(placed)
    if (whole !== null) this.#best = { choice: placed.choice, design: whole, cost }
  }

  #costOf(design: Design): Cents | null {
    this.#priced += 1
    const { book, engine, plans } = this.#input
    const { stop } = this.#input.watch
    return costDesign(design, book, engine, { known: plans, stop }).pricing?.totals.cost ?? null
  }
}

/** Cost models by where the beams lie; those that cannot be framed are left out. */
function modelsOf({ job, book, catalogue }: SearchInput): ReadonlyMap<string, CostModel> {
  const models = new Map<string, CostModel>()
  let shared: CostModel['shared'] | null = null
  for (const setbacks of catalogue.setbacks) {
    const model: CostModel | null = costModel(withSetbacks(job, setbacks), book, catalogue, shared)
    if (model === null) continue
    shared = model.shared
    models.set(setbacksKey(setbacks), model)
  }
  return models
}

/** Checks that say that a beam or joists carry too little. */
const TOO_WEAK = /^(joist-span|beam-span-(front|rear))$/

function strengthOf({ size, plies }: BeamChoice): number {
  return sectionOf(size).depth ** 2 * plies
}

function frameKey({ choice, skeleton }: PlacedChoice): string {
  const { setbacks, joist, front, rear, postSize } = choice
  const beam = (one: BeamChoice | null) => (one === null ? '' : `${one.plies} ${one.size} ${one.posts}`)
  return `${setbacksKey(setbacks)} ${joist.size} ${joist.spacing} ${beam(front)} ${beam(rear)} ${postSize} ${skeleton}`
}

function setbacksKey({ front, rear }: Choice['setbacks']): string {
  return `${front}/${rear}`
}
