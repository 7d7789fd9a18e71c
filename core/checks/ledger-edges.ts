import { LEDGER_EDGES, sectionOf } from '../data/index.ts'
import { toInches } from '../units/index.ts'
import type { CheckContext } from './context.ts'
import { length } from './finding.ts'
import { judge } from './judge.ts'
import { ledgerIds } from './members.ts'
import type { Check } from './types.ts'

/**
 * Where the two rows of ledger fasteners may lie, IRC 2021 Table R507.9.1.3(2). The ledger's size has room for them or
 * has not; where in that room they go is the crew's, and is told.
 */
export function checkLedgerEdges({ job, frame }: CheckContext): readonly Check[] {
  if (ledgerIds(frame).length === 0) return []
  const { size } = job.frame.joists
  const { top, bottom, ends, rows, bottomRow, source } = LEDGER_EDGES
  const depth = toInches(sectionOf(size).depth)
  const least = bottomRow[size]
  const most = depth - bottom
  const steps = [
    `Top row ${top} in or more under the ledger's top edge; bottom row ${bottom} in or more above its bottom edge`,
    `Rows ${rows[0]} to ${rows[1]} in apart; ${ends} in or more from each end; staggered along the ledger`,
    ...(least === undefined ? [] : [`Bottom row ${least} to ${most} in below the top edge of a ${size}`]),
  ]
  return [
    judge(job, {
      id: 'ledger-edges',
      title: 'Places of ledger fasteners',
      subjects: ledgerIds(frame),
      fields: ['frame.joists.size', 'site.ledgerFastener'],
      prescriptive:
        least === undefined
          ? null
          : {
              method: 'prescriptive',
              document: source.document,
              edition: source.edition,
              clause: source.clause,
              demand: length(Math.round(least * 32)),
              capacity: length(Math.round(most * 32)),
              ratio: null,
              confidence: source.confidence,
              lookup: `row ${size}`,
              steps,
            },
      calculated: null,
      good: () =>
        `Fasteners: top row ${top} in or more from the top edge, bottom row ${least} to ${most} in from it, ${ends} in from the ends.`,
      bad: '',
      uncovered: `The table of edge distances has no row for a ${size} ledger`,
      remedy: '',
      caution: '',
    }),
  ]
}
