import { type Cents, cents, printMoneyChange } from '../../../../core/units/index.ts'

/** What an amount is beside its estimate: `+$12.40, +3.1 %`; empty where they are the same. */
export function differenceWords(amount: Cents, estimated: Cents): string {
  const difference = cents(amount - estimated)
  if (difference === 0) return ''
  if (estimated === 0) return printMoneyChange(difference)
  const percent = (difference / Math.abs(estimated)) * 100
  return `${printMoneyChange(difference)}, ${percent > 0 ? '+' : ''}${percent.toFixed(1)} %`
}
