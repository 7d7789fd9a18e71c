import { type Cents, cents, printMoney } from '../units/index.ts'
import type { Sized, SizingWork } from './types.ts'

/** What sizes cost now and then, and how sure that is, e.g. "$4,000.00 → at most $3,900.00, $100.00 less.". */
export function costWords({ costBefore, costAfter, atMost, failingBefore }: Sized): string {
  const after = `${atMost ? 'at most ' : ''}${printMoney(costAfter)}`
  const cost =
    costBefore === null ? after : `${printMoney(costBefore)} → ${after}, ${byWords(costBefore, costAfter)}`
  const failing = failingBefore.length === 0 ? '' : ' It does not pass as it is now.'
  const lower = atMost ? ' The estimate, worked to its end, may come out a little lower.' : ''
  return `${cost}.${failing}${lower}`
}

function byWords(before: Cents, after: Cents): string {
  if (after === before) return 'no change'
  return `${printMoney(cents(Math.abs(after - before)))} ${after < before ? 'less' : 'more'}`
}

/** Whether something cheaper may be left. */
export function proofWords({ proven, ways, priced }: SizingWork): string {
  return proven
    ? `Nothing that passes is cheaper: ${ways.toLocaleString('en-US')} ways, all but ${priced} ruled out by checks or by their least cost.`
    : 'These may not be the cheapest sizes that pass: the work allowed was done before the others were ruled out.'
}

/** Said where sizing changes nothing. */
export function unchangedWords({ proven }: SizingWork): string {
  return proven
    ? 'The sizes as stated are the cheapest that pass.'
    : 'Nothing cheaper that passes was found than the sizes as stated.'
}
