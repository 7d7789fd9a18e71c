import type { Line, Pricing } from '../pricing/index.ts'
import { type Cents, cents } from '../units/index.ts'
import type { ComparePart } from './types.ts'

/** What a cost is made of: lumber by product, every other line by its name, tax, contingency, overhead. */
export function costParts(pricing: Pricing): readonly ComparePart[] {
  const { tax, contingency, overhead } = pricing.totals
  const sums = new Map<string, number>()
  const add = (label: string, amount: Cents) => sums.set(label, (sums.get(label) ?? 0) + amount)
  for (const line of pricing.lines) add(partOf(line), line.amount)
  add('Sales tax', tax)
  add('Contingency', contingency)
  add('Overhead', overhead)
  return [...sums]
    .filter(([, amount]) => amount !== 0)
    .map(([label, amount]) => ({ label, amount: cents(amount) }))
}

/** Boards of one product are one part, whatever their lengths. */
function partOf(line: Line): string {
  if (line.group === 'lumber' || line.group === 'decking') {
    return line.label.slice(0, line.label.lastIndexOf(', '))
  }
  return line.label
}

/** How one cost became another, part by part, the largest change first; the changes sum to the difference. */
export function changesBetween(
  before: readonly ComparePart[],
  after: readonly ComparePart[],
): readonly { readonly label: string; readonly change: Cents }[] {
  const was = new Map(before.map(({ label, amount }) => [label, amount]))
  const is = new Map(after.map(({ label, amount }) => [label, amount]))
  return [...new Set([...was.keys(), ...is.keys()])]
    .map((label) => ({ label, change: cents((is.get(label) ?? 0) - (was.get(label) ?? 0)) }))
    .filter(({ change }) => change !== 0)
    .sort((a, b) => Math.abs(b.change) - Math.abs(a.change) || (a.label < b.label ? -1 : 1))
}
