import { describe, expect, it } from 'vitest'
import { type LumberSize, POST_HEIGHTS } from '../../core/data/index.ts'
import { adjustedValues, areaOf, rectangleOf, slendernessFor } from '../../core/rules/index.ts'

/**
 * The Southern Pine post table recomputed: a column by NDS 3.7 with Ke 1.0, wet, No.2, under 50 psf × the area; its
 * height rounded down, one more inch taken off, 14 ft at most.
 */
function computed(size: LumberSize, area: number): number {
  const values = adjustedValues(size, 'SP', { wet: true, incised: false, duration: 1, repetitive: 1 })
  const section = rectangleOf(size)
  const stress = (50 * area) / areaOf(section)
  const slenderness = slendernessFor(stress / values.compression, values.leastModulus, values.compression)
  const height = Math.min(slenderness, 50) * Math.min(section.breadth, section.depth)
  return Math.min(168, Math.floor(height) - 1)
}

describe('IRC 2021 Table R507.4, Southern Pine at 40 psf, recomputed from the NDS', () => {
  const differences: string[] = []
  for (const [size, heights] of Object.entries(POST_HEIGHTS.blocks[0]?.rows ?? {})) {
    it(`${size}: equal, or 1 in shorter in the table`, () => {
      for (const [i, tabled] of heights.entries()) {
        const area = Number(POST_HEIGHTS.columnAxis.entries[i])
        const apart = (tabled ?? 0) - computed(size as LumberSize, area)
        if (apart !== 0) differences.push(`${size} ${area}`)
        expect([0, -1], `${size} under ${area} sq ft`).toContain(apart)
      }
    })
  }

  it('differs in one of its 32 cells', () => {
    expect(differences).toEqual(['4x6 60'])
  })
})
