import { LEDGER_EDGES, sectionOf } from '../../data/index.ts'
import { type Carrier, carriers, type Frame, type JointedPlan, type Member } from '../../frame/index.ts'
import type { Job } from '../../job/index.ts'
import { type LedgerColumn, ledgerColumns, spacingFor } from '../../takeoff/index.ts'
import { inches, type Ticks, ticks } from '../../units/index.ts'

/** Joists that ask for one spacing, and the stretch of the ledger on which they hang. */
export interface SpacingZone {
  readonly marks: readonly string[]
  readonly from: Ticks
  readonly to: Ticks
  readonly spacing: Ticks
}

/** Where one ledger's fasteners go. */
export interface LedgerFastening {
  readonly carrier: Carrier
  readonly depth: Ticks
  /** the closest that any of its joists asks for: held along the whole ledger, as the order counts it */
  readonly spacing: Ticks
  readonly zones: readonly SpacingZone[]
  /** rows below the ledger's top edge */
  readonly rows: { readonly top: Ticks; readonly bottom: Ticks }
  readonly places: readonly LedgerColumn[]
}

interface Source {
  readonly job: Job
  readonly frame: Frame
  readonly plans: readonly JointedPlan[]
}

/** Of each ledger for which the table has a spacing; a ledger that it does not cover has no map. */
export function ledgerFastenings({ job, frame, plans }: Source): readonly LedgerFastening[] {
  const all = carriers({ job, frame }, plans, 'ledgers')
  return frame.members.flatMap((ledger): readonly LedgerFastening[] => {
    const carrier = all.find(({ id }) => id === ledger.id)
    const rows = rowsOf(ledger)
    if (ledger.role !== 'ledger' || carrier === undefined || rows === null) return []
    const zones = zonesOf(job, ledger, carrier, frame)
    if (zones === null || zones.length === 0) return []
    const spacing = ticks(Math.min(...zones.map((zone) => zone.spacing)))
    const places = ledgerColumns(carrier, spacing)
    if (places.length === 0) return []
    return [
      {
        carrier,
        depth: sectionOf(ledger.product.size).depth,
        spacing,
        zones,
        rows,
        places,
      },
    ]
  })
}

/** As high as the table lets them: IRC 2021 Table R507.9.1.3(2). Null where it has no row. */
export function rowsOf({ product }: Pick<Member, 'product'>): LedgerFastening['rows'] | null {
  const bottom = LEDGER_EDGES.bottomRow[product.size]
  if (bottom === undefined) return null
  return {
    top: inches(Math.max(LEDGER_EDGES.top, bottom - LEDGER_EDGES.rows[1])),
    bottom: inches(bottom),
  }
}

/** What each group of joists asks for; null where the table has nothing for one of them. */
function zonesOf(
  job: Job,
  ledger: Member,
  { marks }: Carrier,
  { joistGroups }: Frame,
): readonly SpacingZone[] | null {
  const zones = joistGroups.flatMap((group): readonly (SpacingZone | null)[] => {
    const hung = new Set(
      group.lines
        .filter(({ supports }) => supports.some(({ id }) => id === ledger.id))
        .flatMap(({ memberIds }) => memberIds),
    )
    const here = marks.filter(({ memberId }) => hung.has(memberId))
    const [first, last] = [here[0], here.at(-1)]
    if (first === undefined || last === undefined) return []
    const { spacing } = spacingFor(job, [group], ledger.id)
    if (spacing === null) return [null]
    return [
      {
        marks: here.map(({ mark }) => mark),
        from: first.at,
        to: ticks(last.at + last.wide),
        spacing,
      },
    ]
  })
  return zones.some((zone) => zone === null) ? null : zones.flatMap((zone) => zone ?? [])
}
