import { expect, test } from 'vitest'
import { bookAge } from '../../../core/pricing/index.ts'

test('the age of a book is counted in days of the calendar, over leap days and the turn of a year', () => {
  expect(bookAge('2026-11-01', '2026-11-25')).toBe(24)
  expect(bookAge('2027-12-31', '2028-03-01')).toBe(61)
  expect(bookAge('2026-12-01', '2026-11-25')).toBe(-6)
})

test('it agrees with the days that the runtime counts, one by one over four centuries', () => {
  const start = Date.UTC(1999, 0, 1)
  for (let days = 0; days < 146_097; days += 13) {
    const date = new Date(start + days * 86_400_000).toISOString().slice(0, 10)
    expect(bookAge('1999-01-01', date)).toBe(days)
  }
})
