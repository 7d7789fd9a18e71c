import type { Frame, Member, PlanPoint } from '../../frame/index.ts'
import { isSlanting } from '../../frame/index.ts'

/**
 * Skewed hangers of a size by the way that their joists turn, seen by one who faces what they hang on, and by their
 * angle: "6 to the left, 6 to the right, 45°". Nothing where one of them cannot be told.
 */
export function hangerHands({ connectors, members }: Frame, size: string): string {
  const byId = new Map(members.map((member) => [member.id, member]))
  const turns = connectors.flatMap(({ kind, skew, double, size: own, at }) =>
    kind !== 'joist hanger' || skew === undefined || double === true || own !== size
      ? []
      : at.map((id) => ({ way: wayOf(byId.get(id), byId), skew })),
  )
  if (turns.length === 0 || turns.some(({ way }) => way === null)) return ''
  const angles = [...new Set(turns.map(({ skew }) => `${Number((skew / 100).toFixed(1))}°`))].join(' and ')
  const count = (way: 'left' | 'right') => turns.filter((turn) => turn.way === way).length
  const ways = (['left', 'right'] as const).flatMap((way) =>
    count(way) === 0 ? [] : [`${count(way)} to the ${way}`],
  )
  return `skewed ${ways.join(', ')}, seen facing what they hang on, ${angles}`
}

/** To which hand a joist goes off, as one sees it who faces the board at an angle that it hangs on. */
function wayOf(joist: Member | undefined, byId: ReadonlyMap<string, Member>): 'left' | 'right' | null {
  if (joist === undefined) return null
  const carrier = joist.bearings.flatMap((id) => byId.get(id) ?? []).find((one) => isSlanting(one))
  if (carrier?.line === undefined) return null
  const { box } = joist
  const [a, b] = carrier.line
  const middle = { x: (box.x0 + box.x1) / 2, y: (box.y0 + box.y1) / 2 }
  // the place on the carrier in front of the joist's own middle line
  const isAway = box.y1 - box.y0 >= box.x1 - box.x0
  const part = isAway ? (middle.x - a.x) / (b.x - a.x) : (middle.y - a.y) / (b.y - a.y)
  const met = { x: a.x + part * (b.x - a.x), y: a.y + part * (b.y - a.y) }
  const off = { x: middle.x - met.x, y: middle.y - met.y }
  const across: PlanPoint = { x: -(b.y - a.y), y: b.x - a.x }
  const side = Math.sign(across.x * off.x + across.y * off.y)
  // x runs right, y towards the viewer's feet on the plan: right of one who looks against (x, y) is (y, -x)
  const right = { x: side * across.y, y: -side * across.x }
  return right.x * off.x + right.y * off.y > 0 ? 'right' : 'left'
}
