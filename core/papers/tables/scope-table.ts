import type { Estimate } from '../../estimate-types.ts'
import { printMoney } from '../../units/index.ts'
import type { PaperTable } from '../types.ts'
import { tableOf } from './table.ts'

/** Things builders forget, each priced or said not to be included. */
export function scopeTable({ scope }: Pick<Estimate, 'scope'>): PaperTable {
  return tableOf(
    'scope',
    'Is it in the price?',
    [
      ['topic', 'Topic', 'left'],
      ['amount', 'Amount', 'right'],
      ['message', '', 'left'],
    ],
    scope.map(({ topic, state, amount, message }) => ({
      topic,
      amount: state === 'priced' ? printMoney(amount) : 'not included',
      message,
    })),
  )
}
