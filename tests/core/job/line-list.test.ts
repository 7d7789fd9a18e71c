import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  printStatedLines,
  readJob,
  type StatedLine,
  statedLines,
  withStatedLine,
} from '../../../core/job/index.ts'
import { unitPrice } from '../../../core/units/index.ts'

const faultOf = (lines: string) => {
  const read = readJob({ pricing: { lines } })
  return read.ok ? null : read.error[0]
}

const stated: fc.Arbitrary<StatedLine> = fc
  .record({
    line: fc.oneof(
      fc.constantFrom(
        'good-anchor-bolt-1/2',
        'a;b',
        'a: 4',
        '"',
        '\\',
        ' led',
        'at',
        'good-x\n2',
        '12 at $3',
      ),
      fc.string({ minLength: 1, maxLength: 12, unit: 'grapheme' }),
    ),
    thousandths: fc.option(fc.integer({ min: 0, max: 100_000_000 })),
    price: fc.option(fc.integer({ min: 0, max: 9_999_999_999 }).map(unitPrice)),
  })
  .filter(({ thousandths, price }) => thousandths !== null || price !== null)

describe('lines stated by hand', () => {
  test('are a line with a quantity, a price after "at", or both', () => {
    expect(
      statedLines('good-joist-hanger-2x10: 1,040 at $2.10\n labour-task-joist:12.5 ; ;"a;b": at 0.1026'),
    ).toEqual([
      { line: 'good-joist-hanger-2x10', thousandths: 1_040_000, price: 21_000 },
      { line: 'labour-task-joist', thousandths: 12_500, price: null },
      { line: 'a;b', thousandths: null, price: 1026 },
    ])
    expect(statedLines(' ; \n')).toEqual([])
  })

  test('come back as they were printed, whatever a yard calls its goods', () => {
    fc.assert(
      fc.property(fc.uniqueArray(stated, { maxLength: 6, selector: ({ line }) => line }), (lines) => {
        expect(statedLines(printStatedLines(lines))).toEqual(lines)
      }),
    )
  })

  test('are stated one by one, and go back to what is computed', () => {
    const one = withStatedLine([], 'good-x', { thousandths: 40_000 })
    const both = withStatedLine(one, 'good-x', { price: unitPrice(21_000) })
    expect(printStatedLines(both)).toBe('good-x: 40 at $2.10')
    expect(printStatedLines(withStatedLine(both, 'good-x', { thousandths: null }))).toBe('good-x: at $2.10')
    expect(printStatedLines(withStatedLine(one, 'good-x', { thousandths: null }))).toBe('')
  })

  test.each([
    ['good-x', 'names no line'],
    [': 4', 'names no line'],
    ['"good-x: 4', 'names no line'],
    ['good-x: ', 'the line "good-x" is given neither quantity nor price'],
    ['good-x: forty', 'the line "good-x", "forty": this is not a number'],
    ['good-x: -4', 'a quantity is not below zero'],
    ['good-x: 4.0005', 'more than three decimals'],
    ['good-x: 100,000.001', 'more than 100,000'],
    ['good-x: 4 at', 'there is no price here'],
    ['good-x: at $-2', 'a price is not below zero'],
    ['good-x: at $2.00005', 'more than four decimals'],
    ['good-x: at $1,000,000', 'not a price in dollars'],
    ['good-x: 4; good-x: 5', 'stated twice'],
    [Array.from({ length: 201 }, (_, i) => `l${i}: 1`).join(';'), '201 lines are stated'],
  ])('%j is a fault of its field with what would be right', (text, sentence) => {
    const fault = faultOf(text)
    expect(fault?.path).toBe('pricing.lines')
    expect(fault?.message).toContain(sentence)
    expect(fault?.fix).not.toBe('')
  })
})
