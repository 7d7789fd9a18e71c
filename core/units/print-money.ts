import type { Cents } from './money.ts'

/** Dollars and cents: `$1,234.50`, below zero `-$5.00`. */
export function printMoney(amount: Cents): string {
  const size = Math.abs(amount)
  const dollars = `${Math.floor(size / 100)}`.replace(/\B(?=(?:\d{3})+$)/g, ',')
  return `${amount < 0 ? '-' : ''}$${dollars}.${`${size % 100}`.padStart(2, '0')}`
}

/** A difference: `+$5.00`, `-$5.00`, `$0.00`. */
export function printMoneyChange(amount: Cents): string {
  return `${amount > 0 ? '+' : ''}${printMoney(amount)}`
}
