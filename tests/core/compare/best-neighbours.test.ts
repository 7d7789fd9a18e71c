import { describe, expect, test } from 'vitest'
import { bestNeighbours } from '../../../core/compare/index.ts'
import { cents, feet } from '../../../core/units/index.ts'
import { rowAt } from '../../fixtures/compare-rows.ts'

const own = { width: feet(23.5), perSquareFoot: cents(2_972), fitsStock: false }
const jointed = { fitsStock: false, framingJoints: 2 } as const
const widths = (rows: Parameters<typeof bestNeighbours>[0], of = own) =>
  bestNeighbours(rows, of).map((row) => row.width / 384)

describe('the neighbours of a width that are named', () => {
  test('where the own width is jointed, the nearest that is not', () => {
    const rows = [
      rowAt(feet(19.5)),
      rowAt(feet(20), { perSquareFoot: cents(2_950) }),
      rowAt(feet(22), { ...jointed, perSquareFoot: cents(3_000) }),
    ]
    expect(widths(rows)).toEqual([20])
  })

  test('where it is not, a low of the curve, and none that only comes whole as well', () => {
    const rows = [rowAt(feet(22.5)), rowAt(feet(24), { perSquareFoot: cents(2_960) }), rowAt(feet(24.5))]
    expect(widths(rows, { ...own, fitsStock: true })).toEqual([24])
  })

  test('a width is no low of the curve before the width after it is known', () => {
    const low = rowAt(feet(24), { ...jointed, perSquareFoot: cents(2_960) })
    expect(widths([low])).toEqual([])
    expect(widths([low, rowAt(feet(24.5), { ...jointed, perSquareFoot: cents(3_010) })])).toEqual([24])
  })

  test('none that costs more per square foot, fails a check, has no price or lies more than 4 ft off', () => {
    const rows = [
      rowAt(feet(19), { perSquareFoot: cents(2_000) }),
      rowAt(feet(21), { ...jointed, perSquareFoot: cents(2_000), fault: 'no price' }),
      rowAt(feet(22), { ...jointed, perSquareFoot: cents(2_000), failing: 1 }),
      rowAt(feet(23), { ...jointed, perSquareFoot: cents(2_990) }),
    ]
    expect(widths(rows)).toEqual([])
  })
})
