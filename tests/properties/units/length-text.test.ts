import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  lengthFromInches,
  MAX_TICKS,
  parseLength,
  printInches,
  printLength,
  TICKS_PER_FOOT,
  ticks,
} from '../../../core/units/index.ts'

test('every tick from -200 ft to 200 ft is read back from both of its printed forms', () => {
  const lost: string[] = []
  for (let n = -200 * TICKS_PER_FOOT; n <= 200 * TICKS_PER_FOOT; n += 1) {
    for (const printed of [printLength(ticks(n)), printInches(ticks(n))]) {
      const read = parseLength(printed)
      if (!read.ok || read.value !== n) lost.push(printed)
    }
  }
  expect(lost).toEqual([])
})

const lengths = fc.integer({ min: 0, max: MAX_TICKS })
const gaps = fc.constantFrom('', ' ', '  ', '\u00a0', '\u2009', '\t')
const footMarks = fc.constantFrom("'", '’', '‘', '′', 'ft', 'FT', 'ft. ', 'feet', 'foot', 'Feet')
const inchMarks = fc.constantFrom('"', '”', '“', '″', "''", '’’', 'in', 'In', 'in.', 'inch', 'inches', '')
const joints = fc.constantFrom('', '-', '–', '—', '−')
const bars = fc.constantFrom('/', '⁄', '∕')

test('a length is read the same with any marks, dashes and spaces between its parts', () => {
  const parts = fc.tuple(
    lengths,
    gaps,
    gaps,
    footMarks,
    inchMarks,
    joints,
    fc.constantFrom(' ', '-', ' - '),
    bars,
  )
  fc.assert(
    fc.property(parts, ([length, gap, after, foot, inch, joint, beforeFraction, bar]) => {
      const feet = Math.floor(length / TICKS_PER_FOOT)
      const whole = Math.floor((length % TICKS_PER_FOOT) / 32)
      const fraction = length % 32 === 0 ? '' : `${beforeFraction}${length % 32}${gap}${bar}${gap}32`
      const text = `${after}${feet}${gap}${foot}${gap}${joint}${gap}${whole}${fraction}${gap}${inch}${after}`
      expect(parseLength(text)).toEqual({ ok: true, value: length })
    }),
  )
})

test('a decimal of inches is read to the mark it lies on within 1/2000 in, or refused between two', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 3_000_000_000 }), (hundredThousandths) => {
      // 100000 units of 1e-5 in to the inch; a mark every 3125 of them, forgiven 50 either way
      const beyond = hundredThousandths % 3125
      const digits = `${hundredThousandths % 100_000}`.padStart(5, '0')
      const read = parseLength(`${Math.floor(hundredThousandths / 100_000)}.${digits} in`)
      if (beyond <= 50) expect(read).toEqual({ ok: true, value: Math.floor(hundredThousandths / 3125) })
      else if (beyond >= 3075)
        expect(read).toEqual({ ok: true, value: Math.floor(hundredThousandths / 3125) + 1 })
      else expect(read.ok).toBe(false)
    }),
  )
})

test('the two lengths named for a value off the grid are its neighbours, and can be typed', () => {
  fc.assert(
    fc.property(fc.integer({ min: -9999, max: 9999 }), fc.integer({ min: 1, max: 999 }), (over, under) => {
      const text = `${over}/${under}`
      const read = parseLength(text)
      if ((over * 32) % under === 0) {
        expect(read).toEqual({ ok: true, value: (over * 32) / under + 0 })
        return
      }
      const named = read.ok ? [] : [...read.error.fix.matchAll(/\(([^)]+)\)/g)].map((match) => match[1] ?? '')
      const below = Math.floor((over * 32) / under)
      expect(named.map((one) => parseLength(one))).toEqual([
        { ok: true, value: below },
        { ok: true, value: below + 1 },
      ])
    }),
  )
})

const typed = fc.string({
  unit: fc.constantFrom(...'0123456789 .-/\'"’″½⅛,+ftinmx−\u00a0'.split('')),
  maxLength: 24,
})

test('no text makes the reader throw, and every refusal says what is wrong and what would be right', () => {
  fc.assert(
    fc.property(fc.oneof(typed, fc.string({ unit: 'binary', maxLength: 80 })), (text) => {
      const read = parseLength(text)
      if (read.ok) {
        expect(Number.isInteger(read.value)).toBe(true)
        return
      }
      expect(read.error.message).not.toBe('')
      expect(read.error.fix).not.toBe('')
      expect(read.error.at ?? 0).toBeGreaterThanOrEqual(0)
      expect(read.error.at ?? 0).toBeLessThanOrEqual(text.length)
    }),
  )
})

test('a number of inches is read as the same number typed', () => {
  fc.assert(
    fc.property(fc.integer({ min: -500_000_000, max: 500_000_000 }), (tenThousandths) => {
      const inches = tenThousandths / 10_000
      const [typed, stated] = [parseLength(inches.toFixed(4)), lengthFromInches(inches)]
      expect(stated.ok ? stated : stated.error.fix).toEqual(typed.ok ? typed : typed.error.fix)
    }),
  )
})
