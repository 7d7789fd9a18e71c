import { describe, expect, test } from 'vitest'
import { feet } from '../../../core/units/index.ts'
import { stockMarks } from '../../../renderer/views/tape/stock-marks.ts'
import { ft, rowAt } from '../../fixtures/compare-rows.ts'

describe('marks under the tape', () => {
  const rows = [
    rowAt(ft(19.5)),
    rowAt(ft(20), { fitsWithDecking: false }),
    rowAt(ft(20.5), { fitsStock: false, fitsWithDecking: false }),
    rowAt(ft(22), { fitsStock: false, fitsWithDecking: false }),
  ]

  test('a dot stands at a stock length whose framing runs are whole, not at one that is jointed', () => {
    expect(stockMarks(rows, [feet(20), feet(22)]).dots).toEqual([feet(20)])
  })

  test('a ring stands at the last width whose courses are whole too', () => {
    expect(stockMarks(rows, [feet(20), feet(22)]).rings).toEqual([feet(19.5)])
  })
})
