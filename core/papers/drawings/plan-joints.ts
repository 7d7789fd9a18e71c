import type { CutPlan } from '../../cutting/index.ts'
import { sectionOf } from '../../data/index.ts'
import { type Frame, jointPlace, type Member } from '../../frame/index.ts'
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
      const { box, line } = member
      const isUpright =
        line !== undefined && Math.abs(line[1].y - line[0].y) > Math.abs(line[1].x - line[0].x)
      return [
        {
          kind: 'joint',
          id: member.id,
          layer: 'joints',
          ...jointPlace(member, joint.at),
          along: isUpright ? 'y' : 'x',
          half: (line === undefined ? box.y1 - box.y0 : depthOf(member)) / 2,
        },
      ]
    }),
  )
}

/** How wide a member is from above: its box tells that only where it does not lie at an angle. */
function depthOf({ box, role, product, plan, ripTo }: Member): number {
  const { thickness, depth } = sectionOf(product.size)
  if (role !== 'decking') return thickness
  return plan === undefined ? Math.min(box.x1 - box.x0, box.y1 - box.y0) : (ripTo ?? depth)
}
