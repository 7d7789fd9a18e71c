import { inches, type Ticks, ticks } from '../units/index.ts'
import { overlapOnPlan } from './footprint.ts'
import type { Box, Frame, Member } from './types.ts'

/** Its nearer end lies so far off the ledger: common practice, no source. */
export const OFF_LEDGER = inches(1)

/** How long and how wide one of 1,500 lb is: from memory. */
export const HOLD_DOWN_LEG = inches(7)
export const HOLD_DOWN_WIDTH = inches(2.5)

/** It lies so far from the deck's end at most, IRC 2021 R507.9.2: 24 in. */
export const HOLD_DOWN_REACH = inches(24)

/** A hold-down to the house: the joist on whose side it lies, and how far that stands from the nearer end of its wall's ledgers. */
export interface HouseHoldDown {
  readonly joist: Member
  readonly fromEnd: Ticks
  /** as it is seen from above */
  readonly end: 'left' | 'right' | 'rear' | 'front'
  /** whether it lies on the joist's side that faces away from that end, as where another joist leaves it room */
  readonly inward: boolean
  /** what it takes of the plan */
  readonly place: Pick<Box, 'x0' | 'x1' | 'y0' | 'y1'>
  /** from the deck's end beside it to its far side */
  readonly reach: Ticks
}

/** Where the lateral hold-downs go (IRC 2021 R507.9.2); none where the deck hangs on no ledger. */
export function houseHoldDowns({
  connectors,
  members,
}: Pick<Frame, 'connectors' | 'members'>): readonly HouseHoldDown[] {
  const held = connectors.filter(({ kind }) => kind === 'hold-down').flatMap(({ at }) => at)
  const ledgers = members.filter(({ role }) => role === 'ledger')
  return held.flatMap((id) => {
    const joist = members.find((member) => member.id === id)
    const own = ledgers.find((ledger) => joist !== undefined && touches(joist.box, ledger.box))
    if (joist === undefined || own === undefined) return []
    const alongX = own.box.x1 - own.box.x0 > own.box.y1 - own.box.y0
    const [low, high] = alongX ? (['x0', 'x1'] as const) : (['y0', 'y1'] as const)
    const [start, stop] = alongX ? (['y0', 'y1'] as const) : (['x0', 'x1'] as const)
    const line = ledgers.filter(({ box }) => Math.abs(box[start] - own.box[start]) < 1)
    const from = Math.min(...line.map(({ box }) => box[low]))
    const to = Math.max(...line.map(({ box }) => box[high]))
    const at = (joist.box[low] + joist.box[high]) / 2
    const isFirst = at - from <= to - at
    const isAtStart = own.box[start] + own.box[stop] < joist.box[start] + joist.box[stop]
    const [near, far] = [OFF_LEDGER, OFF_LEDGER + HOLD_DOWN_LEG]
    const off = isAtStart
      ? ([joist.box[start] + near, joist.box[start] + far] as const)
      : ([joist.box[stop] - far, joist.box[stop] - near] as const)
    const beside = (onward: boolean): HouseHoldDown['place'] => {
      const side = onward
        ? ([joist.box[high], joist.box[high] + HOLD_DOWN_WIDTH] as const)
        : ([joist.box[low] - HOLD_DOWN_WIDTH, joist.box[low]] as const)
      const [x, y] = alongX ? [side, off] : [off, side]
      // a joist ends off the grid at a wall at an angle
      const [floor, ceil] = [(at: number) => ticks(Math.floor(at)), (at: number) => ticks(Math.ceil(at))]
      return { x0: floor(x[0]), x1: ceil(x[1]), y0: floor(y[0]), y1: ceil(y[1]) }
    }
    const inner = beside(isFirst)
    const along = members.filter(
      ({ role, box }) => HANGS.has(role) && line.some((ledger) => touches(box, ledger.box)),
    )
    const inward = !members.some(
      (one) => STANDS.has(one.role) && one.id !== id && overlapOnPlan(one.box, inner),
    )
    const place = inward ? inner : beside(!isFirst)
    const reach = isFirst
      ? place[high] - Math.min(from, ...along.map(({ box }) => box[low]))
      : Math.max(to, ...along.map(({ box }) => box[high])) - place[low]
    return [
      {
        joist,
        fromEnd: ticks(Math.round(isFirst ? at - from : to - at)),
        end: alongX ? (isFirst ? 'left' : 'right') : isFirst ? 'rear' : 'front',
        inward,
        place,
        reach: ticks(Math.ceil(reach)),
      } as const,
    ]
  })
}

/** What ends at a ledger; an end joist laps its end. */
const HANGS: ReadonlySet<Member['role']> = new Set(['joist', 'end joist'])

/** What a hold-down cannot lie in. */
const STANDS: ReadonlySet<Member['role']> = new Set([
  'joist',
  'end joist',
  'header',
  'hip',
  'rim',
  'blocking',
])

/** Whether they meet, seen from above; joists hang tight against a ledger. */
function touches(a: Box, b: Box): boolean {
  return a.x0 <= b.x1 + 1 && a.x1 >= b.x0 - 1 && a.y0 <= b.y1 + 1 && a.y1 >= b.y0 - 1
}
