import { describe, expect, it } from 'vitest'
import { BEAM_SPANS, type LumberSize } from '../../core/data/index.ts'
import { beamSpan } from './recomputed.ts'

describe('IRC 2021 Table R507.5(1), Southern Pine at 40 psf, recomputed from the NDS', () => {
  const block = BEAM_SPANS.blocks[0]
  const apart: number[] = []
  for (const [name, cells] of Object.entries(block?.rows ?? {})) {
    const [plies, size] = name.split(/-(.*)/) as [string, LumberSize]
    it(`${name}: within 1 in, never longer than computed`, () => {
      for (const [i, tabled] of cells.entries()) {
        const span = Number(BEAM_SPANS.columnAxis.entries[i])
        const difference = (tabled ?? 0) - beamSpan(Number(plies), size, span)
        apart.push(difference)
        expect([0, -1], `${name}, joists to ${span} ft`).toContain(difference)
      }
    })
  }

  it('is equal in 82 of its 84 cells', () => {
    expect(apart.length).toBe(84)
    expect(apart.filter((difference) => difference === 0).length).toBe(82)
  })
})
