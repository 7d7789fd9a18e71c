import { describe, expect, test } from 'vitest'
import { lengthFromInches, parseLength, printLength } from '../../../core/units/index.ts'

function reading(text: string): string {
  const read = parseLength(text)
  return read.ok ? printLength(read.value) : `refused: ${read.error.message}`
}

describe('a length is read as people type it', () => {
  test.each([
    // feet and inches
    ['12\' 6-1/2"', '12\'-6 1/2"'],
    ['12\'-6 1/2"', '12\'-6 1/2"'],
    ['12-6 1/2', '12\'-6 1/2"'],
    ['12-6-1/2', '12\'-6 1/2"'],
    ['12-6', '12\'-6"'],
    ['12 - 6 in', '12\'-6"'],
    ['12 ft 6 in', '12\'-6"'],
    ['12ft6in', '12\'-6"'],
    ['12 FEET 6 Inches', '12\'-6"'],
    ['12 ft. 6 in.', '12\'-6"'],
    ['12ft .5in', '12\'-0 1/2"'],
    ['1 foot 1 inch', '1\'-1"'],
    ["12'6", '12\'-6"'],
    ['12\' 6.5"', '12\'-6 1/2"'],
    ['0\'-6"', '6"'],
    ['12\' 0"', '12\'-0"'],
    ['12\' 11 31/32"', '12\'-11 31/32"'],
    // feet alone
    ["12'", '12\'-0"'],
    ['12.5ft', '12\'-6"'],
    ['12 1/2 ft', '12\'-6"'],
    ["12½'", '12\'-6"'],
    ['.5 ft', '6"'],
    // inches alone
    ['150.5in', '12\'-6 1/2"'],
    ['150 1/2', '12\'-6 1/2"'],
    ['150-1/2', '12\'-6 1/2"'],
    ['6"', '6"'],
    ['6-1/2', '6 1/2"'],
    ['3/4', '3/4"'],
    ['5/4', '1 1/4"'],
    ['1 / 2', '1/2"'],
    ['0', '0"'],
    ['6.', '6"'],
    ['  6  ', '6"'],
    // other signs for the same marks
    ['12’ 6½”', '12\'-6 1/2"'],
    ['12‘6“', '12\'-6"'],
    ['12′ 6″', '12\'-6"'],
    ["12' 6''", '12\'-6"'],
    ['12’ 6’’', '12\'-6"'],
    ['12`6``', '12\'-6"'],
    ['12–6½', '12\'-6 1/2"'],
    ['6-½', '6 1/2"'],
    ['6⅝', '6 5/8"'],
    ['6 5⁄8', '6 5/8"'],
    ['12\u00a0ft\u20096\u202fin', '12\'-6"'],
    // signs before it
    ['-6 1/2', '-6 1/2"'],
    ['−12\' 6"', '-12\'-6"'],
    ['- 3/4', '-3/4"'],
    ['+6', '6"'],
    ['-0', '0"'],
  ])('%s is %s', (text, printed) => {
    expect(reading(text)).toBe(printed)
  })

  test.each(['¼:1/4"', '½:1/2"', '¾:3/4"', '⅛:1/8"', '⅜:3/8"', '⅝:5/8"', '⅞:7/8"'])('%s', (pair) => {
    const [sign = '', printed] = pair.split(':')
    expect(reading(sign)).toBe(printed)
  })
})

describe('a decimal may miss the 1/32 in grid by 1/2000 in', () => {
  test.each([
    ['12.3333 ft', '12\'-4"'],
    ['0.0005', '0"'],
    ['0.0308', '1/32"'],
    ['0.03125', '1/32"'],
    ['0.03175', '1/32"'],
    ['-0.0308', '-1/32"'],
    ['-0.0005', '0"'],
    ['12\' 6.3438"', '12\'-6 11/32"'],
  ])('%s', (text, printed) => {
    expect(reading(text)).toBe(printed)
  })

  test.each(['0.00051', '0.03074', '0.031751', '12.33 ft', '12.333 ft', '12.3334 ft', '0.01'])(
    '%s is refused',
    (text) => {
      expect(reading(text)).toBe(
        'refused: lengths are kept to 1/32 in, and this lies between two of those marks',
      )
    },
  )

  test('a fraction is never rounded, however near', () => {
    expect(reading('1/64')).toMatch(/^refused: /)
    expect(reading('1/3')).toMatch(/^refused: /)
    expect(reading('1001/32000')).toMatch(/^refused: /)
  })
})

