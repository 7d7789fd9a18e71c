import { describe, expect, it } from 'vitest'
import {
  continuousEnvelope,
  footingDiameter,
  footingSide,
  jointedEnvelope,
  tributaryLengths,
} from '../../core/rules/index.ts'
import { within } from './close-to.ts'

// Own case, recomputed only; reactions by the two-span coefficients of AWC Design Aid 6: a deck 16 ft along the house
// and 12 ft out, one beam of two 8 ft spans at its edge, 50 psf, soil 1,500 psf.
describe('loads of a row of posts, example PF-01', () => {
  const model = { length: 192, supports: [0, 96, 192], stiffness: 1e8 }
  const load = { dead: 300 / 12, live: 0 }

  it('by tributary area: 2,400 lb in the middle, 1,200 lb at the ends', () => {
    expect(tributaryLengths(0, [0, 96, 192], 192)).toEqual([48, 96, 48])
    const jointed = jointedEnvelope(model, load)
    for (const [i, expected] of [1200, 2400, 1200].entries())
      within(jointed.supports[i]?.greatest ?? 0, expected, 1e-9)
    within((footingSide(2400, 1500) / 12) ** 2, 1.6, 0.001)
    within(footingSide(2400, 1500), 15.18, 0.001)
    within(footingDiameter(2400, 1500), 17.13, 0.001)
  })

  it('by a continuous beam: 25 percent more in the middle', () => {
    const continuous = continuousEnvelope(model, load)
    for (const [i, expected] of [900, 3000, 900].entries())
      within(continuous.supports[i]?.greatest ?? 0, expected, 1e-9)
    within(footingDiameter(3000, 1500), 19.15, 0.001)
  })
})
