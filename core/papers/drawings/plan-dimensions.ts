import type { Design } from '../../estimate-types.ts'
import { inches } from '../../units/index.ts'
import type { Primitive } from '../types.ts'
import { stairReach } from './plan-stairs.ts'
import { levelDimension, uprightDimension } from './shapes.ts'

/** Distance from the deck's edge to the first dimension line, and from one to the next. */
const FIRST = inches(16)
const NEXT = inches(14)

/**
 * Dimension chains of the plan: post centres from end to end below the deck and the whole width under them; depth
 * at the left; at the right where each beam's centre line lies. All stand clear of the stairs.
 */
export function planDimensions(design: Design): readonly Primitive[] {
  const { job, frame } = design
  const { width, depth } = job.size
  const { overhang } = job.decking
  const reach = stairReach(design)
  const below = depth + Math.max(overhang, reach.front)
  const front = frame.posts.filter((post) => post.beam === 'front').map((post) => post.x)
  const stops = [...new Set([0, ...front, width])].sort((a, b) => a - b)
  const chain = stops
    .slice(1)
    .map((x, i) => levelDimension(`post-spacing-${i + 1}`, stops[i] ?? 0, x, depth, below - depth + FIRST))
  return [
    ...chain,
    levelDimension('size.width', 0, width, depth, below - depth + FIRST + NEXT),
    uprightDimension('size.depth', 0, depth, 0, -(Math.max(overhang, reach.left) + FIRST)),
    ...beamDimensions(frame.beams, width, depth, Math.max(overhang, reach.right) + FIRST),
  ]
}

function beamDimensions(
  beams: Design['frame']['beams'],
  width: number,
  depth: number,
  offset: number,
): readonly Primitive[] {
  const stops = [...new Set([0, ...beams.map((beam) => beam.y), depth])].sort((a, b) => a - b)
  return stops
    .slice(1)
    .map((y, i) => uprightDimension(`beam-place-${i + 1}`, stops[i] ?? 0, y, width, offset))
}
