import type { Brand } from './brand.ts'

/** Money as a whole count of cents. */
export type Cents = Brand<'Cents'>

/** A unit price as a whole count of 1/100 cent, for goods sold by the pound or the foot. */
export type UnitPrice = Brand<'UnitPrice'>

/** A share (margin, tax, waste) as a whole count of 1/100 percent: 3200 is 32 %. */
export type Share = Brand<'Share'>

/** Largest sum reckoned with: $1,000,000,000. Its product with a share or a quantity stays an exact integer. */
export const MAX_CENTS = 100_000_000_000

/** Brands a whole number of cents. Throws on a fraction or beyond ±$1,000,000,000: that is a bug, not input. */
export function cents(n: number): Cents {
  if (!Number.isInteger(n) || Math.abs(n) > MAX_CENTS) {
    throw new RangeError(`${n} is not a whole number of cents within ±$1,000,000,000`)
  }
  return (n === 0 ? 0 : n) as Cents
}

export function unitPrice(hundredthsOfACent: number): UnitPrice {
  if (!Number.isInteger(hundredthsOfACent) || hundredthsOfACent < 0 || hundredthsOfACent > MAX_CENTS) {
    throw new RangeError(`${hundredthsOfACent} is not a whole number of 1/100 cent`)
  }
  return hundredthsOfACent as UnitPrice
}

export function share(hundredthsOfAPercent: number): Share {
  if (!Number.isInteger(hundredthsOfAPercent) || Math.abs(hundredthsOfAPercent) > 1_000_000) {
    throw new RangeError(`${hundredthsOfAPercent} is not a whole number of 1/100 percent`)
  }
  return hundredthsOfAPercent as Share
}

/**
 * numerator ÷ denominator of whole numbers, rounded half away from zero, exactly (by BigInt).
 * The one rounding rule for money.
 */
export function divideRounded(numerator: bigint, denominator: bigint): Cents {
  const negative = numerator < 0n !== denominator < 0n
  const n = numerator < 0n ? -numerator : numerator
  const d = denominator < 0n ? -denominator : denominator
  const rounded = (2n * n + d) / (2n * d)
  return cents(Number(negative ? -rounded : rounded))
}

/** share × amount, rounded half away from zero. */
export function shareOf(amount: Cents, part: Share): Cents {
  return divideRounded(BigInt(amount) * BigInt(part), 10_000n)
}

/**
 * quantity × unit price, rounded half away from zero.
 * @param thousandths quantity in whole 1/1000 of its unit
 */
export function priceOf(thousandths: number, price: UnitPrice): Cents {
  return divideRounded(BigInt(thousandths) * BigInt(price), 100_000n)
}

export function sumCents(amounts: readonly Cents[]): Cents {
  return cents(amounts.reduce((total, amount) => total + amount, 0))
}
