import { type FootingLoad, footingLoads } from '../checks/index.ts'
import type { Design } from '../estimate-types.ts'
import type { Ticks } from '../units/index.ts'

/** One hole as it is dug, formed and poured, with what it carries. */
export interface FootingRow extends FootingLoad {
  readonly number: number
  readonly x: Ticks
  readonly y: Ticks
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
export function footingSchedule({ job, layout, frame, takeoff }: Design): readonly FootingRow[] {
  const loads = new Map(footingLoads(job, layout, frame).map((load) => [load.footingId, load]))
  const volumes = new Map(takeoff.volumes.concreteEach.map((one) => [one.footingId, one.cubicFeet]))
  return frame.footings.flatMap((footing) => {
    const load = loads.get(footing.id)
    if (load === undefined) return []
    return [
      {
        ...load,
        number: footing.number,
        x: footing.x,
        y: footing.y,
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
      },
    ]
  })
}
