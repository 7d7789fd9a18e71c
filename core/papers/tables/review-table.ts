import type { Check, Finding } from '../../checks/index.ts'
import { quantityText } from '../quantity-text.ts'
import type { PaperTable } from '../types.ts'
import { tableOf } from './table.ts'

/** Each check as a plan reviewer reads it: clause, demand, capacity, ratio, and how well the figure is known. */
export function reviewTable(checks: readonly Check[]): PaperTable {
  return tableOf(
    'review',
    'Every check',
    [
      ['title', 'Check', 'left'],
      ['status', 'Status', 'left'],
      ['clause', 'Clause', 'left'],
      ['demand', 'Demand', 'right'],
      ['capacity', 'Capacity', 'right'],
      ['ratio', 'Ratio', 'right'],
      ['confidence', 'Decided by', 'left'],
      ['message', 'Finding', 'left'],
    ],
    checks.map(({ title, status, governing, basis, message }) => ({
      title,
      status:
        status === 'passes' ? status : status === 'near' ? 'passes, near its limit' : `${status}: see below`,
      clause: governing === null ? '' : `${governing.document} ${governing.edition} ${governing.clause}`,
      ...measured(governing),
      ratio: governing?.ratio == null ? '' : ratioText(governing.ratio),
      confidence: basis,
      message,
    })),
  )
}

/** To the next thousandth; where a table allows nothing it has no figure. */
function ratioText(ratio: number): string {
  return ratio > 9.99 ? '>9.990' : (Math.ceil(ratio * 1000 - 1e-6) / 1000).toFixed(3)
}

/**
 * What is there and what is allowed, where the one stands against the other. A rule that is kept or not has no figures;
 * of one that asks for something from a measure on, or that sets another measure, only what is there is told: beside a
 * smaller figure it would read as a failure.
 */
function measured(finding: Finding | null): { readonly demand: string; readonly capacity: string } {
  if (finding === null) return { demand: '', capacity: '' }
  const { demand, capacity, ratio } = finding
  if (ratio === null && demand.unit === 'count') return { demand: '', capacity: '' }
  const compared =
    capacity !== null && (ratio !== null || (demand.unit === capacity.unit && demand.value <= capacity.value))
  return {
    demand: quantityText(demand, 'demand'),
    capacity: compared ? quantityText(capacity, 'capacity') : '',
  }
}
