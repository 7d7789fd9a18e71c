import { describe, expect, it } from 'vitest'
import { type LumberSize, POST_HEIGHTS } from '../../core/data/index.ts'
import { postHeight } from './recomputed.ts'

describe('IRC 2021 Table R507.4, Southern Pine at 40 psf, recomputed from the NDS', () => {
  const differences: string[] = []
  for (const [size, heights] of Object.entries(POST_HEIGHTS.blocks[0]?.rows ?? {})) {
    it(`${size}: equal, or 1 in shorter in the table`, () => {
      for (const [i, tabled] of heights.entries()) {
        const area = Number(POST_HEIGHTS.columnAxis.entries[i])
        const apart = (tabled ?? 0) - postHeight(size as LumberSize, area)
        if (apart !== 0) differences.push(`${size} ${area}`)
        expect([0, -1], `${size} under ${area} sq ft`).toContain(apart)
      }
    })
  }

  it('differs in one of its 32 cells', () => {
    expect(differences).toEqual(['4x6 60'])
  })
})
