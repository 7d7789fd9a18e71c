import { expect, test } from 'vitest'
import {
  plural,
  printDollars,
  printHours,
  printPercent,
  printThousandths,
} from '../../../renderer/state/print.ts'

test('whole dollars are rounded half away from zero, as every sum is', () => {
  expect(printDollars(121_450)).toBe('$1,215')
  expect(printDollars(-121_450)).toBe('-$1,215')
})

test('hours, waste and quantities read as a person writes them', () => {
  expect(printHours(3_340)).toBe('33.4')
  expect(printHours(4_700)).toBe('47')
  expect(printPercent(230)).toBe('2.3 %')
  expect(printThousandths(3_550)).toBe('3.55')
  expect(plural(1, 'board')).toBe('1 board')
  expect(plural(61, 'board')).toBe('61 boards')
})
