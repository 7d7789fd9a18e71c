import { IRC_LIMITS, LEDGER_EDGES, LEDGER_SPACING } from '../data/index.ts'
import { type Carrier, carriers, type Frame, type JoistGroup, type Member } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import { ledgerSpacing } from '../rules/index.ts'
import { inches, psf, type Ticks, ticks, toInches } from '../units/index.ts'
import { ledgerCount } from './ledger-columns.ts'
import type { GoodShare } from './tally.ts'

/**
 * Fasteners along each ledger at the table's spacing, clear of joists and hangers, staggered, with a second one at either
 * end. Where the table has no entry they are counted at the closest spacing it has, and the rule says so.
 */
export function ledgerFasteners(job: Job, frame: Frame): readonly GoodShare[] {
  const all = carriers({ job, frame }, [], 'ledgers')
  return frame.members
    .filter((member) => member.role === 'ledger')
    .map((ledger) => alongLedger(job, frame, ledger, all))
}

/** What the table says for the joists that hang on a ledger from one group of them, or from all; no spacing where it has none. */
export function spacingFor(
  { site }: Job,
  groups: readonly JoistGroup[],
  ledgerId: string,
): { readonly spacing: Ticks | null; readonly sentence: string } {
  const { liveLoad, snowLoad, deadLoad, ledgerFastener, sheathing } = site
  const limit = IRC_LIMITS.deadLoad.value
  if (deadLoad > limit) return { spacing: null, sentence: `the table includes ${limit} psf of dead load` }
  const load = psf(Math.max(liveLoad, snowLoad))
  const found = ledgerSpacing(clearJoistSpan(groups, ledgerId), ledgerFastener, sheathing, load)
  const spacing = found.kind === 'row' && found.value !== null ? inches(found.value) : null
  return { spacing, sentence: found.sentence }
}

function alongLedger(job: Job, frame: Frame, ledger: Member, all: readonly Carrier[]): GoodShare {
  const { spacing: tabled, sentence } = spacingFor(job, frame.joistGroups, ledger.id)
  const spacing = tabled ?? closestSpacing()
  const carrier = all.find(({ id }) => id === ledger.id)
  const placed = carrier === undefined ? null : ledgerCount(carrier, spacing)
  const apart = `${toInches(spacing)} in`
  return {
    sku: job.site.ledgerFastener === 'lag' ? 'ledger-lag-1/2' : 'ledger-bolt-1/2',
    quantity: placed ?? byLength(ledger.length, spacing),
    cause: {
      fields: [
        'site.ledgerFastener',
        'site.sheathing',
        'site.liveLoad',
        'site.snowLoad',
        'site.deadLoad',
        'size.width',
        'size.depth',
        'frame.joists.spacing',
      ],
      ids: [ledger.id],
      rule:
        tabled === null
          ? `No entry in IRC 2021 Table R507.9.1.3(1) (${sentence}): counted at its closest spacing, ${apart}; a licensed designer must set it`
          : `Every ${apart} or closer, IRC 2021 Table R507.9.1.3(1) (${sentence}), ${placed === null ? 'by its length' : 'clear of joists and hangers'}, two at either end`,
    },
  }
}

/** Where no place is clear of the joists, or none hangs on it. */
function byLength(length: Ticks, spacing: Ticks): number {
  return Math.max(2, Math.ceil((length - 2 * inches(LEDGER_EDGES.ends)) / spacing) + 1) + 2
}

/** The longest from the ledger's face to the near face of what carries the joists next. */
function clearJoistSpan(groups: readonly JoistGroup[], ledgerId: string): Ticks {
  const clears = groups.flatMap(({ lines }) =>
    lines.flatMap(({ supports }) =>
      supports.slice(1).flatMap((far, i) => {
        const near = supports[i]
        const here = near !== undefined && (near.id === ledgerId || far.id === ledgerId)
        return here ? [far.at - far.half - (near.at + near.half)] : []
      }),
    ),
  )
  return ticks(Math.max(0, ...clears.map(Math.floor)))
}

function closestSpacing(): Ticks {
  const cells = LEDGER_SPACING.blocks.flatMap((block) => Object.values(block.rows).flat())
  return inches(Math.min(...cells.filter((cell) => cell !== null)))
}
