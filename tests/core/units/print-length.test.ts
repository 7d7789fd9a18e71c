import { describe, expect, test } from 'vitest'
import { inches, printInches, printLength, ticks } from '../../../core/units/index.ts'

describe('a length is printed in the carpenter’s form', () => {
  test.each([
    [0, '0"', '0 in'],
    [1 / 32, '1/32"', '1/32 in'],
    [0.125, '1/8"', '1/8 in'],
    [7.75, '7 3/4"', '7 3/4 in'],
    [12, '1\'-0"', '12 in'],
    [12.5, '1\'-0 1/2"', '12 1/2 in'],
    [282, '23\'-6"', '282 in'],
    [150.5, '12\'-6 1/2"', '150 1/2 in'],
    [-6, '-6"', '-6 in'],
    [-282.5, '-23\'-6 1/2"', '-282 1/2 in'],
    [48_000, '4000\'-0"', '48000 in'],
  ])('%d in', (size, length, printedInches) => {
    expect(printLength(inches(size))).toBe(length)
    expect(printInches(inches(size))).toBe(printedInches)
  })

  test('every fraction of an inch is in lowest terms', () => {
    const printed = Array.from({ length: 32 }, (_, n) => printInches(ticks(n)))
    expect(printed.filter((text) => /\d*[02468]\/(?:2|4|8|16|32)/.test(text))).toEqual([])
    expect(new Set(printed).size).toBe(32)
  })
})
