import { sectionOf } from '../data/index.ts'
import type { Job } from '../job/index.ts'
import { inches, type Ticks, ticks } from '../units/index.ts'
import { type Dimensions, productOf } from './dimensions.ts'
import type { Member } from './types.ts'

/** A course narrower than this is left out: common practice, no source. */
const LEAST_COURSE = inches(1 / 4)

export interface Courses {
  /** finished width of each course, from the house outward */
  readonly widths: readonly Ticks[]
  /** what the overhang falls short where a sliver of a course is left out */
  readonly short: Ticks
}

/**
 * Courses n = ceil((cover + gap) ÷ (board + gap)). The last is ripped to what is left; under half a board, the
 * first is ripped with it and both are equal; under 1/4 in it is left out (common practice, no source).
 * @param cover what the decking has to reach over, from its first edge to its last
 */
export function courseWidths(cover: Ticks, board: Ticks, gap: Ticks): Courses {
  const count = Math.ceil((cover + gap) / (board + gap))
  const last = cover - (count - 1) * (board + gap)
  if (count === 1) return { widths: [ticks(Math.min(board, cover))], short: ticks(0) }
  const full = Array.from({ length: count - 1 }, () => board)
  if (last < LEAST_COURSE) return { widths: full, short: ticks(Math.max(0, last + gap)) }
  if (last >= board / 2) return { widths: [...full, ticks(last)], short: ticks(0) }
  // an odd tick goes to the overhang: two rips that differ by 1/32 in are not equal
  const equal = ticks(Math.floor((board + last) / 2))
  return { widths: [equal, ...full.slice(1), equal], short: ticks(0) }
}

/** The stretch that decking covers: past the rim by the overhang on open sides, short of a wall by its gap. */
export function deckingEdges(job: Job, d: Dimensions): { readonly from: Ticks; readonly to: Ticks } {
  const { overhang, wallGap } = job.decking
  return {
    from: job.site.attachment === 'freestanding' ? ticks(-overhang) : wallGap,
    to: ticks(d.depth + overhang),
  }
}

/** Decking courses along the house, numbered outward from it. */
export function frameDecking(
  job: Job,
  d: Dimensions,
  joists: readonly string[],
): { members: readonly Member[]; short: Ticks } {
  const { size, overhang, gap } = job.decking
  const board = sectionOf(size).depth
  const edges = deckingEdges(job, d)
  const { widths, short } = courseWidths(ticks(edges.to - edges.from), board, gap)
  let y: number = edges.from
  const members = widths.map((width, i): Member => {
    const y0 = y
    y += width + gap
    return {
      id: `decking-${i + 1}`,
      mark: `D${i + 1}`,
      role: 'decking',
      product: productOf(job, size),
      length: ticks(d.width + 2 * overhang),
      ripTo: width < board ? width : null,
      box: { x0: -overhang, x1: d.width + overhang, y0, y1: y0 + width, z0: d.joistTop, z1: d.deckTop },
      bearings: joists,
      cause: {
        fields: [
          'size.width',
          'size.depth',
          'decking.size',
          'decking.overhang',
          'decking.gap',
          'decking.wallGap',
        ],
        ids: [],
        rule: 'Courses = (depth + overhang − wall gap + gap) ÷ (board + gap), rounded up; the last ripped to what is left (common practice, no source)',
      },
    }
  })
  return { members, short }
}
