import { type FramedJob, frameJob } from '../design.ts'
import type { Job } from '../job/index.ts'
import { feet, ticks } from '../units/index.ts'
import { withChoice } from './choice.ts'
import { EFFORT, type Effort } from './effort.ts'
import type { PartsOnce } from './parts-once.ts'
import type { Choice } from './types.ts'

/** Far above the ground, so that no deck taken off for its parts has a post of no length. */
const RAISED = feet(8)

/** Frames a deck for what its parts cost at least, where its height adds nothing to the hours. */
export class BoundFrames {
  readonly job: Job
  readonly effort: Effort
  readonly #parts: PartsOnce

  constructor(job: Job, effort: Effort, parts: PartsOnce) {
    this.job = job
    this.effort = effort
    this.#parts = parts
  }

  /** Null where it cannot be framed so. */
  framed(choice: Choice): FramedJob | null {
    return this.#frame(this.job, choice)
  }

  /** The same high above the ground. */
  raised(choice: Choice): FramedJob | null {
    const { size } = this.job
    return this.#frame({ ...this.job, size: { ...size, height: ticks(size.height + RAISED) } }, choice)
  }

  #frame(job: Job, choice: Choice): FramedJob | null {
    this.effort.addToBounds(EFFORT.frame)
    const sized = withChoice({ ...job, work: { ...job.work, heightAndSize: false } }, choice)
    const made = frameJob(sized, this.#parts.of)
    if (!made.ok) return null
    this.effort.addToBounds(made.value.frame.members.length * EFFORT.framedMember)
    return made.value
  }
}
