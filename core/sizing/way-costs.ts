import type { LpEngine, Watch } from '../cutting/index.ts'
import { costDesign } from '../estimate.ts'
import type { Design } from '../estimate-types.ts'
import type { Job } from '../job/index.ts'
import { type PriceBook, priceJob } from '../pricing/index.ts'
import type { Cents } from '../units/index.ts'
import { type BoundedClass, ClassBounds, type Plans } from './class-bounds.ts'
import type { PlacedChoice } from './known-failures.ts'
import { costOf, type LeastCents, ROUNDINGS, type Shares, sharesOf } from './least-cost.ts'
import { partOf, sizesOf } from './part-of.ts'

/** A way whose goods and hours are counted. */
export interface CountedWay {
  readonly placed: PlacedChoice
  readonly design: Design
  readonly classes: readonly BoundedClass[]
  /** of all but lumber and joints */
  readonly totals: { readonly material: Cents; readonly labour: Cents; readonly other: Cents }
}

/** What ways cost: goods and hours exact, lumber as far as it is known, the whole where it is asked for. */
export class WayCosts {
  readonly #job: Job
  readonly #book: PriceBook
  readonly #engine: LpEngine
  readonly #plans: Plans
  readonly #stop: Watch['stop']
  readonly #shares: Shares
  readonly #bounds: ClassBounds
  #priced = 0

  constructor(job: Job, book: PriceBook, engine: LpEngine, plans: Plans, stop: Watch['stop']) {
    this.#job = job
    this.#book = book
    this.#engine = engine
    this.#plans = plans
    this.#stop = stop
    this.#shares = sharesOf(job)
    this.#bounds = new ClassBounds(book, engine, plans, stop)
  }

  /** Ways planned and priced in full so far. */
  get priced(): number {
    return this.#priced
  }

  /** By how much lumber adds to the cost of a way beyond its least prices, as far as like parts are known. */
  beyondLeast(placed: PlacedChoice): LeastCents {
    const parts = [...sizesOf(this.#job, placed.choice)].flatMap(
      (size) => partOf(this.#job, placed, size) ?? [],
    )
    return this.#bounds.beyondLeast(parts) * this.#shares.beyond
  }

  /** With goods and hours exact; null where something has no price. */
  counted(placed: PlacedChoice, design: Design): CountedWay | null {
    const priced = priceJob(design, [], this.#book)
    const { classes, faults } = this.#bounds.classesOf(design, placed)
    return priced.ok && faults.length === 0 ? { placed, design, classes, totals: priced.value.totals } : null
  }

  atLeast({ classes, totals: { material, labour, other } }: CountedWay): LeastCents {
    const lumber = classes.reduce((sum, one) => sum + this.#bounds.of(one), 0)
    return costOf(this.#shares, material, labour, other + lumber) - ROUNDINGS
  }

  /** Plans more of a way; false where nothing is left to plan. */
  learn({ classes }: CountedWay): boolean {
    return this.#bounds.learn(classes, this.#shares)
  }

  /** By the whole estimate; null where it has no price. */
  whole(design: Design): Cents | null {
    this.#priced += 1
    const options = { known: this.#plans, stop: this.#stop }
    return costDesign(design, this.#book, this.#engine, options).pricing?.totals.cost ?? null
  }
}
