import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { cents, feet, inches, ticks } from '../../../core/units/index.ts'
import {
  curveAt,
  curveParts,
  moneyScale,
  stretches,
  type TapeScale,
  widthAt,
  xOf,
} from '../../../renderer/views/tape/tape-scale.ts'
import { ft, rowAt } from '../../fixtures/compare-rows.ts'

const scale: TapeScale = { from: feet(12), to: feet(32), left: 46, right: 918 }

describe('along the tape', () => {
  test('a width goes to a pixel and back', () => {
    fc.assert(
      fc.property(fc.integer({ min: 24, max: 64 }), (halves) => {
        const width = ticks(halves * inches(6))
        expect(widthAt(scale, xOf(scale, width), inches(6))).toBe(width)
      }),
    )
  })

  test('a pointer beyond the tape gives its end', () => {
    expect(widthAt(scale, -500, inches(6))).toBe(feet(12))
    expect(widthAt(scale, 5000, inches(6))).toBe(feet(32))
  })
})

describe('up the curve', () => {
  test('every value lies within the scale, and marks are whole dollars, few of them', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 500, max: 40_000 }), { minLength: 1 }), (values) => {
        const money = moneyScale(values)
        expect(money).not.toBeNull()
        if (!money) return
        expect(money.low).toBeLessThanOrEqual(Math.min(...values))
        expect(money.high).toBeGreaterThanOrEqual(Math.max(...values))
        expect(money.high).toBeGreaterThan(money.low)
        expect(money.marks.length).toBeLessThanOrEqual(6)
        if (Math.max(...values) - Math.min(...values) < 30_000)
          expect(money.marks.every((mark) => mark % 100 === 0)).toBe(true)
      }),
    )
  })

  test('nothing known is no scale', () => {
    expect(moneyScale([])).toBeNull()
  })
})

describe('rows of the tape', () => {
  const rows = [
    rowAt(ft(19)),
    rowAt(ft(19.5)),
    rowAt(ft(20)),
    rowAt(ft(20.5), { fitsStock: false, framingJoints: 2 }),
    rowAt(ft(21), { fault: 'no board is long enough' }),
    rowAt(ft(21.5), { fitsStock: false, framingJoints: 2, perSquareFoot: cents(3_200) }),
    rowAt(ft(22), { fitsStock: false, framingJoints: 2, perSquareFoot: cents(3_100) }),
  ]

  test('wood and hatch meet half a step after the last whole width, and a width without a plan stays blank', () => {
    expect(stretches(rows, inches(6), feet(19), feet(22))).toEqual([
      { from: feet(19), to: feet(20.25), whole: true },
      { from: feet(20.25), to: feet(20.75), whole: false },
      { from: feet(21.25), to: feet(22), whole: false },
    ])
  })

  test('the curve breaks where a width has no price', () => {
    expect(curveParts(rows, inches(6)).map((part) => part.map((row) => row.width / feet(1)))).toEqual([
      [19, 19.5, 20, 20.5],
      [21.5, 22],
    ])
  })

  test('between two widths the curve is straight, beyond it is nothing', () => {
    expect(curveAt(rows, inches(6), feet(21.75))).toBe(3_150)
    expect(curveAt(rows, inches(6), feet(21))).toBeNull()
    expect(curveAt(rows, inches(6), feet(30))).toBeNull()
  })
})
