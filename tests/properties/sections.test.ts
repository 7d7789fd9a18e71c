import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { LumberSize, Species } from '../../core/data/index.ts'
import {
  adjustedValues,
  areaOf,
  columnStability,
  isIncised,
  momentOfInertia,
  rectangleOf,
  repetitiveFactor,
  type Service,
  sectionModulus,
} from '../../core/rules/index.ts'

const SPECIES: readonly Species[] = ['SP', 'DFL', 'HF', 'SPF', 'RW', 'WC']

/** Sections of one kind of lumber, each larger than the one before. */
const JOISTS: readonly LumberSize[] = ['2x4', '2x6', '2x8', '2x10', '2x12']
const POSTS: readonly LumberSize[] = ['4x4', '4x6']
const TIMBERS: readonly LumberSize[] = ['6x6', '8x8']

const services = (species: Species): readonly Service[] =>
  [true, false].flatMap((wet) =>
    [1, 1.15, 1.25].map((duration) => ({ wet, incised: isIncised(species), duration, repetitive: 1 })),
  )

/** What a member of so many plies carries: ft-lb and lb alike without their units. */
function capacitiesOf(size: LumberSize, plies: number, species: Species, service: Service) {
  const values = adjustedValues(size, species, { ...service, repetitive: repetitiveFactor(plies, 0) })
  const section = rectangleOf(size, plies)
  return {
    bending: values.bending * sectionModulus(section),
    shear: values.shear * areaOf(section),
    stiffness: values.modulus * momentOfInertia(section),
    bearing: values.compressionAcross * section.breadth,
  }
}

function columnOf(size: LumberSize, species: Species, service: Service, height: number): number {
  const values = adjustedValues(size, species, service)
  const section = rectangleOf(size)
  const least = Math.min(section.breadth, section.depth)
  return (
    columnStability(height / least, values.leastModulus, values.compression) *
    values.compression *
    areaOf(section)
  )
}

describe('a larger section', () => {
  it.each(SPECIES)(
    'of %s carries no less in bending, shear, stiffness and bearing, wet and dry',
    (species) => {
      for (const service of services(species))
        for (const sizes of [JOISTS, POSTS, TIMBERS])
          for (const [i, larger] of sizes.slice(1).entries())
            for (const plies of [1, 2, 3]) {
              const was = capacitiesOf(sizes[i] ?? larger, plies, species, service)
              const is = capacitiesOf(larger, plies, species, service)
              expect(is.bending, larger).toBeGreaterThan(was.bending)
              expect(is.shear, larger).toBeGreaterThan(was.shear)
              expect(is.stiffness, larger).toBeGreaterThan(was.stiffness)
              expect(is.bearing, larger).toBeGreaterThanOrEqual(was.bearing)
            }
    },
  )

  it.each(SPECIES)('of one ply of %s more carries no less', (species) => {
    for (const service of services(species))
      for (const size of JOISTS)
        for (const plies of [1, 2]) {
          const was = capacitiesOf(size, plies, species, service)
          const is = capacitiesOf(size, plies + 1, species, service)
          for (const key of ['bending', 'shear', 'stiffness', 'bearing'] as const)
            expect(is[key], `${plies + 1}-${size} ${key}`).toBeGreaterThan(was[key])
        }
  })

  it('of the same kind is no weaker a post at any height', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 14 * 12 }), (height) => {
        for (const species of SPECIES)
          for (const service of services(species))
            for (const sizes of [POSTS, TIMBERS])
              for (const [i, larger] of sizes.slice(1).entries())
                expect(
                  columnOf(larger, species, service, height),
                  `${larger} ${species}`,
                ).toBeGreaterThanOrEqual(columnOf(sizes[i] ?? larger, species, service, height))
      }),
    )
  })

  // NDS Supplement 2018: Southern Pine No.2 of Table 4B, 6 in wide, 1400 psi; of Table 4D, timbers, 525 psi. Short posts
  // are governed by these: 1400 × 0.8 × 19.25 in² against 525 × 0.91 × 30.25 in². A 6x6 gains where a 4x6 buckles.
  it('is weaker only where the tables give timbers less than thinner lumber: a short 6x6 against a 4x6', () => {
    const service = { wet: true, incised: false, duration: 1, repetitive: 1 }
    expect(columnOf('4x6', 'SP', service, 0)).toBeCloseTo(1400 * 0.8 * 19.25, 6)
    expect(columnOf('6x6', 'SP', service, 0)).toBeCloseTo(525 * 0.91 * 30.25, 6)
    for (const species of SPECIES)
      for (let height = 8 * 12; height <= 14 * 12; height += 1)
        expect(columnOf('6x6', species, service, height), species).toBeGreaterThan(
          columnOf('4x6', species, service, height),
        )
  })

  it('of the same lumber is no weaker a column', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 49, noNaN: true }),
        fc.double({ min: 1.001, max: 3, noNaN: true }),
        (slenderness, larger) => {
          const stability = columnStability(slenderness, 400_000, 1000)
          expect(columnStability(slenderness / larger, 400_000, 1000)).toBeGreaterThanOrEqual(stability)
          expect(stability).toBeGreaterThan(0)
          expect(stability).toBeLessThanOrEqual(1)
        },
      ),
    )
  })
})
