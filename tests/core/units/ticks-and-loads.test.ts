import { describe, expect, test } from 'vitest'
import {
  ceilTicks,
  feet,
  inches,
  MAX_TICKS,
  nearestSixteenth,
  psf,
  ticks,
  toFeet,
  toInches,
} from '../../../core/units/index.ts'

describe('a length is a whole count of 1/32 in', () => {
  test('feet and inches are counted in it, and back', () => {
    expect(inches(0.125)).toBe(4)
    expect(feet(1)).toBe(384)
    expect(feet(-2.5)).toBe(-960)
    expect(toInches(inches(7.75))).toBe(7.75)
    expect(toFeet(feet(12.5))).toBe(12.5)
  })

  test.each([0.5, Number.NaN, Number.POSITIVE_INFINITY, MAX_TICKS + 1, -MAX_TICKS - 1])(
    '%d is a bug',
    (n) => {
      expect(() => ticks(n)).toThrow(`${n} is not a whole number of 1/32 in within ±4,000 ft`)
    },
  )

  test('4,000 ft either way is accepted, and zero has no sign', () => {
    expect([ticks(MAX_TICKS), ticks(-MAX_TICKS)]).toEqual([MAX_TICKS, -MAX_TICKS])
    expect(Object.is(ticks(-0), 0)).toBe(true)
  })
})

describe('a computed length becomes a cut length', () => {
  test.each([
    [10, 10],
    [10.1, 11],
    // a rounding of the arithmetic is not a length
    [10.000_000_1, 10],
    [9.999_999_9, 10],
    // 20 11/18 in is cut at 20 5/8
    [(20 + 11 / 18) * 32, 20.625 * 32],
    [-0.5, 0],
  ])('%d ticks are cut at %d', (exact, cut) => {
    expect(ceilTicks(exact)).toBe(cut)
  })
})

describe('a place is stated to the nearest 1/16 in, a half up', () => {
  test.each([
    [0, 0],
    [0.9, 0],
    [1, 2],
    [2.9, 2],
    [3, 4],
    [-1, 0],
    [-1.1, -2],
  ])('%d ticks at %d', (exact, place) => {
    expect(nearestSixteenth(exact)).toBe(place)
  })
})

describe('a load is a whole number of psf', () => {
  test.each([0, 40, 20_000])('%d', (n) => {
    expect(psf(n)).toBe(n)
  })

  test.each([-1, 0.5, 20_001, Number.NaN])('%d is a bug', (n) => {
    expect(() => psf(n)).toThrow(`${n} is not a whole number of psf from 0 to 20,000`)
  })
})
