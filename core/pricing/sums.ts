import { type Cents, cents, type UnitPrice } from '../units/index.ts'

/**
 * Most that lines may add up to, $4,000,000: with every share of a job at its bound (tax, contingency, overhead, margin
 * and tax on the price) the price stays below the largest sum that is reckoned with.
 */
export const GREATEST_SUM: Cents = cents(400_000_000)

/** Whether quantity × price stays within what lines may add up to. */
export function isWithin(thousandths: number, price: UnitPrice): boolean {
  return BigInt(thousandths) * BigInt(price) <= BigInt(GREATEST_SUM) * 100_000n
}
