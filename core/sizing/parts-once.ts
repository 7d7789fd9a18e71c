import { type FramedZone, frameZones, levelDimensions } from '../frame/index.ts'
import type { Job } from '../job/index.ts'

/**
 * Frames the parts of a deck once for all ways whose parts are the same: what stands under the beams, and how deep they
 * are, changes none of their joists, boards and courses, and they are framed without knowing it.
 */
export class PartsOnce {
  readonly #base: Job
  readonly #made = new Map<string, readonly FramedZone[]>()

  constructor(base: Job) {
    this.#base = base
  }

  readonly of: typeof frameZones = (job, _, layout, laid) => {
    const own = this.#without(job)
    const { size, frame } = own
    const key = JSON.stringify([size, frame, layout.zones, layout.levels])
    const found = this.#made.get(key) ?? frameZones(own, levelDimensions(own, layout), layout, laid)
    this.#made.set(key, found)
    return found
  }

  /** The base with what parts are framed by alone from a job. */
  #without({ size, frame: { joists, beams } }: Job): Job {
    const { frame } = this.#base
    const beam = (side: 'front' | 'rear') => {
      const { plies, setback, setbackStated } = beams[side]
      return { ...frame.beams[side], plies, setback, setbackStated }
    }
    return {
      ...this.#base,
      size,
      frame: { ...frame, joists, beams: { front: beam('front'), rear: beam('rear') } },
    }
  }
}
