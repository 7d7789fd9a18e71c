import { type LumberSize, sectionOf } from '../data/index.ts'
import type { Member } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import { inches, ticks } from '../units/index.ts'
import { member } from './flight-members.ts'
import type { Spot } from './types.ts'

/** As knee braces of a deck: common practice, no source. */
const SIZE: LumberSize = '2x6'
/** Post left below a brace, so that it clears the base; a shorter rise is held by its frame. */
const BELOW = inches(6)
const LEAST_RISE = inches(18)

/** A landing's post, its middle down and across from the landing's corner. */
export interface LandingPost {
  readonly post: Member
  readonly down: number
  readonly across: number
}

/**
 * Diagonals that hold a landing's posts upright: it sways on them, and no table has its bracing. One on either side, away
 * from the deck, on the posts' inner faces, where no header and no stringer of a flight that turns stands in its way; and
 * one between each two posts towards the deck, on their faces there. Bolted at both ends; none for a landing so low that
 * its frame holds it.
 * @param near posts under the beam towards the deck, from one side to the other; `far`: those under the outer beam
 */
export function landingBraces(
  job: Job,
  frame: { readonly head: Spot; readonly down: Spot; readonly across: Spot },
  near: readonly LandingPost[],
  far: readonly LandingPost[],
  name: { readonly id: string; readonly mark: string },
): readonly Member[] {
  const rise = Math.min(...[...near, ...far].map(({ post }) => post.length)) - BELOW
  if (rise < LEAST_RISE) return []
  const half = sectionOf(job.frame.postSize).depth / 2
  const { thickness } = sectionOf(SIZE)
  const sides = ([0, -1] as const).flatMap((at) => {
    const [head, foot] = [near.at(at), far.at(at)]
    if (head === undefined || foot === undefined) return []
    const inner = at === 0 ? head.across + half : head.across - half - thickness
    return [
      { foot, head, from: [head.down - half, inner], to: [foot.down + half, inner + thickness] } as const,
    ]
  })
  const between = near.slice(1).flatMap((head, i) => {
    const foot = near[i]
    if (foot === undefined) return []
    const face = head.down - half
    return [
      { foot, head, from: [face - thickness, foot.across - half], to: [face, head.across + half] } as const,
    ]
  })
  return [...sides, ...between].map(({ foot, head, from, to }, i) =>
    member(job, frame, {
      id: `${name.id}-brace-${i + 1}`,
      mark: `${name.mark}K${i + 1}`,
      role: 'landing brace',
      size: SIZE,
      length: lengthOf(foot.post, head.post),
      ripTo: null,
      from,
      to,
      levels: [foot.post.box.z0 + BELOW, head.post.box.z1],
      cause: {
        fields: ['stairs.kind', 'stairs.landingDepth', 'stairs.width', 'frame.postSize', 'size.height'],
        ids: [foot.post.id, head.post.id],
        rule: 'From 6 in over the foot of one post to right under the frame at the other, over both their outer faces, its own width added for the ends, up to the inch (common practice, no source)',
      },
    }),
  )
}

/** From the foot's outer face to under the frame at the other's, the brace's own width added for the ends; up to the inch. */
function lengthOf(foot: Member, head: Member): ReturnType<typeof ticks> {
  const over = (low: 'x0' | 'y0', high: 'x1' | 'y1') =>
    Math.max(foot.box[high], head.box[high]) - Math.min(foot.box[low], head.box[low])
  const across = Math.max(over('x0', 'x1'), over('y0', 'y1'))
  const up = Math.max(foot.length, head.length) - BELOW
  const inch = inches(1)
  return ticks(Math.ceil((Math.hypot(across, up) + sectionOf(SIZE).depth) / inch) * inch)
}
