import type { Hip } from '../frame/index.ts'
import { TICKS_PER_FOOT } from '../units/index.ts'

/** Deck that a hip carries, sq ft. */
export interface HipAreas {
  /** between the inside corner and the post; it lessens evenly towards the post */
  readonly span: number
  /** beyond the post */
  readonly overhang: number
  /** what of both comes to the inside corner and to the post */
  readonly inside: number
  readonly post: number
}

/**
 * The joists of both parts lie square to their beams, at 45 degrees to the hip. Within the beams they fill a square with
 * the hip as its diagonal, and half of each one's load comes to the hip: most at the inside corner, nothing at the post.
 * So a third of it comes to the post, two thirds to the corner. All of the square beyond the post is taken to hang at
 * the hip's end, though the rims carry a part of it: the safer side; what that lifts off the inside corner is left out.
 */
export function hipAreas({ span, overhang }: Pick<Hip, 'span' | 'overhang'>): HipAreas {
  const [a, b] = [span, overhang].map((length) => length / Math.SQRT2 / TICKS_PER_FOOT)
  const within = ((a ?? 0) * (a ?? 0)) / 2
  const beyond = (b ?? 0) * (b ?? 0)
  const lever = span > 0 ? overhang / span : 0
  return {
    span: within,
    overhang: beyond,
    inside: (2 * within) / 3,
    post: within / 3 + beyond * (1 + lever),
  }
}
