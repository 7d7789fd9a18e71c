import type { Check } from '../../checks/index.ts'
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
      demand: governing === null ? '' : quantityText(governing.demand, 'demand'),
      capacity: governing?.capacity == null ? '' : quantityText(governing.capacity, 'capacity'),
      ratio:
        governing?.ratio == null ? '' : `${(Math.ceil(governing.ratio * 1000 - 1e-6) / 1000).toFixed(3)}`,
      confidence: basis,
      message,
    })),
  )
}
