import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  namedRuns,
  noSuchRun,
  printStockCounts,
  printStockLengths,
  readJob,
  stockCounts,
  stockLengths,
  withoutRun,
  withRun,
} from '../../../core/job/index.ts'
import { feet, inches, ticks } from '../../../core/units/index.ts'

function faultOf(cutting: { readonly [field: string]: string }) {
  const read = readJob({ cutting })
  return read.ok ? null : read.error[0]
}

const RUNS = [
  { id: 'run-ledger', label: 'Ledger' },
  { id: 'run-beam-front', label: 'Beam B1' },
]

describe('runs are named', () => {
  test('by label or id, in any case, with semicolons or lines between them', () => {
    expect(namedRuns(' beam  b1;\n RUN-LEDGER ;', RUNS)).toEqual({ named: RUNS, unknown: [] })
    expect(namedRuns('', RUNS)).toEqual({ named: [], unknown: [] })
  })

  test('a name that is no run’s is told with the nearest one', () => {
    expect(namedRuns('Beam B3; Ledger', RUNS)).toEqual({ named: [RUNS[0]], unknown: ['Beam B3'] })
    expect(noSuchRun('Beam B3', RUNS)).toEqual({
      message: 'no run of this deck is called "Beam B3"',
      fix: 'the nearest is "Beam B1"; the runs of this deck are Ledger, Beam B1',
    })
    expect(noSuchRun('the whole deck', RUNS).fix).toBe('the runs of this deck are Ledger, Beam B1')
  })

  test('adding one twice leaves it once, and taking it back leaves the others as typed', () => {
    const [ledger] = RUNS
    if (ledger === undefined) throw new Error('no run')
    expect(withRun('beam b1; ledger', ledger)).toBe('beam b1; Ledger')
    expect(withoutRun('beam b1; run-ledger', ledger)).toBe('beam b1')
  })

  test('one named twice is a fault', () => {
    expect(faultOf({ onePiece: 'Ledger; ledger' })).toEqual({
      path: 'cutting.onePiece',
      message: '"ledger" is named twice',
      fix: 'name each run once',
    })
  })
})

describe('stock lengths are listed by size', () => {
  test('bare numbers are feet; other lengths carry their units', () => {
    expect(stockLengths('2x10: 14, 18; 5/4X6: 12 ft\n2 × 12: 9\'-6"')).toEqual([
      { size: '2x10', length: feet(14) },
      { size: '2x10', length: feet(18) },
      { size: '5/4x6', length: feet(12) },
      { size: '2x12', length: inches(114) },
    ])
  })

  test('counts stand before the length', () => {
    expect(stockCounts('2x10: 3 of 16, 2 × 18')).toEqual([
      { size: '2x10', length: feet(16), count: 3 },
      { size: '2x10', length: feet(18), count: 2 },
    ])
  })

  test.each([
    [{ doWithout: '2x11: 14' }, 'no board has the size "2x11"', 'the nearest size is 2x10'],
    [{ doWithout: '14, 18' }, '"14, 18" names no size of board', 'write it as 2x10: 14, 18; 5/4x6: 12'],
    [{ doWithout: '2x10:' }, 'no length follows 2x10', 'write it as 2x10: 14, 18; 5/4x6: 12'],
    [
      { doWithout: '2x10: 140' },
      'no board is sold 140\'-0" long',
      'give a stock length from 2\'-0" to 40\'-0"; a bare number is feet',
    ],
    [
      { doWithout: '2x10: 14; 2x10: 14 ft' },
      '2x10 of 14 ft is named twice',
      'name each length of a size once',
    ],
    [{ doWithout: '2x10: long' }, expect.stringContaining('"long": '), expect.any(String)],
    [
      { atMost: '2x10: 16' },
      '"16" is no count of boards',
      'write it as 2x10: 3 of 16, 2 of 18; 5/4x6: 10 of 12',
    ],
    [{ atMost: '2x10: 0 of 16' }, '"0 of 16" allows none', 'name the length among those to do without'],
  ])('%o is refused at its field', (cutting, message, fix) => {
    expect(faultOf(cutting)).toEqual({ path: `cutting.${Object.keys(cutting)[0]}`, message, fix })
  })

  test('what is printed is read again as it was', () => {
    const entry = fc.record({
      size: fc.constantFrom('2x10', '2x12', '5/4x6', '6x6'),
      length: fc.integer({ min: feet(2), max: feet(40) }).map(ticks),
      count: fc.integer({ min: 1, max: 999 }),
    })
    const entries = fc.uniqueArray(entry, { selector: ({ size, length }) => `${size} ${length}` })
    fc.assert(
      fc.property(entries, (list) => {
        const bySize = [...Map.groupBy(list, ({ size }) => size).values()].flat() as never
        expect(stockCounts(printStockCounts(bySize))).toEqual(bySize)
        expect(stockLengths(printStockLengths(bySize)).length).toBe(list.length)
      }),
    )
  })
})
