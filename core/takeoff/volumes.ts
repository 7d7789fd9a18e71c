import { BAG_YIELD_THOUSANDTHS } from '../data/index.ts'
import type { Footing, Frame } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import { TICKS_PER_FOOT } from '../units/index.ts'
import type { Volumes } from './types.ts'

/** What every hole holds and gives, in cubic feet; bags are rounded up once, for all footings together. */
export function volumesOf(job: Job, frame: Frame): Volumes {
  const concreteEach = frame.footings.map((footing) => ({
    footingId: footing.id,
    cubicFeet: cylinder(footing.tube, footing.tubeLength) + baseOf(footing),
  }))
  const concrete = sum(concreteEach.map((one) => one.cubicFeet))
  const holes = sum(frame.footings.map((footing) => cylinder(footing.holeDiameter, footing.depth)))
  const spoilInPlace = sum(frame.footings.map(underGround))
  return {
    concreteEach,
    concrete,
    holes,
    backfill: holes - spoilInPlace,
    spoilInPlace,
    spoilLoose: spoilInPlace * (1 + job.ground.swell / 10_000),
    bags: bagsOf(concrete, job.ground.concreteWaste),
  }
}

/** Bags = volume × (1 + waste) ÷ yield, rounded up past the noise of floating point. */
export function bagsOf(cubicFeet: number, waste: number): number {
  const withWaste = cubicFeet * (1 + waste / 10_000)
  return Math.ceil((withWaste * 1000) / BAG_YIELD_THOUSANDTHS - 1e-9)
}

function underGround(footing: Footing): number {
  return cylinder(footing.tube, footing.depth - footing.baseThickness) + baseOf(footing)
}

function baseOf(footing: Footing): number {
  return cylinder(footing.base, footing.baseThickness)
}

/** Cubic feet of a cylinder; its walls take no volume. */
function cylinder(diameter: number, length: number): number {
  return (Math.PI / 4) * (diameter / TICKS_PER_FOOT) ** 2 * (length / TICKS_PER_FOOT)
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, one) => total + one, 0)
}
