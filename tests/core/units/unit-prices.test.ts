import { expect, test } from 'vitest'
import { parseQuantity, parseUnitPrice, printUnitPrice, unitPrice } from '../../../core/units/index.ts'

test.each([
  ['$2.39', 23_900],
  ['0.1026', 1026],
  [' $ 1,250 ', 12_500_000],
  ['.5', 5000],
  ['12.', 120_000],
  ['999999.9999', 9_999_999_999],
])('the unit price %j is read to 1/100 cent', (text, value) => {
  expect(parseUnitPrice(text)).toEqual({ ok: true, value })
})

test.each([
  ['', 'no price here'],
  ['$', 'no price here'],
  ['-1', 'below zero'],
  ['$1,25', 'not a price'],
  ['1e3', 'not a price'],
  ['.', 'not a price'],
  ['1000000', 'not a price'],
  ['0.00001', 'four decimals'],
])('the unit price %j is refused', (text, message) => {
  const read = parseUnitPrice(text)
  expect(read.ok ? '' : read.error.message).toContain(message)
})

test.each([
  [23_900, '$2.39'],
  [1026, '$0.1026'],
  [1020, '$0.1020'],
  [11_500_000, '$1,150.00'],
  [0, '$0.00'],
])('%d hundredths of a cent are printed %s', (price, text) => {
  expect(printUnitPrice(unitPrice(price))).toBe(text)
})

test.each([
  ['40', 40_000],
  ['12.5', 12_500],
  ['1,200.125', 1_200_125],
  ['.5', 500],
  ['0', 0],
  ['100000', 100_000_000],
])('the quantity %j is read to 1/1000', (text, value) => {
  expect(parseQuantity(text)).toEqual({ ok: true, value })
})

test.each(['', '-1', '1,2', '1.2345', '100000.1', '1e2', 'a', '.', '9'.repeat(30)])(
  'the quantity %j is refused',
  (text) => {
    expect(parseQuantity(text).ok).toBe(false)
  },
)
