import { describe, expect, test } from 'vitest'
import {
  cents,
  MAX_CENTS,
  parseMoney,
  parseShare,
  printMoney,
  printMoneyChange,
  printShare,
  share,
} from '../../../core/units/index.ts'

describe('money is read to the cent', () => {
  test.each([
    ['$1,234.50', 123_450],
    ['1234.5', 123_450],
    ['$ 450', 45_000],
    ['450.', 45_000],
    ['.05', 5],
    ['-$5', -500],
    ['−5.25', -525],
    ['- $1,000,000.00', -100_000_000],
    ['$1,000,000,000', MAX_CENTS],
    ['  0.10 ', 10],
    ['-0', 0],
  ])('%s', (text, value) => {
    expect(parseMoney(text)).toEqual({ ok: true, value })
  })

  test.each([
    ['', 'there is no number here', 0],
    ['$', 'there is no number here', 1],
    ['$1,50', 'the commas do not set off thousands', 2],
    ['1,234,5', 'the commas do not set off thousands', 1],
    ['1.234,50', '"1.234,50" is not a number', 0],
    ['$1.005', 'there are more than two decimals', 5],
    ['1.000', null, 0],
    ['12 dollars', '"12 dollars" is not a number', 0],
    ['$1.2.3', '"1.2.3" is not a number', 1],
    ['1e3', '"1e3" is not a number', 0],
    ['--5', '"-5" is not a number', 1],
    ['$1,000,000,000.01', 'this is more than $1,000,000,000', 0],
    ['9'.repeat(31), 'this is too long to be a number', 0],
  ])('%j', (text, message, at) => {
    const read = parseMoney(text)
    if (message === null) expect(read.ok).toBe(true)
    else expect(read).toMatchObject({ ok: false, error: { message, at } })
  })

  test.each([
    [0, '$0.00'],
    [5, '$0.05'],
    [123_450, '$1,234.50'],
    [100_000, '$1,000.00'],
    [99_999, '$999.99'],
    [-500, '-$5.00'],
    [MAX_CENTS, '$1,000,000,000.00'],
  ])('%d cents are printed %s', (value, printed) => {
    expect(printMoney(cents(value))).toBe(printed)
  })

  test.each([
    [123_450, '+$1,234.50'],
    [-500, '-$5.00'],
    [0, '$0.00'],
  ])('a difference of %d cents is printed %s', (value, printed) => {
    expect(printMoneyChange(cents(value))).toBe(printed)
  })
})

describe('a share is read in percent', () => {
  test.each([
    ['32 %', 3200],
    ['8.25%', 825],
    ['8.25', 825],
    ['0', 0],
    ['-5 %', -500],
    ['10,000 %', 1_000_000],
  ])('%s', (text, value) => {
    expect(parseShare(text)).toEqual({ ok: true, value })
  })

  test.each([
    ['%', 'there is no number here'],
    ['8.255 %', 'there are more than two decimals'],
    ['8 percent', '"8 percent" is not a number'],
    ['8 %%', '"8 %" is not a number'],
    ['10000.01', 'this is more than 10,000 %'],
  ])('%s', (text, message) => {
    expect(parseShare(text)).toMatchObject({ ok: false, error: { message } })
  })

  test.each([
    [3200, '32 %'],
    [825, '8.25 %'],
    [850, '8.5 %'],
    [805, '8.05 %'],
    [5, '0.05 %'],
    [0, '0 %'],
    [-550, '-5.5 %'],
  ])('%d is printed %s', (value, printed) => {
    expect(printShare(share(value))).toBe(printed)
  })
})
