import { describe, expect, it } from 'vitest'
import { DIMENSION_LUMBER, type LumberSize, type Species, TIMBERS } from '../../core/data/index.ts'
import { adjustedValues } from '../../core/rules/index.ts'

const plain = { wet: false, incised: false, duration: 1, repetitive: 1 }
const SPECIES: readonly Species[] = ['SP', 'DFL', 'HF', 'SPF', 'RW', 'WC']

/** The closing test of the design values: each that a job can ask for is reached, dry and unfactored as it was read. */
describe('design values', () => {
  it.each(SPECIES)('of %s are reached for every size of dimension lumber', (species) => {
    const { byDepth, common } = DIMENSION_LUMBER[species]
    const reached = new Set<unknown>()
    for (const size of ['2x4', '2x6', '2x8', '2x10', '2x12'] as const satisfies readonly LumberSize[]) {
      const depth = size.slice(2)
      const entry = byDepth[depth] ?? byDepth.any
      reached.add(entry)
      const values = adjustedValues(size, species, plain)
      expect(values.shear, size).toBe(common.shear)
      expect(values.modulus, size).toBe({ ...common, ...entry }.modulus)
      expect(values.bending, size).toBeGreaterThanOrEqual(entry?.bending ?? Number.NaN)
    }
    for (const [depth, entry] of Object.entries(byDepth)) expect(reached, depth).toContain(entry)
  })

  it.each(SPECIES)(
    'of %s are reached for posts and timbers, the lesser compression where agencies differ',
    (species) => {
      const { values, lesserCompression } = TIMBERS[species]
      const found = adjustedValues('6x6', species, plain)
      expect(found.bending).toBe(values.bending)
      expect(found.modulus).toBe(values.modulus)
      expect(found.compression).toBe(lesserCompression ?? values.compression)
    },
  )

  it('name document, edition and clause', () => {
    for (const { source } of [...Object.values(DIMENSION_LUMBER), ...Object.values(TIMBERS)])
      for (const part of [source.document, source.edition, source.clause, source.note])
        expect(part).not.toBe('')
  })
})
