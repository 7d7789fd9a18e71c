import type { FoundOption } from '../../ground/index.ts'
import { cents, printMoney } from '../../units/index.ts'
import type { PaperTable } from '../types.ts'
import { tableOf } from './table.ts'

/** What can be done about a hole that was found off, each with its cost, its checks and what is cut otherwise. */
export function foundTable(options: readonly FoundOption[]): PaperTable {
  return tableOf(
    'found-off',
    'What can be done',
    [
      ['way', 'Way', 'left'],
      ['cost', 'Cost', 'right'],
      ['checks', 'Checks', 'left'],
      ['what', 'What it means', 'left'],
    ],
    options.map(({ kind, what, cannot, checks, cuts, cost }) => ({
      way: kind,
      cost: cannot !== '' ? 'cannot' : cost === null ? 'no price' : changeOf(cost),
      checks:
        cannot !== ''
          ? ''
          : checks.length === 0
            ? 'as planned'
            : checks.map(({ title, status }) => `${title}: ${status}`).join('; '),
      what: cannot !== '' ? cannot : [what, ...cuts.map((cut) => `${cut}.`)].join(' '),
    })),
  )
}

function changeOf(cost: number): string {
  if (cost === 0) return 'nothing'
  return cost < 0 ? `${printMoney(cents(-cost))} less` : `${printMoney(cents(cost))} more`
}
