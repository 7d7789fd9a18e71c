import { describe, expect, test } from 'vitest'
import {
  cents,
  divideRounded,
  MAX_CENTS,
  priceOf,
  share,
  shareOf,
  sumCents,
  unitPrice,
} from '../../../core/units/index.ts'

describe('money is rounded to the cent, half away from zero', () => {
  test.each([
    [1n, 2n, 1],
    [-1n, 2n, -1],
    [1n, -2n, -1],
    [-1n, -2n, 1],
    [49n, 100n, 0],
    [-49n, 100n, 0],
    [51n, 100n, 1],
    [3n, 2n, 2],
    [5n, 2n, 3],
    [-5n, 2n, -3],
    [0n, 7n, 0],
    // beyond what a double holds exactly
    [900_719_925_474_099_301n, 18_014_398_509_481_986n, 50],
  ])('%d over %d', (numerator, denominator, rounded) => {
    expect(divideRounded(numerator, denominator)).toBe(rounded)
  })

  test('nothing rounds to a negative zero', () => {
    expect(Object.is(divideRounded(-1n, 100n), 0)).toBe(true)
    expect(Object.is(cents(-0), 0)).toBe(true)
  })
})

describe('a share of a sum', () => {
  test.each([
    // 6.25 % of $100.40 is $6.275
    [10_040, 625, 628],
    [-10_040, 625, -628],
    [10_039, 625, 627],
    [100, 10_000, 100],
    [100, 0, 0],
    [MAX_CENTS, 10_000, MAX_CENTS],
  ])('%d cents, %d/100 %%', (amount, part, result) => {
    expect(shareOf(cents(amount), share(part))).toBe(result)
  })
})

describe('a quantity at a unit price', () => {
  test.each([
    // 17 pieces at $2.15
    [17_000, 21_500, 3655],
    // 2.5 lb at $3.4567: $8.64175
    [2_500, 34_567, 864],
    // 0.5 lb at $0.0100, half a cent
    [500, 100, 1],
    [499, 100, 0],
    [0, 100, 0],
  ])('%d thousandths at %d/100 cent', (thousandths, price, result) => {
    expect(priceOf(thousandths, unitPrice(price))).toBe(result)
  })
})

test('a sum of sums is a sum', () => {
  expect(sumCents([])).toBe(0)
  expect(sumCents([cents(5), cents(-7), cents(100)])).toBe(98)
  expect(() => sumCents([cents(MAX_CENTS), cents(1)])).toThrow('whole number of cents')
})

describe('what is no sum, price or share of whole units is a bug', () => {
  test.each([0.5, Number.NaN, Number.POSITIVE_INFINITY, MAX_CENTS + 1, -MAX_CENTS - 1])('%d cents', (n) => {
    expect(() => cents(n)).toThrow(`${n} is not a whole number of cents within ±$1,000,000,000`)
  })

  test.each([0.5, Number.NaN, -1, MAX_CENTS + 1])('a unit price of %d', (n) => {
    expect(() => unitPrice(n)).toThrow(`${n} is not a whole number of 1/100 cent`)
  })

  test.each([0.5, Number.NaN, 1_000_001, -1_000_001])('a share of %d', (n) => {
    expect(() => share(n)).toThrow(`${n} is not a whole number of 1/100 percent`)
  })

  test('the largest of each is accepted', () => {
    expect([cents(MAX_CENTS), cents(-MAX_CENTS), unitPrice(MAX_CENTS), unitPrice(0)]).toEqual([
      MAX_CENTS,
      -MAX_CENTS,
      MAX_CENTS,
      0,
    ])
    expect([share(1_000_000), share(-1_000_000)]).toEqual([1_000_000, -1_000_000])
  })
})
