import { inches, type Ticks, ticks } from '../units/index.ts'

/** A course narrower than this is left out: common practice, no source. */
export const LEAST_COURSE = inches(1 / 4)

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

/**
 * Courses laid from one corner to the other, where boards lie at an angle and end in points: whole boards, the last as
 * far as it is there.
 */
export function slantingWidths(cover: number, board: Ticks, gap: Ticks): readonly Ticks[] {
  const count = Math.ceil((cover + gap) / (board + gap) - 1e-9)
  const last = cover - (count - 1) * (board + gap)
  return Array.from({ length: last < LEAST_COURSE ? count - 1 : count }, () => board)
}
