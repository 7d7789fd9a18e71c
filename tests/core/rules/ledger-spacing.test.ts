import { describe, expect, it } from 'vitest'
import { ledgerSpacing } from '../../../core/rules/index.ts'
import { feet, inches, psf } from '../../../core/units/index.ts'

describe('spacing of ledger fasteners', () => {
  it('takes a joist span of 11 ft 3 in up to the 12 ft column', () => {
    const found = ledgerSpacing(inches(135), 'lag', 'up to 1/2 in', psf(40))
    expect(found).toMatchObject({ kind: 'row', value: 15, column: 12, exact: false })
    expect(found.sentence).toContain('joist span 12 ft column (taken up from 11.25)')
  })

  it('takes a load of 45 psf up to the 60 psf page', () => {
    expect(ledgerSpacing(feet(10), 'bolt', 'up to 1/2 in', psf(45))).toMatchObject({
      value: 25,
      at: [60],
      exact: false,
    })
  })

  it('is outside the table for a lag screw through 1 in of sheathing, a span over 18 ft and a load over 60 psf', () => {
    expect(ledgerSpacing(feet(10), 'lag', 'up to 1 in', psf(40)).kind).toBe('outside')
    expect(ledgerSpacing(inches(217), 'bolt', 'up to 1 in', psf(40)).kind).toBe('outside')
    expect(ledgerSpacing(feet(10), 'bolt', 'up to 1 in', psf(61)).kind).toBe('outside')
  })
})
