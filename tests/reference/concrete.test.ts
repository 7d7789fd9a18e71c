import { describe, expect, it } from 'vitest'
import { designJob } from '../../core/design.ts'
import { concreteWays, SAMPLE_BOOK } from '../../core/pricing/index.ts'
import { inches } from '../../core/units/index.ts'
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

describe('concrete against published figures', () => {
  // colecountyconcrete.com, estimating page: ten piers 1 ft across, 3 ft deep; the page prints 0.90 from a rounded 0.09
  it('gives ten piers of 12 in and 3 ft 0.873 cubic yards', () => {
    expect((10 * pier(12, 36)) / 27).toBeCloseTo(0.8727, 4)
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
  it('adds the waste before it counts yards, as the Navy’s training course does', () => {
    const { cubicFeet, readyMix } = concreteWays(heronLane, { inPlace: 527_400, bags: 967 }, SAMPLE_BOOK)
    expect(cubicFeet).toBeCloseTo(580.14, 6)
    expect(cubicFeet / 27).toBeCloseTo(21.49, 2)
    // the course orders the next whole yard; the sample plant delivers by the quarter
    expect(readyMix?.yards).toBe(21_500)
  })
})
