import { type Cents, cents, printMoney } from '../units/index.ts'
import type { Sized, SizingWork } from './types.ts'

/** What sizes cost now and then, and how sure that is, e.g. "$4,000.00 → at most $3,900.00, $100.00 less.". */
export function costWords({ costBefore, beforeAtMost, costAfter, atMost, failingBefore }: Sized): string {
  const printed = (cost: Cents, most: boolean): string => `${most ? 'at most ' : ''}${printMoney(cost)}`
  const after = printed(costAfter, atMost)
  const cost =
    costBefore === null
      ? after
      : `${printed(costBefore, beforeAtMost)} → ${after}, ${byWords(costBefore, costAfter)}`
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

/** Said of sizes that no table covers; empty of others. */
export function basisWords({ work, byCalculation }: Sized): string {
  if (work.basis === 'tables') return ''
  const checks = byCalculation.length === 1 ? 'one check' : `${byCalculation.length} checks`
  return `No table covers this frame in any size: ${checks} of it hold${byCalculation.length === 1 ? 's' : ''} by calculation alone. Ask the building official whether that will do, or have a licensed designer confirm it, before you order.`
}

/** Said where sizing changes nothing. */
export function unchangedWords({ proven }: SizingWork): string {
  return proven
    ? 'The sizes as stated are the cheapest that pass.'
    : 'Nothing cheaper that passes was found than the sizes as stated.'
}
