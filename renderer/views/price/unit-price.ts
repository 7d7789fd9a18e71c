import type { UnitPrice } from '../../../core/units/index.ts'

/** Dollars and cents, with 1/100 cent only where the price has them: `$23.49`, `$0.1234`. */
export function printUnitPrice(price: UnitPrice): string {
  return `$${(price / 10_000).toFixed(4).replace(/0{1,2}$/, '')}`
}
