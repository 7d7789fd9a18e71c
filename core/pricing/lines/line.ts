import { type Cents, cents, priceOf, type UnitPrice, unitPrice } from '../../units/index.ts'
import type { Line } from '../types.ts'

/** A line: its amount is quantity × unit price, rounded once, half away from zero. */
export function line(of: Omit<Line, 'amount'>): Line {
  return { ...of, amount: priceOf(of.thousandths, of.price) }
}

/** Whole cents as a unit price. */
export function perUnit(price: Cents): UnitPrice {
  return unitPrice(price * 100)
}

/** A line of `count` equal things at a price in whole cents; its amount is exact. */
export function countLine(
  of: Omit<Line, 'amount' | 'price' | 'thousandths'>,
  count: number,
  each: Cents,
): Line {
  const made = line({ ...of, thousandths: count * 1000, price: perUnit(each) })
  if (made.amount !== cents(count * each))
    throw new Error(`${of.id}: ${count} × ${each} is not ${made.amount}`)
  return made
}
