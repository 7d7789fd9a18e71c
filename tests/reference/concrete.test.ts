import { describe, expect, it } from 'vitest'
import { designJob } from '../../core/design.ts'
import { concreteWays, SAMPLE_BOOK } from '../../core/pricing/index.ts'
import type { Pad } from '../../core/stairs/index.ts'
import { volumesOf } from '../../core/takeoff/volumes.ts'
import { inches, ticks } from '../../core/units/index.ts'
import { heronLane } from '../fixtures/heron-lane.ts'

/** Cubic feet of one pier that is a tube alone, flush with the ground. */
function pier(diameter: number, depth: number): number {
  const { site, ground } = heronLane
  const made = designJob(
    {
      ...heronLane,
      site: { ...site, frostDepth: inches(depth) },
      ground: { ...ground, tube: inches(diameter), base: inches(0), projection: inches(0) },
    },
    [],
  )
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value.takeoff.volumes.concreteEach[0]?.cubicFeet ?? 0
}

/** Cubic feet that slabs of so many feet add to a deck's concrete. */
function slabs(...sizes: readonly (readonly [number, number, number])[]): number {
  const made = designJob(heronLane, [])
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  const { job, frame } = made.value
  const of = (pad: Pad | null) => volumesOf(job, frame, [{ footings: [], pad }]).concrete
  return sizes.reduce((sum, [width, depth, thickness]) => {
    const pad = {
      corner: { x: ticks(0), y: ticks(0) },
      width: inches(Math.round(width * 12)),
      depth: inches(Math.round(depth * 12)),
      thickness: inches(Math.round(thickness * 12)),
      landing: ticks(0),
    }
    return sum + of(pad) - of(null)
  }, 0)
}

describe('concrete against published figures', () => {
  // colecountyconcrete.com, estimating page: ten piers 1 ft across, 3 ft deep; the page prints 0.90 from a rounded 0.09
  it('gives ten piers of 12 in and 3 ft 0.873 cubic yards, example CN-03', () => {
    expect((10 * pier(12, 36)) / 27).toBeCloseTo(0.8727, 4)
  })

  // the same page: a walk of 4 by 30 ft, 4 in thick; it prints 1.52 from a rounded 0.34 ft
  it('gives a walk of 4 by 30 ft, 4 in thick, 1.481 cubic yards, example CN-03', () => {
    expect(slabs([4, 30, 4 / 12]) / 27).toBeCloseTo(1.481, 3)
  })

  // US Navy, Engineering Aid, NAVEDTRA 14070, chapter 5, in exact feet and inches: walls 8 in thick and 2 ft high, footings
  // 2 by 1 ft under them, a slab 4 in thick
  it('gives walls, footings and slab of the Navy’s training course 528.59 cubic feet, example CN-01', () => {
    const walls = [32, 32, 18 + 8 / 12, 18 + 8 / 12].map((length) => [length, 8 / 12, 2] as const)
    const footings = [33 + 4 / 12, 33 + 4 / 12, 17 + 4 / 12, 17 + 4 / 12].map(
      (length) => [length, 2, 1] as const,
    )
    const slab = [18 + 8 / 12, 30 + 8 / 12, 4 / 12] as const
    expect(slabs(...walls, ...footings, slab)).toBeCloseTo(528.59, 2)
  })

  // volume of fibre form tubes by inside diameter, cu ft per foot, as published tables give them
  it.each([
    [8, 0.3491],
    [10, 0.5454],
    [12, 0.7854],
    [14, 1.069],
    [16, 1.3963],
    [18, 1.7671],
    [20, 2.1817],
    [28, 4.2761],
  ])('a foot of tube %i in across holds %d cu ft', (diameter, cubicFeet) => {
    expect(pier(diameter, 48) / 4).toBeCloseTo(cubicFeet, 3)
  })

  // US Navy, Engineering Aid, NAVEDTRA 14070, chapter 5: 527.4 cu ft and 10 % are 580.14 cu ft, 21.49 cubic yards
  it('adds the waste before it counts yards, as the Navy’s training course does, example CN-01', () => {
    const { cubicFeet, readyMix } = concreteWays(heronLane, { inPlace: 527_400, bags: 967 }, SAMPLE_BOOK)
    expect(cubicFeet).toBeCloseTo(580.14, 6)
    expect(cubicFeet / 27).toBeCloseTo(21.49, 2)
    // the sample plant delivers by the quarter of a yard; one that delivers whole yards brings 22
    expect(readyMix?.yards).toBe(21_500)
    const whole = SAMPLE_BOOK.goods.map((good) =>
      good.sku === 'concrete-ready-mix' ? { ...good, pack: 1000 } : good,
    )
    const byYards = concreteWays(heronLane, { inPlace: 527_400, bags: 967 }, { ...SAMPLE_BOOK, goods: whole })
    expect(byYards.readyMix?.yards).toBe(22_000)
  })
})
