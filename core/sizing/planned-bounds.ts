import type { CutJob } from '../cutting/index.ts'
import type { Costed } from '../estimate.ts'
import type { Design } from '../estimate-types.ts'
import type { Job } from '../job/index.ts'
import { type PriceBook, productKey } from '../pricing/index.ts'
import { leastLumber, sharesOf } from './least-cost.ts'
import type { BeamChoice, Choice } from './types.ts'

/**
 * What plans that were made say of others: by how much the bound of a plan lies above the least price of its lengths,
 * in cents, joints counted. A like cutting job costs at least as much more.
 */
export class PlannedBounds {
  readonly #job: Job
  readonly #book: PriceBook
  readonly #byContent = new Map<string, number>()
  readonly #byPart = new Map<string, number>()

  constructor(job: Job, book: PriceBook) {
    this.#job = job
    this.#book = book
  }

  learn(choice: Choice, design: Design, costed: Costed): void {
    const least = leastLumber(design.job, this.#book, design.takeoff)
    for (const { product, cutJob } of costed.classes) {
      const plan = costed.plans.find((one) => one.plan.jobId === cutJob.id)?.plan
      // no plan: these pieces cannot be cut from what is sold
      if (plan !== undefined && !countsMoneyAlone(cutJob)) continue
      const beyond =
        plan === undefined
          ? Number.POSITIVE_INFINITY
          : Math.max(0, plan.bound - (least.get(productKey(product)) ?? 0))
      this.#byContent.set(contentOf(cutJob), beyond)
      const part = partOf(design.job, choice, product.size)
      if (part !== null) this.#byPart.set(part, beyond)
    }
  }

  /** By how much the lumber of one cutting job costs more than its lengths at least do, where its plan is known. */
  beyond(cutJob: CutJob): number {
    return this.#byContent.get(contentOf(cutJob)) ?? 0
  }

  /** By how much a choice costs more than its parts at least do, as far as plans of the same parts are known. */
  beyondLeast(choice: Choice): number {
    let sum = 0
    const sizes = new Set([
      this.#job.decking.size,
      choice.joist.size,
      choice.front.size,
      ...(choice.rear === null ? [] : [choice.rear.size]),
    ])
    for (const size of sizes) {
      const part = partOf(this.#job, choice, size)
      sum += part === null ? 0 : (this.#byPart.get(part) ?? 0)
    }
    // joints are paid in part as labour, which is not taxed
    return sum * sharesOf(this.#job).beyond
  }
}

/** Whether a plan's bound holds for money alone: preferences may be traded for money, and count in the bound. */
function countsMoneyAlone(cutJob: CutJob): boolean {
  return (
    cutJob.handling === 0 &&
    cutJob.runs.every((run) => run.points.every((point) => point.excess === null || point.excess === 0))
  )
}

function contentOf(cutJob: CutJob): string {
  return JSON.stringify(cutJob)
}

/**
 * What the cutting job of a size depends on, where it is made of whole parts of a choice; posts share theirs with
 * nothing else and are not kept.
 */
function partOf(job: Job, { joist, front, rear }: Choice, size: string): string | null {
  const beam = (one: BeamChoice | null) => (one?.size === size ? `${one.plies} ${one.posts}` : '')
  const parts = [
    job.decking.size === size ? `decking over joists at ${joist.spacing}` : '',
    joist.size === size ? `joists at ${joist.spacing}` : '',
    front.size === size ? `front ${beam(front)}` : '',
    rear?.size === size ? `rear ${beam(rear)}` : '',
  ].filter((part) => part !== '')
  return parts.length === 0 ? null : `${size}: ${parts.join(', ')}`
}
