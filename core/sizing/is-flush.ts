import { type Job, middleBeamList } from '../job/index.ts'

/**
 * Whether joists hang from a beam that goes by a side's fields; those of the front are the middle beams' too, and a beam
 * where parts meet goes by either's.
 */
export function isFlush({ frame, shape }: Job, side: 'front' | 'rear'): boolean {
  return (
    frame.beams[side].set === 'flush' ||
    (shape.seams === 'flush' && shape.zones.trim() !== '') ||
    (side === 'front' && middleBeamList(shape.middleBeams).some(({ set }) => set === 'flush'))
  )
}
