import { describe, expect, test } from 'vitest'
import { nextSorting, sortedBy } from '../../../renderer/parts/sorting.ts'

const up = (texts: readonly string[]) => sortedBy(texts, (text) => text, false)

describe('rows by a column', () => {
  test('stand by what their texts say: sums, lengths with fractions, and the sizes of boards', () => {
    expect(up(['$1,200.00', '$9.50', '$23.49'])).toEqual(['$9.50', '$23.49', '$1,200.00'])
    expect(up([`10'-6"`, `10'-4 1/2"`, `8'-0"`, `10'-4 3/32"`])).toEqual([
      `8'-0"`,
      `10'-4 3/32"`,
      `10'-4 1/2"`,
      `10'-6"`,
    ])
    expect(up([`2x10, 8'-0"`, `2x4, 16'-0"`, `2x4, 8'-0"`])).toEqual([
      `2x4, 8'-0"`,
      `2x4, 16'-0"`,
      `2x10, 8'-0"`,
    ])
    expect(up(['0.02', '0.1', '0.015'])).toEqual(['0.015', '0.02', '0.1'])
    expect(up(['J10', 'J2', 'B1'])).toEqual(['B1', 'J2', 'J10'])
  })

  test('that say nothing come last either way, and alike ones keep their order', () => {
    expect(up(['', '7', '3'])).toEqual(['3', '7', ''])
    const rows = [
      { n: 1, code: 'a' },
      { n: 2, code: '' },
      { n: 3, code: 'b' },
      { n: 4, code: 'a' },
    ]
    expect(sortedBy(rows, ({ code }) => code, true).map(({ n }) => n)).toEqual([3, 1, 4, 2])
  })

  test('go up at the first choice of a heading, down at the second, and back to their own order at the third', () => {
    const first = nextSorting(null, 2)
    expect(first).toEqual({ column: 2, down: false })
    expect(nextSorting(first, 2)).toEqual({ column: 2, down: true })
    expect(nextSorting(nextSorting(first, 2), 2)).toBeNull()
    expect(nextSorting(first, 0)).toEqual({ column: 0, down: false })
  })
})
