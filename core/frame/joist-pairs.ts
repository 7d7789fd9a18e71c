import type { Job } from '../job/index.ts'
import { inches, ticks } from '../units/index.ts'
import type { PlacedJoist } from './joists.ts'
import type { Connector } from './types.ts'

/** A shorter stretch side by side is a corner, not a pair: common practice, no source. */
const LEAST_PAIR = inches(12)

/** End joists of two zones that stand face to face along a seam, nailed together as plies are. */
export function joistPairs(job: Job, joists: readonly PlacedJoist[]): readonly Connector[] {
  if (job.shape.seams !== 'doubled') return []
  const ends = joists.filter(({ member }) => member.role === 'end joist')
  return ends.flatMap((one, i) =>
    ends.slice(i + 1).flatMap((other): readonly Connector[] => {
      const shared = sideBySide(one, other)
      if (shared < LEAST_PAIR) return []
      const ids = [one.member.id, other.member.id]
      return [
        {
          kind: 'joist pair',
          size: job.frame.joists.size,
          count: 1,
          at: ids,
          overlap: ticks(Math.floor(shared)),
          cause: {
            fields: ['shape.seams', 'shape.zones'],
            ids,
            rule: 'End joists of two parts side by side, nailed together in two rows at 16 in (common practice, no source)',
          },
        },
      ]
    }),
  )
}

/** How far two joists stand face to face. */
function sideBySide({ member: { box: a } }: PlacedJoist, { member: { box: b } }: PlacedJoist): number {
  const meet = (low: 'x0' | 'y0', high: 'x1' | 'y1') =>
    Math.abs(a[high] - b[low]) <= 1 || Math.abs(b[high] - a[low]) <= 1
  const along = (low: 'x0' | 'y0', high: 'x1' | 'y1') => Math.min(a[high], b[high]) - Math.max(a[low], b[low])
  if (meet('x0', 'x1')) return along('y0', 'y1')
  return meet('y0', 'y1') ? along('x0', 'x1') : 0
}
