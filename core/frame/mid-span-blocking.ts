import { convexOverlap } from '../geometry/index.ts'
import type { Job } from '../job/index.ts'
import type { ZoneView } from '../layout/index.ts'
import { feet } from '../units/index.ts'
import { clearOf, LEAST_CLEAR } from './blocking.ts'
import { type Dimensions, productOf } from './dimensions.ts'
import { fromAbove, placedBoard } from './footprint.ts'
import { type PlacedJoist, shapeFields } from './joists.ts'
import type { LevelDimensions } from './placed-beams.ts'
import type { Member } from './types.ts'

/** A shorter span gets no row of blocks of its own: common practice, no source. */
const LEAST_SPAN = feet(6)

interface FramedPart {
  readonly level: number
  readonly view: ZoneView
  readonly joists: readonly PlacedJoist[]
}

/**
 * A row of blocks in the middle of each span of the joists, where the job asks for it: one in each bay between two that
 * lie on the same supports.
 * @param others blocks that stand already: where one does, none is added
 */
export function midSpanBlocks(
  job: Job,
  levels: LevelDimensions,
  parts: readonly FramedPart[],
  others: readonly Member[],
): readonly Member[] {
  if (job.frame.blocking !== 'over beams and mid-span') return []
  const blocks: Member[] = []
  for (const part of parts) blocks.push(...blocksIn(job, levels(part.level), part, others, blocks.length + 1))
  return blocks
}

function blocksIn(
  job: Job,
  d: Dimensions,
  { view, joists }: FramedPart,
  others: readonly Member[],
  first: number,
): readonly Member[] {
  const standing = others.map(fromAbove)
  const blocks: Member[] = []
  const ordered = joists.toSorted((a, b) => a.place.centre - b.place.centre)
  for (const [i, left] of ordered.entries()) {
    const right = ordered.slice(i + 1).find((other) => sharedSpans(left, other).length > 0)
    if (right === undefined) continue
    const x0 = left.place.centre + d.joist.thickness / 2
    const x1 = right.place.centre - d.joist.thickness / 2
    if (x1 - x0 < LEAST_CLEAR) continue
    for (const middle of sharedSpans(left, right)) {
      const [y0, y1] = [middle - d.joist.thickness / 2, middle + d.joist.thickness / 2]
      const fits = [left, right].every(({ place }) => {
        const [low, high] = clearOf(place)
        return y0 >= low && y1 <= high
      })
      if (!fits) continue
      const number = first + blocks.length
      const block: Member = {
        id: `blocking-span-${number}`,
        mark: `KS${number}`,
        role: 'blocking',
        product: productOf(job, d.joist.size),
        ripTo: null,
        ...placedBoard(
          view,
          [
            { x: x0, y: y0 },
            { x: x1, y: y0 },
            { x: x1, y: y1 },
            { x: x0, y: y1 },
          ],
          { z0: d.joistBottom, z1: d.joistTop },
        ),
        bearings: [left.member.id, right.member.id],
        cause: {
          fields: ['frame.blocking', 'frame.joists.spacing', ...shapeFields(job)],
          ids: [left.member.id, right.member.id],
          rule: 'Length = the bay’s clear width; one in the middle of each span of 6 ft or more, as asked (common practice, no source)',
        },
      }
      if (!standing.some((other) => convexOverlap(other, fromAbove(block), 1))) blocks.push(block)
    }
  }
  return blocks
}

/** Middles of the spans that two joists have between the same supports, long enough for a row. */
function sharedSpans(left: PlacedJoist, right: PlacedJoist): readonly number[] {
  return left.supports.slice(1).flatMap((to, i) => {
    const from = left.supports[i]
    const k = right.supports.findIndex(({ id }) => id === from?.id)
    const [low, high] = [right.supports[k], right.supports[k + 1]]
    if (from === undefined || low === undefined || high?.id !== to.id) return []
    if (Math.max(to.at - from.at, high.at - low.at) < LEAST_SPAN) return []
    return [(Math.max(from.at, low.at) + Math.min(to.at, high.at)) / 2]
  })
}
