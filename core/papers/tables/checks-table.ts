import { type Check, percent } from '../../checks/index.ts'
import type { Design } from '../../estimate-types.ts'
import type { PaperTable } from '../types.ts'
import { tableOf } from './table.ts'

/** Every check with what decides it: clause, how much of the limit is used, how far the figure was verified. */
export function checksTable({ checks }: Pick<Design, 'checks'>): PaperTable {
  return tableOf(
    'checks',
    'Checks',
    [
      ['title', 'Check', 'left'],
      ['status', 'Status', 'left'],
      ['clause', 'Clause', 'left'],
      ['used', 'Used', 'right'],
      ['confidence', 'Decided by', 'left'],
      ['message', 'Finding', 'left'],
      ['remedy', 'What to do', 'left'],
    ],
    checks.map((check) => ({
      title: check.title,
      status: check.status,
      clause: clauseOf(check),
      used: usedOf(check),
      confidence: check.basis,
      message: check.message,
      remedy: check.remedy,
    })),
  )
}

function clauseOf({ governing }: Check): string {
  return governing === null ? '' : `${governing.document} ${governing.edition} ${governing.clause}`
}

function usedOf({ governing }: Check): string {
  const ratio = governing?.ratio ?? null
  return ratio === null ? '' : percent(ratio)
}
