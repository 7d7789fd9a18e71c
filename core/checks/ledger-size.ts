import { dressedSizes, IRC_LIMITS } from '../data/index.ts'
import type { CheckContext } from './context.ts'
import { byLimit, length } from './finding.ts'
import { judge } from './judge.ts'
import { ledgerIds } from './members.ts'
import type { Check } from './types.ts'

/** Least size of a ledger, 2x8, IRC 2021 R507.9.1.1. */
export function checkLedgerSize(context: CheckContext): readonly Check[] {
  const { job, frame } = context
  if (ledgerIds(frame).length === 0) return []
  const { size } = job.frame.joists
  const depth = dressedSizes[size].depth
  const least = dressedSizes['2x8'].depth
  const found = byLimit(IRC_LIMITS.leastLedger, length(least), length(depth), [
    `The ledger is ${size}, as the joists; 2x8 is the least`,
  ])
  return [
    judge(job, {
      id: 'ledger-size',
      title: 'Ledger size',
      subjects: ledgerIds(context.frame),
      fields: ['frame.joists.size'],
      // sizes come in steps: the least that is allowed is not near a limit
      prescriptive: found.ratio === 1 ? { ...found, ratio: null } : found,
      calculated: null,
      good: () => `A ${size} ledger is large enough.`,
      bad: `A ${size} ledger is too small; 2x8 is the least.`,
      uncovered: 'No rule covers the size of the ledger',
      remedy: 'Use 2x8 joists or deeper.',
      caution: '',
    }),
  ]
}
