import { type FootingLoad, footingLoads, stairFootingLoads } from '../checks/index.ts'
import type { Design } from '../estimate-types.ts'
import type { Ticks } from '../units/index.ts'
import { allHoles, type Hole } from './holes.ts'

/** One hole as it is dug, formed and poured, with what it carries and what stands on it. */
export interface FootingRow extends Pick<Hole, 'number' | 'x' | 'y' | 'under' | 'post'> {
  readonly footingId: string
  /** null where nothing reckons what it carries */
  readonly carries: FootingLoad | null
  /** above the datum, ticks */
  readonly groundLevel: number
  readonly bottomLevel: number
  readonly topOfConcrete: number
  readonly depth: Ticks
  readonly kind: 'tube' | 'tube on a base'
  readonly tube: Ticks
  readonly tubeLength: Ticks
  readonly base: Ticks
  readonly baseThickness: Ticks
  readonly holeDiameter: Ticks
  readonly cubicFeet: number
}

/** The hole schedule: place, levels, sizes, concrete, load and soil pressure of every footing. */
export function footingSchedule(design: Design): readonly FootingRow[] {
  const { job, layout, frame, stairs, takeoff } = design
  const loads = new Map(
    [...footingLoads(job, layout, frame, stairs), ...stairFootingLoads(job, stairs)].map((load) => [
      load.footingId,
      load,
    ]),
  )
  const volumes = new Map(takeoff.volumes.concreteEach.map((one) => [one.footingId, one.cubicFeet]))
  return allHoles(design).map((footing) => ({
    footingId: footing.id,
    carries: loads.get(footing.id) ?? null,
    number: footing.number,
    x: footing.x,
    y: footing.y,
    under: footing.under,
    post: footing.post,
    groundLevel: footing.ground,
    bottomLevel: footing.ground - footing.depth,
    topOfConcrete: footing.topOfConcrete,
    depth: footing.depth,
    kind: footing.base > 0 ? 'tube on a base' : 'tube',
    tube: footing.tube,
    tubeLength: footing.tubeLength,
    base: footing.base,
    baseThickness: footing.baseThickness,
    holeDiameter: footing.holeDiameter,
    cubicFeet: volumes.get(footing.id) ?? 0,
  }))
}
