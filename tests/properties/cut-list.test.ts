import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  guessColumns,
  readCutList,
  readDelimited,
  runCutList,
  writeDelimited,
} from '../../core/cut-list/index.ts'
import { SAMPLE_BOOK } from '../../core/pricing/index.ts'
import { printLength, ticks } from '../../core/units/index.ts'
import { engine } from '../fixtures/engine.ts'

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

describe('the plan of a list', () => {
  const saw = { kerf: ticks(4), endTrim: ticks(0) }
  const length = fc.integer({ min: 32, max: 16 * 384 }).map(ticks)
  const stockRow = fc.record({
    kind: fc.constantFrom('stock', 'stock', 'offcut'),
    length: fc.integer({ min: 2, max: 20 }).map((feet) => ticks(feet * 384)),
    supply: fc.option(fc.integer({ min: 1, max: 9 }), { nil: null }),
    price: fc.integer({ min: 1, max: 5000 }),
  })

  test('cuts every piece of it once, from stock that it gives, or says which product cannot be had', () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ count: fc.integer({ min: 1, max: 5 }), length }), {
          minLength: 1,
          maxLength: 8,
        }),
        fc.array(stockRow, { minLength: 1, maxLength: 4 }),
        fc.boolean(),
        (pieces, stock, priced) => {
          const text = writeDelimited([
            ['Qty', 'Length', 'Mark'],
            ...pieces.map((each, row) => [`${each.count}`, printLength(each.length), `M${row}`]),
          ])
          const stockText = writeDelimited([
            ['Kind', 'Length', 'Supply', 'Price'],
            ...stock.map((each) => [
              each.kind,
              printLength(each.length),
              each.supply === null ? '' : `${each.supply}`,
              priced && each.kind === 'stock' ? `${each.price / 100}` : '',
            ]),
          ])
          const answer = runCutList({ text, stockText, ...saw }, SAMPLE_BOOK, engine)
          if (!answer.ok) throw new Error(JSON.stringify(answer.faults))
          const { plans, infeasible } = answer.result
          expect(plans.length + infeasible.length).toBe(1)
          for (const { plan, stock: named } of plans) {
            const cut = plan.boards
              .flatMap(({ cuts }) => cuts.map((each) => `${each.mark} ${each.length}`))
              .sort()
            const wanted = pieces
              .flatMap((each, row) => Array<string>(each.count).fill(`M${row} ${each.length}`))
              .sort()
            expect(cut).toEqual(wanted)
            expect(plan.bound).toBeLessThanOrEqual(plan.cost)
            for (const [index, { id }] of named.entries()) {
              const row = stock[index]
              const used = plan.boards.filter(({ stockId }) => stockId === id).length
              const most = row?.supply ?? (row?.kind === 'offcut' ? 1 : Number.POSITIVE_INFINITY)
              expect(used).toBeLessThanOrEqual(most)
            }
          }
          const longest = Math.max(...stock.map((each) => each.length))
          if (pieces.some((each) => each.length > longest)) expect(infeasible).toHaveLength(1)
        },
      ),
      { numRuns: 150 },
    )
  })
})
