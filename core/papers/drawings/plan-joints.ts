import type { CutPlan } from '../../cutting/index.ts'
import type { Frame } from '../../frame/index.ts'
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
