import type { CutPlan } from '../../cutting/index.ts'
import { sectionOf } from '../../data/index.ts'
import type { Frame, Member } from '../../frame/index.ts'
import type { Primitive } from '../types.ts'

/** A short stroke across each member at each of its joints; joints are measured from a member's left end. */
export function jointStrokes(
  frame: Pick<Frame, 'members'>,
  plans: readonly { readonly plan: CutPlan }[],
  wanted: 'framing' | 'decking',
): readonly Primitive[] {
  const members = new Map(frame.members.map((member) => [member.id, member]))
  return plans.flatMap(({ plan }) =>
    plan.joints.flatMap((joint): readonly Primitive[] => {
      const member = members.get(joint.memberId)
      if (member === undefined || (member.role === 'decking') !== (wanted === 'decking')) return []
      const { x0, y0, y1 } = member.box
      if (member.line !== undefined) return [onLine(member.id, member.line, joint.at, depthOf(member))]
      return [
        {
          kind: 'joint',
          id: member.id,
          layer: 'joints',
          x: x0 + joint.at,
          y: (y0 + y1) / 2,
          along: 'x',
          half: (y1 - y0) / 2,
        },
      ]
    }),
  )
}

/** A joint of a member that does not lie along the house, on its middle line. */
function onLine(id: string, [from, to]: NonNullable<Member['line']>, at: number, across: number): Primitive {
  const length = Math.hypot(to.x - from.x, to.y - from.y)
  const way = { x: (to.x - from.x) / length, y: (to.y - from.y) / length }
  return {
    kind: 'joint',
    id,
    layer: 'joints',
    x: from.x + way.x * at,
    y: from.y + way.y * at,
    along: Math.abs(way.x) >= Math.abs(way.y) ? 'x' : 'y',
    half: across / 2,
  }
}

/** How wide a member is from above: its box tells that only where it does not lie at an angle. */
function depthOf({ box, role, product, plan, ripTo }: Member): number {
  const { thickness, depth } = sectionOf(product.size)
  if (role !== 'decking') return thickness
  return plan === undefined ? Math.min(box.x1 - box.x0, box.y1 - box.y0) : (ripTo ?? depth)
}
