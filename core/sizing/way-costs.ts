import { mustBeSound } from '../cost-design.ts'
import { auditPlan, type LpEngine, type Watch } from '../cutting/index.ts'
import { costAt } from '../estimate.ts'
import type { Design } from '../estimate-types.ts'
import type { Job } from '../job/index.ts'
import { type PriceBook, priceJob } from '../pricing/index.ts'
import type { Cents } from '../units/index.ts'
import { type BoundedClass, ClassBounds, type Plans } from './class-bounds.ts'
import { EFFORT, type Effort } from './effort.ts'
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

/** The contents of no cutting job. */
const NONE: ReadonlySet<string> = new Set()

/** What ways cost: goods and hours exact, lumber as far as it is known, the whole where it is asked for. */
export class WayCosts {
  readonly #job: Job
  readonly #book: PriceBook
  readonly #engine: LpEngine
  readonly #plans: Plans
  readonly #stop: Watch['stop']
  readonly #effort: Effort
  readonly #shares: Shares
  readonly #bounds: ClassBounds
  #priced = 0

  constructor(
    job: Job,
    book: PriceBook,
    engine: LpEngine,
    plans: Plans,
    effort: Effort,
    stop: Watch['stop'],
  ) {
    this.#job = job
    this.#book = book
    this.#engine = engine
    this.#plans = plans
    this.#stop = stop
    this.#effort = effort
    this.#shares = sharesOf(job)
    this.#bounds = new ClassBounds(book, engine, plans, effort, stop)
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
    this.#effort.add(EFFORT.count)
    const priced = priceJob(design, [], this.#book)
    const { classes, faults } = this.#bounds.classesOf(design, placed)
    return priced.ok && faults.length === 0 ? { placed, design, classes, totals: priced.value.totals } : null
  }

  /** @param settled contents of cutting jobs whose plans count as they are: those of the way that it is compared with */
  atLeast(
    { classes, totals: { material, labour, other } }: CountedWay,
    settled: ReadonlySet<string> = NONE,
  ): LeastCents {
    const lumber = classes.reduce((sum, one) => sum + this.#bounds.of(one, settled), 0)
    return costOf(this.#shares, material, labour, other + lumber) - ROUNDINGS
  }

  /** Plans more of a way; false where nothing is left to plan. */
  learn({ classes }: CountedWay): boolean {
    return this.#bounds.learn(classes, this.#shares)
  }

  /** Whether a plan of a way is not proven, of which the other way has none like it. */
  isOpen({ classes }: CountedWay, settled: ReadonlySet<string> = NONE): boolean {
    return classes.some((one) => !settled.has(one.content) && this.#bounds.isOpen(one))
  }

  /** By the whole estimate, from plans that are all made; null where it has no price. */
  whole({ classes, design }: CountedWay): Cents | null {
    this.#priced += 1
    this.#effort.add(EFFORT.whole)
    const plans = new Map(
      classes.flatMap((one) => {
        const plan = this.#bounds.planOf(one)
        return plan === null ? [] : [[one.cutJob.id, plan] as const]
      }),
    )
    const { sound } = this.#bounds
    const options = { known: this.#plans, plans, sound, weighing: true, stop: this.#stop }
    return costAt(design, this.#book, this.#engine, options).pricing?.totals.cost ?? null
  }

  /** The bounds of a way's plans, which weighing left out. Throws where one does not follow: a bug. */
  audit({ classes }: CountedWay): void {
    for (const one of classes) {
      const plan = this.#bounds.planOf(one)
      if (plan !== null) mustBeSound(one.cutJob, auditPlan(one.cutJob, plan))
    }
  }

  /** The whole of a way of which nothing is planned yet; null where it has none below this. */
  planned(way: CountedWay, below: number): Cents | null {
    do if (this.atLeast(way) >= below) return null
    while (this.learn(way))
    return this.whole(way)
  }
}
