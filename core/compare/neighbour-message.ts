import { type Cents, cents, printLength, printMoney, ticks } from '../units/index.ts'
import type { CompareRow } from './types.ts'

/** One line on a neighbouring width: what it costs or saves against the own one, and why. */
export function neighbourMessage(row: CompareRow, own: CompareRow): string {
  const side = row.width < own.width ? 'narrower' : 'wider'
  const by = printLength(ticks(Math.abs(row.width - own.width)))
  const cost = moneyChange(cents(row.cost - own.cost))
  const lumber = moneyChange(cents(row.lumber - own.lumber))
  return `${by} ${side}, ${printLength(row.width)}: ${cost} (lumber ${lumber})${reason(row, own)}.`
}

function reason(row: CompareRow, own: CompareRow): string {
  if (row.fitsWithDecking && !own.fitsWithDecking)
    return ', for every run and course then comes whole from one board'
  const change = row.joints - own.joints
  if (change === 0) return ''
  const count = Math.abs(change)
  return `, with ${count} ${count === 1 ? 'joint' : 'joints'} ${change < 0 ? 'fewer' : 'more'}`
}

function moneyChange(change: Cents): string {
  if (change === 0) return 'costs the same'
  return change < 0 ? `saves ${printMoney(cents(-change))}` : `costs ${printMoney(change)} more`
}
