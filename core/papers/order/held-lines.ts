import type { Estimate } from '../../estimate-types.ts'
import type { Line, Pricing } from '../../pricing/index.ts'
import { headerBolts, headerId } from '../../stairs/index.ts'
import { connectorSkus, GUARD_POST_BOLTS } from '../../takeoff/index.ts'
import { type Cents, cents, priceOf } from '../../units/index.ts'
import { type Hold, holdsOf, speaksOf } from './holds.ts'
import { waitingBoards } from './waiting-boards.ts'

/** What of a line is not to be bought yet. */
export interface HeldLine {
  /** of the line's quantity */
  readonly thousandths: number
  /** by the names of the holds */
  readonly by: readonly string[]
}

export interface Held {
  readonly holds: readonly Hold[]
  readonly lines: ReadonlyMap<Line['id'], HeldLine>
}

/** What is free to be bought, or what is held. */
export interface HeldPart {
  readonly held: Held
  readonly part: 'free' | 'held'
}

type Source = Pick<Estimate, 'checks' | 'frame' | 'job' | 'stairs' | 'guard' | 'plans' | 'takeoff'> & {
  readonly pricing: Pricing
}

/**
 * Boards from which a member in doubt is sawn, the connectors at it, and goods that nothing else asks for. Nails and what
 * is bought for the whole deck stay free: no answer makes them useless.
 */
export function heldOf(source: Source): Held {
  const holds = holdsOf(source)
  const quantities = new Map<Line['id'], { quantity: number; by: Set<string> }>()
  const hold = (id: Line['id'], quantity: number, by: readonly Hold[]): void => {
    if (quantity === 0 || by.length === 0) return
    const own = quantities.get(id) ?? { quantity: 0, by: new Set() }
    own.quantity += quantity
    for (const { name } of by) own.by.add(name)
    quantities.set(id, own)
  }
  holdBoards(source, holds, hold)
  holdConnectors(source, holds, hold)
  holdGuardPosts(source, holds, hold)
  holdFlights(source, holds, hold)
  const lines = new Map<Line['id'], HeldLine>()
  for (const line of source.pricing.lines) {
    if (line.part !== 'material') continue
    const own = quantities.get(line.id)
    const whole = own === undefined ? wholly(source, line, holds) : []
    // what is stated by hand may be fewer than are counted
    if (own !== undefined)
      lines.set(line.id, {
        thousandths: Math.min(Math.ceil(own.quantity) * 1000, line.thousandths),
        by: [...own.by],
      })
    else if (whole.length > 0)
      lines.set(line.id, { thousandths: line.thousandths, by: whole.map(({ name }) => name) })
  }
  return { holds: holds.filter(({ name }) => [...lines.values()].some(({ by }) => by.includes(name))), lines }
}

/** The holds on some of the lines; on any where null. */
export function heldHere({ holds, lines }: Held, wanted: ReadonlySet<string> | null): readonly Hold[] {
  const by = new Set([...lines].flatMap(([id, line]) => (wanted?.has(id) === false ? [] : line.by)))
  return holds.filter(({ name }) => by.has(name))
}

/** A line's quantity and money in one of the two parts, which sum to its own to the cent; null where it has none there. */
export function partOf(
  line: Line,
  { held, part }: HeldPart,
): { readonly thousandths: number; readonly amount: Cents } | null {
  const kept = held.lines.get(line.id)?.thousandths ?? 0
  const amount = kept === 0 ? cents(0) : kept === line.thousandths ? line.amount : priceOf(kept, line.price)
  if (part === 'held') return kept === 0 ? null : { thousandths: kept, amount }
  if (kept > 0 && kept === line.thousandths) return null
  return { thousandths: line.thousandths - kept, amount: cents(line.amount - amount) }
}

/** Whether what stands at a member belongs to a part; to both together where there is but one. */
export function isInPart(id: string, only: HeldPart | null): boolean {
  if (only === null) return true
  const waits = only.held.holds.some((hold) => speaksOf(hold, id))
  return waits === (only.part === 'held')
}

type Add = (id: Line['id'], quantity: number, by: readonly Hold[]) => void

function holdBoards(source: Source, holds: readonly Hold[], hold: Add): void {
  for (const { stockId, onHand, by } of waitingBoards(source, holds))
    if (!onHand) hold(`lumber-${stockId}`, 1, by)
}

function holdConnectors({ frame }: Source, holds: readonly Hold[], hold: Add): void {
  for (const connector of frame.connectors)
    for (const sku of connectorSkus(connector)) {
      const by = holds.filter(({ doubt }) => doubt.skus?.test(sku) ?? true)
      const each = connector.count / connector.at.length
      for (const id of connector.at)
        hold(
          `good-${sku}`,
          each,
          by.filter(({ doubt }) => doubt.ids.has(id)),
        )
    }
}

/** Of each guard post in doubt, wherever it stands: its hold-down and its bolts. */
function holdGuardPosts({ guard, pricing }: Source, holds: readonly Hold[], hold: Add): void {
  const holdDown = pricing.lines.find(({ id }) => id.startsWith('good-guard-hold-down'))
  for (const { id, role } of guard?.members ?? []) {
    if (role !== 'guard post') continue
    const by = holds.filter((one) => speaksOf(one, id))
    if (holdDown !== undefined) hold(holdDown.id, 1, by)
    hold('good-carriage-bolt-1/2', GUARD_POST_BOLTS, by)
  }
}

/** Of each flight whose head is in doubt: the hangers of its stringers and the bolts of its header. */
function holdFlights({ stairs }: Source, holds: readonly Hold[], hold: Add): void {
  for (const plan of stairs)
    for (const { flight, count } of plan.patterns) {
      const by = holds.filter((one) => speaksOf(one, headerId(flight)))
      hold('good-stringer-hanger', count, by)
      hold('good-ledger-bolt-1/2', headerBolts(plan, flight), by)
    }
}

const BY_MEMBER: ReadonlySet<Line['group']> = new Set(['hardware', 'concrete', 'joints'])

/** Holds that speak of everything that a line is for. */
function wholly({ takeoff }: Source, { group, cause }: Line, holds: readonly Hold[]): readonly Hold[] {
  if (!BY_MEMBER.has(group)) return []
  const goods = takeoff.goods.filter(({ id }) => cause.ids.includes(id))
  const ids = group === 'joints' ? cause.ids : goods.flatMap((good) => good.cause.ids)
  if (ids.length === 0) return []
  return holds.filter((one) => ids.every((id) => speaksOf(one, id)))
}
