import { carriers, type Frame, type Hip, type Member } from '../../frame/index.ts'
import type { Job } from '../../job/index.ts'
import { inches } from '../../units/index.ts'

/** A skewed hanger nails to so much of the hip's face beyond its joist: the flange that a common one has, from memory. */
const FLANGE = inches(2)

/**
 * Joists that meet a hip at its very end by the house, where its own hanger is and no face is left for theirs: what holds
 * them belongs to that joint.
 */
export function joistsAtHipEnd(
  { job, frame }: { readonly job: Job; readonly frame: Frame },
  hip: Hip,
): readonly Member[] {
  const ends = carriers({ job, frame }, []).flatMap((carrier) => {
    const half = frame.members.find(({ id }) => id === carrier.id)
    if (!hip.memberIds.includes(carrier.id) || half?.line === undefined) return []
    const isHooked = carrier.hookedAt === 'house'
    return carrier.marks.flatMap(({ memberId, at, wide }) =>
      (isHooked ? at : carrier.length - at - wide) < FLANGE ? [memberId] : [],
    )
  })
  return frame.members.filter(({ id }) => ends.includes(id))
}

/** What to say of them beside the hip's own hanger; nothing where there are none. */
export function hangersThere(joists: readonly Member[]): string {
  if (joists.length === 0) return ''
  const marks = joists.map(({ mark }) => mark).join(' and ')
  return ` ${joists.length === 1 ? 'Joist' : 'Joists'} ${marks} ${joists.length === 1 ? 'meets' : 'meet'} the hip at this very end, beside its hanger: what holds ${joists.length === 1 ? 'it' : 'them'} is part of the same joint.`
}
