import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  cents,
  MAX_CENTS,
  parseMoney,
  parseShare,
  printMoney,
  printShare,
  share,
} from '../../../core/units/index.ts'

test('every sum is read back as printed', () => {
  fc.assert(
    fc.property(fc.integer({ min: -MAX_CENTS, max: MAX_CENTS }), (amount) => {
      expect(parseMoney(printMoney(cents(amount)))).toEqual({ ok: true, value: amount })
    }),
  )
})

test('every share is read back as printed', () => {
  fc.assert(
    fc.property(fc.integer({ min: -1_000_000, max: 1_000_000 }), (part) => {
      expect(parseShare(printShare(share(part)))).toEqual({ ok: true, value: part })
    }),
  )
})

const typed = fc.string({ unit: fc.constantFrom(...'0123456789 .,$%-−'.split('')), maxLength: 16 })

test('no text makes the readers of money and shares throw', () => {
  fc.assert(
    fc.property(fc.oneof(typed, fc.string({ unit: 'binary', maxLength: 40 })), (text) => {
      for (const read of [parseMoney(text), parseShare(text)]) {
        if (read.ok) expect(Number.isInteger(read.value)).toBe(true)
        else expect(`${read.error.message}; ${read.error.fix}`).toMatch(/\S; \S/)
      }
    }),
  )
})
