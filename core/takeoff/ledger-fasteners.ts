import { LEDGER_SPACING } from '../data/index.ts'
import type { Frame, Member } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import { ledgerSpacing } from '../rules/index.ts'
import { inches, psf, type Ticks, ticks, toInches } from '../units/index.ts'
import type { GoodShare } from './tally.ts'

/** First fastener from the ledger's end, IRC 2021 Table R507.9.1.3(2): 2 in at least. */
const END_DISTANCE = inches(2)

/**
 * Fasteners along each ledger at the table's spacing, staggered, with a second one at either end.
 * Where the table has no entry they are counted at the closest spacing it has, and the rule says so.
 */
export function ledgerFasteners(job: Job, frame: Frame): readonly GoodShare[] {
  return frame.members
    .filter((member) => member.role === 'ledger')
    .map((ledger) => alongLedger(job, frame, ledger))
}

function alongLedger(job: Job, frame: Frame, ledger: Member): GoodShare {
  const { liveLoad, snowLoad, ledgerFastener, sheathing } = job.site
  const found = ledgerSpacing(
    clearJoistSpan(frame, ledger),
    ledgerFastener,
    sheathing,
    psf(Math.max(liveLoad, snowLoad)),
  )
  const tabled = found.kind === 'row' && found.value !== null ? found.value : null
  const spacing = tabled ?? closestSpacing()
  const along = toInches(ledger.length - 2 * END_DISTANCE)
  const count = Math.max(2, Math.ceil(along / spacing) + 1) + 2
  return {
    sku: ledgerFastener === 'lag' ? 'ledger-lag-1/2' : 'ledger-bolt-1/2',
    quantity: count,
    cause: {
      fields: [
        'site.ledgerFastener',
        'site.sheathing',
        'site.liveLoad',
        'site.snowLoad',
        'size.width',
        'size.depth',
      ],
      ids: [ledger.id],
      rule:
        tabled === null
          ? `No entry in IRC 2021 Table R507.9.1.3(1) (${found.sentence}): counted at its closest spacing, ${spacing} in; a licensed designer must set it`
          : `Every ${spacing} in, IRC 2021 Table R507.9.1.3(1) (${found.sentence}), two at either end`,
    },
  }
}

/** The longest from the ledger's face to the near face of what carries the joists next. */
function clearJoistSpan({ joistGroups }: Frame, ledger: Member): Ticks {
  const clears = joistGroups.flatMap(({ lines }) =>
    lines.flatMap(({ supports }) =>
      supports.slice(1).flatMap((far, i) => {
        const near = supports[i]
        const here = near !== undefined && (near.id === ledger.id || far.id === ledger.id)
        return here ? [far.at - far.half - (near.at + near.half)] : []
      }),
    ),
  )
  return ticks(Math.max(0, ...clears.map(Math.floor)))
}

function closestSpacing(): number {
  const cells = LEDGER_SPACING.blocks.flatMap((block) => Object.values(block.rows).flat())
  return Math.min(...cells.filter((cell) => cell !== null))
}
