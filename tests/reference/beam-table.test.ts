import { describe, expect, it } from 'vitest'
import { BEAM_SPANS, type LumberSize } from '../../core/data/index.ts'
import { adjustedValues, bendingSpan, deflectionSpan, rectangleOf, shearSpan } from '../../core/rules/index.ts'

/**
 * The Southern Pine beam table recomputed cell by cell: joists that reach a quarter of their span beyond the beam load
 * it with 50 psf × 0.78125 of their span; simple span, shear at the support. Two figures are inferred from the table
 * and stand nowhere in the NDS: 1.10 on the bending of two plies, and half of the dead load in the deflection.
 */
const SHARED: { readonly [plies: number]: number } = { 1: 1, 2: 1.1, 3: 1.15 }

function computed(plies: number, size: LumberSize, joistSpan: number): number {
  const width = 0.78125 * joistSpan
  const values = adjustedValues(size, 'SP', {
    wet: true,
    incised: false,
    duration: 1,
    repetitive: SHARED[plies] ?? 1,
  })
  const section = rectangleOf(size, plies)
  const total = (50 * width) / 12
  const deflecting = (45 * width) / 12
  return Math.round(
    Math.min(
      bendingSpan(total, section, values.bending),
      shearSpan(total, section, values.shear),
      deflectionSpan(deflecting, section, values.modulus, 360),
    ),
  )
}

describe('IRC 2021 Table R507.5(1), Southern Pine at 40 psf, recomputed from the NDS', () => {
  const block = BEAM_SPANS.blocks[0]
  const apart: number[] = []
  for (const [name, cells] of Object.entries(block?.rows ?? {})) {
    const [plies, size] = name.split(/-(.*)/) as [string, LumberSize]
    it(`${name}: within 1 in, never longer than computed`, () => {
      for (const [i, tabled] of cells.entries()) {
        const span = Number(BEAM_SPANS.columnAxis.entries[i])
        const difference = (tabled ?? 0) - computed(Number(plies), size, span)
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
