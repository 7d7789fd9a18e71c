import type { Quantity } from '../checks/index.ts'
import { printLength, ticks } from '../units/index.ts'

/**
 * A demand or a capacity in print: whole pounds, the others to a tenth, a demand rounded up and a capacity down, so that no paper shows a check
 * in a better light than the check itself.
 */
export function quantityText({ value, unit }: Quantity, is: 'demand' | 'capacity'): string {
  const round =
    is === 'demand' ? (n: number): number => Math.ceil(n - 1e-6) : (n: number): number => Math.floor(n + 1e-6)
  if (unit === 'ticks') return printLength(ticks(round(value)))
  const parts = unit === 'lb' ? 1 : 10
  const shown = round(value * parts) / parts
  const [whole = '', part] = `${shown}`.split('.')
  const figure = whole.replace(/\B(?=(?:\d{3})+$)/g, ',') + (part === undefined ? '' : `.${part}`)
  return unit === 'count' ? figure : `${figure} ${unit}`
}
