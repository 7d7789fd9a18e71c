import { BAG_YIELD_THOUSANDTHS } from '../data/index.ts'
import type { Footing, Frame } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import type { Pad, StairFooting } from '../stairs/index.ts'
import { inches, TICKS_PER_FOOT } from '../units/index.ts'
import type { Volumes } from './types.ts'

/** Gravel under a pad, tamped: common practice, no source. */
export const UNDER_PAD = inches(4)

/** What stands in the ground: its measures, by whatever it carries. */
type InGround = Pick<
  Footing,
  'id' | 'tube' | 'tubeLength' | 'base' | 'baseThickness' | 'depth' | 'holeDiameter'
>

/** Concrete of stairs, beside that of the deck's footings. */
export interface StairGround {
  readonly footings: readonly StairFooting[]
  readonly pad: Pad | null
}

/**
 * What every hole holds and gives, in cubic feet; bags are rounded up once, for everything poured together. A pad counts
 * as concrete; what is dug for it is a task of its own and comes away as spoil.
 */
export function volumesOf(job: Job, frame: Frame, stairs: readonly StairGround[] = []): Volumes {
  const holesDug: readonly InGround[] = [...frame.footings, ...stairs.flatMap(({ footings }) => footings)]
  const concreteEach = holesDug.map((footing) => ({ footingId: footing.id, cubicFeet: concreteIn(footing) }))
  const concrete = sum(holesDug.map(concreteIn)) + sum(stairs.map(({ pad }) => padVolume(pad)))
  const holes = sum(holesDug.map((footing) => cylinder(footing.holeDiameter, footing.depth)))
  const standing = sum(holesDug.map(underGround))
  const spoilInPlace = standing + sum(stairs.map(({ pad }) => dugForPad(pad)))
  return {
    concreteEach,
    concrete,
    holes,
    backfill: holes - standing,
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

function padVolume(pad: Pad | null): number {
  return pad === null ? 0 : (pad.width * pad.depth * pad.thickness) / TICKS_PER_FOOT ** 3
}

/** Pad and the gravel under it, level with the ground, in cubic feet. */
export function dugForPad(pad: Pad | null): number {
  return pad === null ? 0 : (pad.width * pad.depth * (pad.thickness + UNDER_PAD)) / TICKS_PER_FOOT ** 3
}

function concreteIn(footing: InGround): number {
  return cylinder(footing.tube, footing.tubeLength) + baseOf(footing)
}

function underGround(footing: InGround): number {
  return cylinder(footing.tube, footing.depth - footing.baseThickness) + baseOf(footing)
}

function baseOf(footing: InGround): number {
  return cylinder(footing.base, footing.baseThickness)
}

/** Cubic feet of a cylinder; its walls take no volume. */
function cylinder(diameter: number, length: number): number {
  return (Math.PI / 4) * (diameter / TICKS_PER_FOOT) ** 2 * (length / TICKS_PER_FOOT)
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, one) => total + one, 0)
}
