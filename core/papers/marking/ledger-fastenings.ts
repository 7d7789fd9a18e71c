import type { Check } from '../../checks/index.ts'
import { LEDGER_EDGES, sectionOf } from '../../data/index.ts'
import type { Frame, Member } from '../../frame/index.ts'
import type { Job } from '../../job/index.ts'
import { inches, type Ticks, ticks } from '../../units/index.ts'
import { type Carrier, carriers } from './carriers.ts'

/** A column of fasteners: one, in the row that is its turn, or both at a ledger's two ends. */
export interface FastenerPlace {
  /** from the hooked end */
  readonly at: Ticks
  readonly row: 'top' | 'bottom' | 'both'
}

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
  readonly places: readonly FastenerPlace[]
}

/** Off a joist's face: a washer and the flange of its hanger, or where joists stand too near each other the washer alone. */
const OFF_JOIST = [inches(2.25), inches(1)]
/** Places are tried on what a tape shows well. */
const STEP = inches(1 / 4)

interface Source {
  readonly job: Job
  readonly frame: Frame
  readonly checks: readonly Check[]
  readonly plans: Parameters<typeof carriers>[1]
}

/** Of each ledger for which the table has a spacing; a ledger that it does not cover has no map. */
export function ledgerFastenings({ job, frame, checks, plans }: Source): readonly LedgerFastening[] {
  const all = carriers({ job, frame }, plans)
  return frame.members.flatMap((ledger): readonly LedgerFastening[] => {
    const carrier = all.find(({ id }) => id === ledger.id)
    const rows = rowsOf(ledger)
    if (ledger.role !== 'ledger' || carrier === undefined || rows === null) return []
    const zones = zonesOf(ledger, carrier, frame, checks)
    if (zones === null || zones.length === 0) return []
    const spacing = ticks(Math.min(...zones.map((zone) => zone.spacing)))
    const places = placesAlong(carrier, spacing)
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
  ledger: Member,
  { marks }: Carrier,
  { joistGroups }: Frame,
  checks: readonly Check[],
): readonly SpacingZone[] | null {
  const zones = joistGroups.flatMap(({ lines }, i): readonly (SpacingZone | null)[] => {
    const hung = new Set(
      lines
        .filter(({ supports }) => supports.some(({ id }) => id === ledger.id))
        .flatMap(({ memberIds }) => memberIds),
    )
    const here = marks.filter(({ memberId }) => hung.has(memberId))
    const [first, last] = [here[0], here.at(-1)]
    if (first === undefined || last === undefined) return []
    const check = checks.find(({ id }) => id === `ledger-fasteners${i === 0 ? '' : `-${i + 1}`}`)
    const found = check?.findings.find(({ method }) => method === 'prescriptive')?.capacity
    if (found?.unit !== 'ticks') return [null]
    return [
      {
        marks: here.map(({ mark }) => mark),
        from: first.at,
        to: ticks(last.at + last.wide),
        spacing: ticks(found.value),
      },
    ]
  })
  return zones.some((zone) => zone === null) ? null : zones.flatMap((zone) => zone ?? [])
}

/**
 * From end to end, each clear of joists, hangers and joints and never farther from the one before it than the spacing: as
 * many as equal distances would take, as near to those as can be; where that cannot be kept, one more, and so on.
 */
function placesAlong({ length, marks, lines }: Carrier, spacing: Ticks): readonly FastenerPlace[] {
  const end = inches(LEDGER_EDGES.ends)
  const isClear = (at: number, off: number): boolean =>
    marks.every((joist) => at < joist.at - off || at > joist.at + joist.wide + off) &&
    lines.every((joint) => Math.abs(joint.at - at) >= end)
  const tried = Math.floor((length - 2 * end) / STEP) + 1
  const least = Math.max(1, Math.ceil((length - 2 * end) / spacing))
  for (const off of OFF_JOIST) {
    const free = Array.from({ length: tried }, (_, i) => end + i * STEP).filter((at) => isClear(at, off))
    for (let spaces = least; spaces <= 2 * least; spaces += 1) {
      const found = nearEqual(free, spaces, spacing)
      if (found !== null)
        return found.map((at, i) => ({
          at: ticks(at),
          row: i === 0 || i === spaces ? 'both' : i % 2 === 1 ? 'bottom' : 'top',
        }))
    }
  }
  return []
}

/** The places nearest to equal distances from the first free one to the last, none too far apart; null where there are none. */
function nearEqual(free: readonly number[], spaces: number, most: number): readonly number[] | null {
  const [first = 0] = free
  const last = free.at(-1) ?? first
  let reached: { readonly cost: number; readonly way: readonly number[] }[] = [{ cost: 0, way: [first] }]
  for (let i = 1; i <= spaces; i += 1) {
    const ideal = first + (i * (last - first)) / spaces
    const near = i === spaces ? [last] : free.filter((at) => Math.abs(at - ideal) <= most)
    const next = near.flatMap((at) => {
      const before = reached
        .filter(({ way }) => at > (way.at(-1) ?? at) && at - (way.at(-1) ?? at) <= most)
        .reduce<(typeof reached)[number] | null>(
          (best, one) => (best === null || one.cost < best.cost ? one : best),
          null,
        )
      return before === null ? [] : [{ cost: before.cost + (at - ideal) ** 2, way: [...before.way, at] }]
    })
    if (next.length === 0) return null
    reached = next
  }
  return reached[0]?.way ?? null
}
