import { IRC_LIMITS } from '../data/index.ts'
import type { Job } from '../job/index.ts'
import type { CheckContext } from './context.ts'
import { byLimit } from './finding.ts'
import { judge } from './judge.ts'
import { ledgerIds } from './members.ts'
import type { Check } from './types.ts'

const FREESTANDING = 'Build the deck freestanding'

/** What the job says that the ledger would hang on, where no rule lets one. */
const WITHOUT_RULE: { readonly [band in Exclude<Job['site']['band'], 'sound' | 'masonry veneer'>]: string } =
  {
    'cantilevered bay': 'No rule lets a ledger hang on a bay that is itself cantilevered',
    'I-joists or trusses':
      'No table covers a ledger on I-joists or trusses without a band of solid or listed wood',
    unknown: 'It is not known what the ledger would hang on',
  }

/** Whether the house can carry a ledger: a sound band of wood, never masonry veneer. IRC 2021 R507.9.1.1. */
export function checkLedgerBand(context: CheckContext): readonly Check[] {
  const { job, frame } = context
  if (ledgerIds(frame).length === 0) return []
  const { band } = job.site
  const sound = band === 'sound'
  const veneer = band === 'masonry veneer'
  const found = byLimit(
    IRC_LIMITS.noVeneer,
    { value: 1, unit: 'count' },
    { value: veneer ? 0 : 1, unit: 'count' },
    [`As the job states it: ${sound ? 'a sound band joist of wood' : band}`],
  )
  return [
    judge(job, {
      id: 'ledger-band',
      title: 'What the ledger hangs on',
      subjects: ledgerIds(frame),
      fields: ['site.band', 'site.attachment'],
      prescriptive: sound ? { ...found, ratio: null } : veneer ? found : null,
      calculated: null,
      good: () => 'The ledger hangs on a sound band joist of wood, as the job states.',
      bad: 'A ledger may not hang on masonry veneer.',
      uncovered: sound || veneer ? '' : WITHOUT_RULE[band],
      whenUncovered:
        band === 'unknown'
          ? `Open the siding and look, or: ${FREESTANDING.toLowerCase()}.`
          : `${FREESTANDING}, or have a licensed designer hang it.`,
      remedy: `${FREESTANDING}.`,
      caution: sound
        ? 'Look behind the siding before you rely on it: rot, a band of board or foam, or a sill out of line forbid it.'
        : '',
    }),
  ]
}
