import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import { countOf, ofRole } from './joint-decks.ts'

// 24 ft × 12 ft; the right 8 ft are a part of their own, joists away from the house as in the rest: the two meet along a
// joist at 16 ft.
const deckOf = (seams: string) => {
  const made = design({
    size: { width: '24 ft', depth: '12 ft', height: '42 in' },
    shape: { zones: "16', 0, 8', 12': away", seams },
  })
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value
}

describe('parts that run side by side', () => {
  it('share one end joist, inside the earlier part', () => {
    const { frame } = deckOf('single')
    expect(ofRole(frame, 'end joist')).toHaveLength(3)
    expect(countOf(frame, 'joist pair')).toBe(0)
  })

  it('have each its own where that is asked, face to face on the line where they meet', () => {
    const { frame, takeoff } = deckOf('doubled')
    const beside = ofRole(frame, 'end joist').filter(({ box }) => Math.abs(box.x0 / 32 - 191) < 2)
    // 16 ft is 192 in
    expect(beside.map(({ box }) => [box.x0 / 32, box.x1 / 32])).toEqual([
      [190.5, 192],
      [192, 193.5],
    ])
    expect(countOf(frame, 'joist pair')).toBe(1)
    // both run from the ledger to the rim's back, 144 − 1.5 at most: 8 spaces of 16 in and two rows of 9 nails
    const nails = takeoff.goods.find(({ sku }) => sku === 'nail-10d-box')
    expect(nails?.cause.rule).toContain('joist pair: 18 nails')
  })
})
