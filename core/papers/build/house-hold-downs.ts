import type { Estimate } from '../../estimate-types.ts'
import type { Box, Member } from '../../frame/index.ts'
import { printLength, type Ticks, ticks } from '../../units/index.ts'

/** A hold-down to the house: the joist on whose side it lies, and how far that stands from the nearer end of its wall's ledgers. */
export interface HouseHoldDown {
  readonly joist: Member
  readonly fromEnd: Ticks
  /** as it is seen from above */
  readonly end: 'left' | 'right' | 'rear' | 'front'
}

/** Where the lateral hold-downs go (IRC 2021 R507.9.2); none where the deck hangs on no ledger. */
export function houseHoldDowns({ frame }: Pick<Estimate, 'frame'>): readonly HouseHoldDown[] {
  const held = frame.connectors.filter(({ kind }) => kind === 'hold-down').flatMap(({ at }) => at)
  const ledgers = frame.members.filter(({ role }) => role === 'ledger')
  return held.flatMap((id) => {
    const joist = frame.members.find((member) => member.id === id)
    const own = ledgers.find((ledger) => joist !== undefined && touches(joist.box, ledger.box))
    if (joist === undefined || own === undefined) return []
    const alongX = own.box.x1 - own.box.x0 > own.box.y1 - own.box.y0
    const line = ledgers.filter((one) =>
      alongX ? Math.abs(one.box.y0 - own.box.y0) < 1 : Math.abs(one.box.x0 - own.box.x0) < 1,
    )
    const from = Math.min(...line.map(({ box }) => (alongX ? box.x0 : box.y0)))
    const to = Math.max(...line.map(({ box }) => (alongX ? box.x1 : box.y1)))
    const at = alongX ? (joist.box.x0 + joist.box.x1) / 2 : (joist.box.y0 + joist.box.y1) / 2
    const isFirst = at - from <= to - at
    return [
      {
        joist,
        fromEnd: ticks(Math.round(isFirst ? at - from : to - at)),
        end: alongX ? (isFirst ? 'left' : 'right') : isFirst ? 'rear' : 'front',
      },
    ]
  })
}

/** "J1, 1'-3 1/4" from the left end of the ledger; J13, …": to the joist's middle. */
export function houseHoldDownWords(source: Pick<Estimate, 'frame'>): string {
  return houseHoldDowns(source)
    .map(
      ({ joist, fromEnd, end }, i) =>
        `${joist.mark}, ${printLength(fromEnd)} from the ${end} end${i === 0 ? ' of its wall’s ledger to its middle' : ''}`,
    )
    .join('; ')
}

/** Whether they meet, seen from above; joists hang tight against a ledger. */
function touches(a: Box, b: Box): boolean {
  return a.x0 <= b.x1 + 1 && a.x1 >= b.x0 - 1 && a.y0 <= b.y1 + 1 && a.y1 >= b.y0 - 1
}
