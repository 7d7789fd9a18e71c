import { describe, expect, it } from 'vitest'
import {
  adjust,
  beamStability,
  bearingAreaFactor,
  bearingStress,
  bendingSlenderness,
  bendingSpan,
  bendingStress,
  columnStability,
  criticalBending,
  criticalBuckling,
  deflectionSpan,
  momentOfInertia,
  rectangleOf,
  sectionModulus,
  shearSpan,
  shearStress,
  sizeFactors,
  slendernessFor,
  wetDimension,
} from '../../core/rules/index.ts'
import { apart, within } from './close-to.ts'

const SOURCE = { document: '', edition: '', clause: '', confidence: 'verified', note: '' } as const
const FOUR_BY_EIGHT = { breadth: 3.5, depth: 7.25 }

describe('bending, shear, deflection and bearing against worked examples', () => {
  // J. M. Gere and B. J. Goodno, Mechanics of Materials, 7th ed., solution 5.6-7.
  it('chooses a 2x10 for 10 ft 6 in at 16 in under 120 psf and 1,350 psi, example SZ-01', () => {
    const load = (120 * 16) / 144
    const moment = (load * 126 ** 2) / 8
    within(moment, 26_460, 0.001)
    within(moment / 1350, 19.6, 0.001)
    const sizes = (['2x6', '2x8', '2x10', '2x12'] as const).filter(
      (size) => bendingStress(moment, rectangleOf(size)) <= 1350,
    )
    expect(sizes[0]).toBe('2x10')
  })

  // CE 479 Fall 2006, Wood Design Example (course handout), NDS 2001: Douglas fir-larch No. 1, 2x8, wet, snow.
  it('keeps CM 0.85 in bending where Fb × CF is over 1,150 psi, example NB-01', () => {
    const cf = sizeFactors(false, 2, 8)
    const base = {
      bending: 1000,
      tension: 675,
      shear: 180,
      compressionAcross: 625,
      compression: 1500,
      modulus: 1_700_000,
      leastModulus: 620_000,
      gravity: 0.5,
    }
    expect(base.bending * cf.bending).toBe(1200)
    const wet = wetDimension(true, 1200, 1500)
    const values = adjust(base, SOURCE, wet, cf, { wet: true, incised: false, duration: 1.15, repetitive: 1 })
    apart(values.bending, 1173, 0.6)
    apart(values.tension, 932, 0.6)
    apart(values.shear, 201, 0.6)
  })

  it('drops CM in bending where Fb × CF is 1,150 psi or less', () => {
    expect(wetDimension(true, 1150, 800)).toMatchObject({ bending: 1, compression: 0.8 })
    expect(wetDimension(true, 1151, 750)).toMatchObject({ bending: 0.85, compression: 1 })
    expect(wetDimension(false, 1500, 1500).modulus).toBe(1)
  })

  // D. E. Breyer et al., Design of Wood Structures, problems 6.1 and 6.2: 4x8, 8 ft, 2,000 lb at midspan.
  it('passes a 4x8 dry in bending and fails it wet, example NB-03', () => {
    within(sectionModulus(FOUR_BY_EIGHT), 30.66, 0.003)
    within(momentOfInertia(FOUR_BY_EIGHT), 111.1, 0.003)
    const stress = bendingStress((2000 * 96) / 4, FOUR_BY_EIGHT)
    within(stress, 1566, 0.003)
    within(shearStress(1000, FOUR_BY_EIGHT), 59.1, 0.003)
    const cf = sizeFactors(false, 4, 8).bending
    within(1000 * 1.25 * cf, 1625, 0.003)
    const wet = wetDimension(true, 1000 * cf, 1500)
    within(1000 * 1.25 * cf * wet.bending, 1381, 0.003)
    within(180 * 1.25, 225, 0.003)
    within(180 * 1.25 * wet.shear, 218, 0.003)
    expect(1_700_000 * wet.modulus).toBe(1_530_000)
    expect(stress <= 1625).toBe(true)
    expect(stress <= 1381.25).toBe(false)
    within((1600 * 96 ** 3) / (48 * 1_700_000 * momentOfInertia(FOUR_BY_EIGHT)), 0.156, 0.003)
    within((1600 * 96 ** 3) / (48 * 1_530_000 * momentOfInertia(FOUR_BY_EIGHT)), 0.173, 0.003)
  })

  // Breyer, problem 6.3: le and RB as printed; FbE and CL recomputed only.
  it('finds the beam stability factor of a 4x8 braced at 4 ft, example NB-04', () => {
    within(1.11 * 48, 53.28, 0.002)
    const slenderness = bendingSlenderness(1.11 * 48, FOUR_BY_EIGHT)
    within(slenderness, 5.62, 0.002)
    within(criticalBending(slenderness, 620_000), 23_594, 0.002)
    within(beamStability(slenderness, 620_000, 1625), 0.996, 0.002)
  })

  // US Department of Housing and Urban Development, Residential Structural Design Guide, 2nd ed., example 5.1.
  it('finds the four spans of a hem-fir 2x8 at 16 in, deflection governing, example NB-06', () => {
    const section = rectangleOf('2x8')
    const total = (40 * 16) / 144
    const bending = 975 * 1.2 * 1.15
    within(sectionModulus(section), 13.14, 0.003)
    within(momentOfInertia(section), 47.63, 0.003)
    within(bending, 1345, 0.003)
    within(bendingSpan(total, section, bending) / 12, 14.87, 0.003)
    within(shearSpan(total, section, 150) / 12, 40.8, 0.003)
    within((2 * 405 * section.breadth * 2) / total / 12, 45.6, 0.003)
    within(deflectionSpan((30 * 16) / 144, section, 1_500_000, 360) / 12, 13.8, 0.003)
  })

  // Own case from the NDS equations, recomputed only: three plies of Douglas fir-larch No. 2 2x10 over 8 ft.
  it('fails a three-ply 2x10 in bending by 5 percent, shear, deflection and bearing passing, example NB-07', () => {
    const section = rectangleOf('2x10', 3)
    within(sectionModulus(section), 64.17, 0.002)
    within(momentOfInertia(section), 296.79, 0.002)
    const moment = ((800 / 12) * 96 ** 2) / 8
    within(moment / 12, 6400, 0.002)
    const stress = bendingStress(moment, section)
    within(stress, 1196.8, 0.002)
    within(stress / (900 * sizeFactors(false, 2, 10).bending * 1.15), 1.051, 0.002)
    within(shearStress(3200, section), 115.3, 0.002)
    // a depth away from the support, as the example has it; the program takes the shear at the support
    within(shearStress(3200 - (800 / 12) * section.depth, section), 93.1, 0.002)
    within(bearingStress(3200, section.breadth, 3.5), 203.2, 0.002)
    const deflection = (5 * (640 / 12) * 96 ** 4) / (384 * 1_600_000 * momentOfInertia(section))
    within(deflection, 0.1242, 0.002)
    expect(deflection).toBeLessThan(96 / 360)
  })

  // NDS 3.10.4: 3/8 in is added to the bearing length (read at web.mst.edu/jthomas); numbers recomputed only.
  it('enlarges short bearings away from the end, example BN-01', () => {
    for (const [length, factor] of [
      [1.5, 1.25],
      [2, 1.1875],
      [3, 1.125],
      [4, 1.09375],
      [6, 1],
    ] as const) {
      within(bearingAreaFactor(length, 12), factor, 0.001)
    }
    within(bearingAreaFactor(3.5, 12), 1.1071, 0.001)
    const across = 565 * wetDimension(true, 1000, 1000).compressionAcross
    within(across * bearingAreaFactor(3.5, 12), 419.1, 0.001)
    within(across * bearingAreaFactor(3.5, 12) * 4.5 * 3.5, 6601, 0.001)
    within(across * bearingAreaFactor(3.5, 0) * 4.5 * 3.5, 5962, 0.001)
  })
})

