import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { guessColumns, readCutList, readDelimited, writeDelimited } from '../../core/cut-list/index.ts'
import { printLength, ticks } from '../../core/units/index.ts'

/** A text that a cell keeps: one line, no white space to be folded. */
const word = fc
  .string({ minLength: 0, maxLength: 20, unit: 'binary' })
  .map((text) => text.replace(/[\s\p{Cc}\uFEFF]+/gu, ' ').trim())

const piece = fc.record({
  count: fc.integer({ min: 1, max: 99 }),
  length: fc.integer({ min: 1, max: 40 * 384 }).map(ticks),
  mark: fc.oneof(word, fc.constantFrom('=1+1', '+J', '-J', '@J', "'=J", "''@J", 'a"b', 'a,b;c', '"')),
  product: fc.constantFrom('2x4', '2x10', '5/4x6'),
})

describe('a list of pieces', () => {
  test('written as CSV and read again is the same', () => {
    fc.assert(
      fc.property(fc.array(piece, { minLength: 1, maxLength: 30 }), (pieces) => {
        const rows = pieces.map(({ count, length, mark, product }) => [
          `${count}`,
          printLength(length),
          mark,
          product,
        ])
        const read = readCutList(writeDelimited([['Quantity', 'Length', 'Mark', 'Product'], ...rows]), {
          source: 'list',
        })
        if (!read.ok) throw new Error(JSON.stringify(read.error))
        const seen = read.value.pieces.map(({ count, length, mark, product }) => ({
          count,
          length,
          mark,
          product,
        }))
        expect(seen).toEqual(pieces)
      }),
    )
  })

  test('of any text is read or refused with rows that are there, and never throws', () => {
    const sign = fc.constantFrom(
      '"',
      ',',
      ';',
      '\t',
      '\r',
      '\n',
      "'",
      '4',
      ' ft',
      'Length',
      'Qty',
      'Stock',
      '=',
      '$',
    )
    const text = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.array(sign, { maxLength: 40 }).map((signs) => signs.join('')),
    )
    fc.assert(
      fc.property(text, fc.constantFrom('list' as const, 'stock' as const), (any, source) => {
        const read = readCutList(any, { source })
        const sheet = readDelimited(any)
        if (sheet.ok) guessColumns(sheet.value)
        if (read.ok) return
        expect(read.error.length).toBeGreaterThan(0)
        const rows = sheet.ok ? sheet.value.length : Number.POSITIVE_INFINITY
        for (const fault of read.error) {
          expect(fault.row).toBeLessThanOrEqual(rows)
          expect([fault.message, fault.fix]).not.toContain('')
        }
      }),
      { numRuns: 2000 },
    )
  })

  test('refuses a whole list for one bad length, at its row', () => {
    fc.assert(
      fc.property(fc.array(piece, { minLength: 1, maxLength: 20 }), fc.nat(), (pieces, at) => {
        const bad = at % pieces.length
        const rows = pieces.map(({ count, length }, row) => [
          `${count}`,
          row === bad ? 'twelve' : printLength(length),
        ])
        const read = readCutList(writeDelimited([['Qty', 'Length'], ...rows]), { source: 'list' })
        expect(read).toMatchObject({ ok: false, error: [{ row: bad + 2, column: 2, heading: 'Length' }] })
      }),
    )
  })
})
