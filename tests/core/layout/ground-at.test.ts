import { describe, expect, it } from 'vitest'
import type { Ground, Job } from '../../../core/job/index.ts'
import { groundAt } from '../../../core/layout/index.ts'
import { inches } from '../../../core/units/index.ts'
import { heronLane } from '../../fixtures/heron-lane.ts'

const on = (ground: Ground): Job => ({ ...heronLane, site: { ...heronLane.site, ground } })
const spot = (x: number, y: number, z: number) => ({ x: inches(x), y: inches(y), z: inches(z) })

describe('the ground under a place', () => {
  it('falls evenly along a plane, in both directions at once, and rises where the fall is negative', () => {
    const plane = on({
      kind: 'plane',
      along: { fall: inches(-2), over: inches(100) },
      away: { fall: inches(6), over: inches(120) },
    })
    expect(groundAt(plane, inches(50), inches(0)) / 32).toBeCloseTo(1, 12)
    expect(groundAt(plane, inches(0), inches(60)) / 32).toBeCloseTo(-3, 12)
    expect(groundAt(plane, inches(50), inches(60)) / 32).toBeCloseTo(-2, 12)
  })

  it('is exactly the spot’s own height at a spot', () => {
    const spots = on({ kind: 'spots', spots: [spot(0, 0, -1), spot(100, 0, -7), spot(50, 80, -13)] })
    expect(groundAt(spots, inches(100), inches(0))).toBe(inches(-7))
    expect(groundAt(spots, inches(50), inches(80))).toBe(inches(-13))
  })

  it('weighs spots by the inverse square of their distance', () => {
    const spots = on({ kind: 'spots', spots: [spot(0, 0, 0), spot(90, 0, -10)] })
    expect(groundAt(spots, inches(45), inches(0)) / 32).toBeCloseTo(-5, 12)
    // 30 in from one and 60 in from the other: weights 4 to 1
    expect(groundAt(spots, inches(30), inches(0)) / 32).toBeCloseTo(-2, 12)
  })

  it('is the one height everywhere where there is one spot', () => {
    const spots = on({ kind: 'spots', spots: [spot(10, 10, -4)] })
    expect(groundAt(spots, inches(200), inches(90))).toBeCloseTo(inches(-4), 9)
  })
})
