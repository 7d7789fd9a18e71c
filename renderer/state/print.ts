import { cents, divideRounded, printMoney } from '../../core/units/index.ts'

/** Cents as whole dollars, `$1,214`: where cents would only be noise. */
export function printDollars(amount: number): string {
  return printMoney(cents(divideRounded(BigInt(amount), 100n) * 100)).replace(/\.00$/, '')
}

export function printDifference(amount: number, print: (size: number) => string): string {
  return `${amount < 0 ? '−' : '+'}${print(Math.abs(amount))}`
}

/** 1/100 % with one decimal, `3.4 %`. */
export function printPercent(hundredths: number): string {
  return `${(hundredths / 100).toFixed(1)} %`
}

/** Hours in 1/100 as `47` or `47.5`. */
export function printHours(hundredths: number): string {
  return `${Math.round(hundredths / 10) / 10}`
}

/** Whole 1/1000 of a unit as `12`, `3.55`. */
export function printThousandths(thousandths: number): string {
  return (thousandths / 1000).toLocaleString('en-US', { maximumFractionDigits: 3 })
}

/** made once: to make one takes longer than to print a hundred times */
const CLOCK = new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit' })

/** The clock time of an ISO moment, `10:42`, in the reader's own zone. */
export function printClock(iso: string): string {
  const moment = new Date(iso)
  return Number.isNaN(moment.getTime()) ? '' : CLOCK.format(moment)
}

export function plural(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`
}
