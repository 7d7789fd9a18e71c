import fc from 'fast-check'
import { expect, test } from 'vitest'
import { divideRounded } from '../../../core/units/index.ts'

const numerators = fc.bigInt({ min: -(10n ** 20n), max: 10n ** 20n })
const denominators = fc.bigInt({ min: 10n ** 9n, max: 10n ** 24n })

test('a rounded quotient is at most half a cent off, and half a cent is away from zero', () => {
  fc.assert(
    fc.property(numerators, denominators, (numerator, denominator) => {
      const twiceOff = 2n * (numerator - BigInt(divideRounded(numerator, denominator)) * denominator)
      const towardsZero = numerator < 0n ? -twiceOff : twiceOff
      expect(towardsZero < denominator && towardsZero >= -denominator).toBe(true)
    }),
  )
})

test('rounding knows no side: a debt is rounded as the same sum owed', () => {
  fc.assert(
    fc.property(numerators, denominators, (numerator, denominator) => {
      expect(divideRounded(-numerator, denominator) + divideRounded(numerator, denominator)).toBe(0)
      expect(divideRounded(-numerator, -denominator)).toBe(divideRounded(numerator, denominator))
    }),
  )
})

test('an exact half goes away from zero', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 1_000_000_000 }),
      fc.bigInt({ min: 1n, max: 10n ** 9n }),
      (whole, part) => {
        expect(divideRounded((2n * BigInt(whole) + 1n) * part, 2n * part)).toBe(whole + 1)
      },
    ),
  )
})
