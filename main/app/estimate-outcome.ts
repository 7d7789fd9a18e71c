import type { Check } from '../../core/checks/index.ts'
import type { Estimate } from '../../core/estimate-types.ts'
import type { Fault } from '../../core/job/index.ts'
import type { PricedEstimate } from '../exports/workbook/index.ts'

/** Whether every product has a plan and every good a price. */
export function isPriced(estimate: Estimate): estimate is PricedEstimate {
  return estimate.pricing !== null
}

/** Why an estimate has no price: each sentence says what is wrong and what would help. */
export function reasonsForNoPrice({ infeasible, priceFaults }: Estimate): readonly string[] {
  return [
    ...priceFaults.map(({ message, fix }) => joined(message, fix)),
    ...infeasible.map(({ message, help }) => joined(message, help)),
  ]
}

/** A fault of a job or a price book in one line, without its place. */
export function faultSentence({ path, message, fix }: Fault): string {
  return joined(path === '' ? message : `${path}: ${message}`, fix)
}

/** True where a check fails, is calculated only or lies outside the tables: what an official would stop at. */
export function needsAttention({ status }: Check): boolean {
  return status === 'fails' || status === 'calculated only' || status === 'outside scope'
}

function joined(message: string, fix: string): string {
  if (fix === '') return message
  return /[.;:!?]$/.test(message) ? `${message} ${fix}` : `${message}; ${fix}`
}