describe('what cannot be read is told, with the place and what would be right', () => {
  test.each([
    ['', 0, 'there is no length here', 'write one such as 12\'-6 1/2" or 150 1/2'],
    ['   ', 0, 'there is no length here', 'write one such as 12\'-6 1/2" or 150 1/2'],
    ['abc', 0, '"abc" stands where a number should be', 'write a length such as 12\'-6 1/2"'],
    ['"', 0, '""" stands where a number should be', 'write a length such as 12\'-6 1/2"'],
    [
      '12 6',
      3,
      'two numbers stand side by side with no unit between them',
      'write feet and inches as 12\'-6" or 12-6, a fraction as 6 1/2',
    ],
    [
      '6 ½ ½',
      4,
      'two numbers stand side by side with no unit between them',
      'write feet and inches as 12\'-6" or 12-6, a fraction as 6 1/2',
    ],
    ['6" 12\'', 5, 'the inches stand before the feet', 'write feet first: 12\'-6"'],
    ['6 in 12 ft', 8, 'the inches stand before the feet', 'write feet first: 12\'-6"'],
    ["12' 6'", 5, 'feet are given twice', 'write feet once, then inches: 12\'-6"'],
    ["12-6'", 4, 'feet are given twice', 'write feet once, then inches: 12\'-6"'],
    ['6 in 3 in', 7, 'inches are given twice', 'write inches once, with a fraction: 6 1/2"'],
    [
      '12\' 13"',
      4,
      'the inches after feet make a foot or more',
      'write inches below 12; if all of it is meant, 13\'-1"',
    ],
    [
      '12\' 12"',
      4,
      'the inches after feet make a foot or more',
      'write inches below 12; if all of it is meant, 13\'-0"',
    ],
    [
      '12.5\' 6"',
      0,
      'feet with a fraction or a decimal are followed by inches',
      'write whole feet before inches (12\'-6"), or the feet alone (12.5 ft)',
    ],
    [
      '12.5-6',
      0,
      'feet with a fraction or a decimal are followed by inches',
      'write whole feet before inches (12\'-6"), or the feet alone (12.5 ft)',
    ],
    ['1/0', 2, '1/0 divides by zero', 'write a fraction such as 1/2'],
    ['6 1/00', 4, '1/00 divides by zero', 'write a fraction such as 1/2'],
    ['1/', 1, 'there is no number under the fraction bar', 'write a fraction such as 1/2'],
    ['1/x', 2, 'there is no number under the fraction bar', 'write a fraction such as 1/2'],
    ['1.5/2', 0, '1.5/2 has a decimal in a fraction', 'use whole numbers, such as 1/2'],
    [
      '6 9/8',
      2,
      'the fraction 9/8 after a whole number is one or more',
      'write a fraction smaller than one, such as 6 1/2',
    ],
    [
      '6 8/8',
      2,
      'the fraction 8/8 after a whole number is one or more',
      'write a fraction smaller than one, such as 6 1/2',
    ],
    ['12.5 1/2', 5, 'a decimal is followed by a fraction', 'write one or the other: 6.5 or 6 1/2'],
    ['1/2/3', 3, '"/" does not belong here', 'write a length such as 12\'-6 1/2"'],
    ['12 + 6', 3, '"+" does not belong here', 'write a length such as 12\'-6 1/2"'],
    ['6" ½', 3, '"1/2" does not belong here', 'write a length such as 12\'-6 1/2"'],
    ['--6', 1, '"-" stands where a number should be', 'write a length such as 12\'-6 1/2"'],
    ['1.2.3', 0, '"1.2.3" is not a number', 'use one decimal point, as in 12.5'],
    [
      '12ft.5in',
      4,
      'the point after "ft" may end the word or begin a decimal',
      'put a space after it (ft. 6) or before it (ft .6)',
    ],
    ['.', 0, 'this point belongs to no number', 'write a decimal such as 12.5 ft'],
    ['12-', 3, 'the length breaks off where a number should follow', 'finish it, as in 12\'-6 1/2"'],
    ["12' -", 5, 'the length breaks off where a number should follow', 'finish it, as in 12\'-6 1/2"'],
    [
      '12,5',
      2,
      'a length has no comma in it',
      'decimals take a point: 12.5 ft; thousands are written together: 1200',
    ],
    ['#6', 0, '"#" is not part of a length', 'use digits, fractions such as 1/2, and ft, in, \' or "'],
    ['6 🪚', 2, '"🪚" is not part of a length', 'use digits, fractions such as 1/2, and ft, in, \' or "'],
    ['2x6', 1, '"x" is not a unit of length here', 'use ft, in, \' or ", as in 12 ft 6 in'],
    ['12 ft 6 nails', 8, '"nails" is not a unit of length here', 'use ft, in, \' or ", as in 12 ft 6 in'],
    [
      '3810 mm',
      5,
      'lengths are in feet and inches, not in "mm"',
      'write feet and inches; to the nearest 1/32 in that is 12\'-6"',
    ],
    [
      '254 cm',
      4,
      'lengths are in feet and inches, not in "cm"',
      'write feet and inches; to the nearest 1/32 in that is 8\'-4"',
    ],
    [
      '1 M',
      2,
      'lengths are in feet and inches, not in "M"',
      'write feet and inches; to the nearest 1/32 in that is 3\'-3 3/8"',
    ],
    [
      '2 yards',
      2,
      'lengths are in feet and inches, not in "yards"',
      'write feet and inches; to the nearest 1/32 in that is 6\'-0"',
    ],
    ['9999999 m', 8, 'lengths are in feet and inches, not in "m"', 'use ft, in, \' or "'],
    ['1'.repeat(61), 60, 'this is too long to be a length', 'write one such as 12\'-6 1/2"'],
  ])('%j', (text, at, message, fix) => {
    expect(parseLength(text)).toEqual({ ok: false, error: { message, fix, at } })
  })

  test.each([
    ['12.33ft', 'write 12\'-3 15/16" (147 15/16 in) or 12\'-3 31/32" (147 31/32 in)'],
    ['1/64', 'write 0" (0 in) or 1/32" (1/32 in)'],
    ['-1/64', 'write -1/32" (-1/32 in) or 0" (0 in)'],
  ])('%s is off the grid, and its two neighbours are named', (text, fix) => {
    expect(parseLength(text)).toEqual({
      ok: false,
      error: { message: 'lengths are kept to 1/32 in, and this lies between two of those marks', fix },
    })
  })

  test.each([
    '10000 ft',
    '-10000 ft',
    '4000.001 ft',
    '48000 1/32',
    '-48000 1/32',
    '99999999999999999999999999',
  ])('%s is longer than the program reckons with', (text) => {
    expect(parseLength(text)).toEqual({
      ok: false,
      error: { message: 'this is more than 4,000 ft', fix: 'give a length within 4,000 ft' },
    })
  })

  test('4,000 ft itself is read, either way from zero', () => {
    expect(parseLength('4000 ft')).toEqual({ ok: true, value: 1_536_000 })
    expect(parseLength('-4000 ft')).toEqual({ ok: true, value: -1_536_000 })
  })
})

describe('a number of inches, as in a job file', () => {
  test.each([
    [150.5, 4816],
    [0, 0],
    [-6, -192],
    [147.9996, 4736],
    [-0.0004, 0],
    [0.0005, 0],
    [1e-7, 0],
    [-5e-324, 0],
    [147.9995, 4736],
    [-147.9995, -4736],
    [0.03175, 1],
    [48_000, 1_536_000],
  ])('%d in is %d ticks', (inches, ticks) => {
    expect(lengthFromInches(inches)).toEqual({ ok: true, value: ticks })
  })

  test.each([
    [Number.NaN, 'this is not a number'],
    [Number.POSITIVE_INFINITY, 'this is not a number'],
    [0.00051, 'lengths are kept to 1/32 in, and this lies between two of those marks'],
    [1 / 64, 'lengths are kept to 1/32 in, and this lies between two of those marks'],
    [120_000, 'this is more than 4,000 ft'],
    [-48_000.03125, 'this is more than 4,000 ft'],
    [48_000.001, 'this is more than 4,000 ft'],
    [1e300, 'this is more than 4,000 ft'],
  ])('%d is refused', (inches, message) => {
    const read = lengthFromInches(inches)
    expect(read.ok ? read.value : read.error.message).toBe(message)
  })
})