describe('columns against worked examples', () => {
  // US HUD, Residential Structural Design Guide, 2nd ed. (2017), example 5.6, inputs as quoted in a public repository;
  // its printed results were not seen; recomputed by two programs.
  it('a 4x4 of spruce-pine-fir, 7.3 ft, example CO-01', () => {
    const starred = 1150 * sizeFactors(false, 4, 4).compression
    const stability = columnStability((7.3 * 12) / 3.5, 510_000, starred)
    within(stability, 0.4378, 0.001)
    within(stability * starred, 579, 0.001)
    within(4800 / 12.25 / (stability * starred), 0.6767, 0.001)
    within(stability * starred * 12.25, 7093, 0.001)
  })

  // J. M. Gere and B. J. Goodno, Mechanics of Materials, 7th ed., solution 11.9-31: FcE = 0.3 E / (le/d)².
  it('a 4x8 of three lengths, example CO-02', () => {
    const leastModulus = (0.3 * 1_300_000) / 0.822
    for (const [feet, slenderness, ratio, stability, kips] of [
      [6, 20.57, 0.9216, 0.6621, 16.8],
      [8, 27.43, 0.5184, 0.4464, 11.3],
      [10, 34.29, 0.3318, 0.305, 7.7],
    ] as const) {
      const found = (feet * 12) / 3.5
      within(found, slenderness, 0.0006)
      within(criticalBuckling(found, leastModulus) / 1000, ratio, 0.0006)
      const cp = columnStability(found, leastModulus, 1000)
      within(cp, stability, 0.0006)
      apart((cp * 1000 * 3.5 * 7.25) / 1000, kips, 0.05)
    }
  })

  // The same, solution 11.9-35: the greatest height of a 4x4 under 8,000 lb.
  it('the greatest height for a load, example CO-04', () => {
    const stability = 8000 / 12.25 / 900
    within(stability, 0.72562, 0.0008)
    const slenderness = slendernessFor(stability, (0.3 * 1_500_000) / 0.822, 900)
    within(slenderness, 21.23, 0.0008)
    within(slenderness * 3.5, 74.3, 0.0008)
    within(criticalBuckling(slenderness, (0.3 * 1_500_000) / 0.822) / 900, 1.1094, 0.0008)
  })

  // A. Aghayere and J. Vigil, Structural Wood Design, Wiley 2007, example 5.7, inputs as quoted in a public repository;
  // printed results not seen, recomputed.
  it('a nailed column of three 2x6, which buckles across its plies, example CO-06', () => {
    const starred = 1500 * sizeFactors(false, 2, 6).compression
    const across = columnStability(144 / 4.5, 620_000, starred, 0.6)
    within(across, 0.168, 0.002)
    within(columnStability(144 / 4.5, 620_000, starred), 0.28, 0.002)
    within(columnStability(144 / 5.5, 620_000, starred), 0.398, 0.002)
    within(across * starred * 4.5 * 5.5, 6858, 0.002)
  })

  it('are not allowed more slender than 50', () => {
    expect(columnStability(50.01, 510_000, 1000)).toBe(0)
    expect(columnStability(50, 510_000, 1000)).toBeGreaterThan(0)
  })
})
