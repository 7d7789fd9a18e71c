import { LEDGER_SPACING, sectionOf } from '../data/index.ts'
import type { Frame } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import { ledgerSpacing } from '../rules/index.ts'
import { inches, psf, type Ticks, ticks, toInches } from '../units/index.ts'
import type { GoodShare } from './tally.ts'

/** First fastener from the ledger's end, IRC 2021 Table R507.9.1.3(2): 2 in at least. */
const END_DISTANCE = inches(2)

/**
 * Fasteners along the ledger at the table's spacing, staggered, with a second one at either end.
 * Where the table has no entry they are counted at the closest spacing it has, and the rule says so.
 */
export function ledgerFasteners(job: Job, frame: Frame): readonly GoodShare[] {
  const ledger = frame.members.find((member) => member.role === 'ledger')
  if (ledger === undefined) return []
  const { liveLoad, snowLoad, ledgerFastener, sheathing } = job.site
  const found = ledgerSpacing(
    clearJoistSpan(job),
    ledgerFastener,
    sheathing,
    psf(Math.max(liveLoad, snowLoad)),
  )
  const tabled = found.kind === 'row' && found.value !== null ? found.value : null
  const spacing = tabled ?? closestSpacing()
  const along = toInches(ledger.length - 2 * END_DISTANCE)
  const count = Math.max(2, Math.ceil(along / spacing) + 1) + 2
  return [
    {
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
    },
  ]
}

/** From the ledger's face to the beam's near face. */
function clearJoistSpan(job: Job): Ticks {
  const { size, plies, setback } = job.frame.beams.front
  const halfBeam = (sectionOf(size).thickness * plies) / 2
  return ticks(job.size.depth - setback - halfBeam - sectionOf(job.frame.joists.size).thickness)
}

function closestSpacing(): number {
  const cells = LEDGER_SPACING.blocks.flatMap((block) => Object.values(block.rows).flat())
  return Math.min(...cells.filter((cell) => cell !== null))
}
