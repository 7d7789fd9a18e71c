import type { Design } from '../../../core/estimate-types.ts'
import type { Member } from '../../../core/frame/index.ts'
import { beamGrips } from './beam-grips.ts'
import { edgeGrips } from './edge-grips.ts'
import { postGrips } from './post-grips.ts'
import type { Grip } from './types.ts'

export type { Grip } from './types.ts'

/** Everything of the plan that can be moved, from the outside in. */
export function gripsOf(design: Design): readonly Grip[] {
  return [...edgeGrips(design), ...beamGrips(design), ...postGrips(design)]
}

/** What moves when a thing of the drawing is drawn: a post under its footing, a ply’s beam, the edge of a rim. */
export function gripFor(id: string | null, grips: readonly Grip[], { frame }: Design): Grip | null {
  if (id === null) return null
  const named = (name: string | undefined) => grips.find((grip) => grip.id === name) ?? null
  const own = named(id)
  if (own !== null) return own
  const footing = frame.footings.find((each) => each.id === id)
  if (footing !== undefined) return named(footing.postId)
  const beam = frame.beams.find(({ plyIds }) => plyIds.includes(id))
  if (beam !== undefined) return named(beam.id)
  const member = frame.members.find((each) => each.id === id)
  return member?.role === 'rim' || member?.role === 'end joist' ? edgeOf(member, grips) : null
}

/** The edge along which a board of the frame's outside lies. */
function edgeOf({ box }: Member, grips: readonly Grip[]): Grip | null {
  const found = grips.find(({ kind, line: [from, to] }) => {
    if (kind !== 'edge') return false
    const isUpright = box.y1 - box.y0 > box.x1 - box.x0
    if (isUpright !== (from.x === to.x)) return false
    return isUpright
      ? (box.x0 === from.x || box.x1 === from.x) && overlap(box.y0, box.y1, from.y, to.y)
      : (box.y0 === from.y || box.y1 === from.y) && overlap(box.x0, box.x1, from.x, to.x)
  })
  return found ?? null
}

function overlap(a0: number, a1: number, b0: number, b1: number): boolean {
  const shared = Math.min(a1, Math.max(b0, b1)) - Math.max(a0, Math.min(b0, b1))
  return shared > (a1 - a0) / 2
}
