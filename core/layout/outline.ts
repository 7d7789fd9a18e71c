import { turnedPositive } from '../geometry/index.ts'
import { cornerList, edgeList, type Job } from '../job/index.ts'
import { type Ticks, ticks } from '../units/index.ts'
import type { OutlineEdge, Point } from './types.ts'

/** The outside of the frame and what stands along each of its edges. */
export interface Outline {
  readonly corners: readonly Point[]
  readonly edges: readonly OutlineEdge[]
}

/**
 * The stated corners, or those of a rectangle; a width or depth other than theirs moves the corners furthest out. Walls
 * are the edges that the job names, or those at the back; a freestanding deck has none.
 */
export function outlineOf(job: Job): Outline {
  const stated = statedCorners(job)
  const corners = turnedPositive(stated)
  const turned = stated.length > 1 && corners[1] !== stated[1]
  const named = edgeList(job.shape.walls)
  const isWall = (number: number, from: Point, to: Point) =>
    job.site.attachment === 'ledger' &&
    (named.length > 0 ? named.includes(number) : from.y === 0 && to.y === 0)
  const edges = corners.map((from, i): OutlineEdge => {
    const to = corners[(i + 1) % corners.length] ?? from
    const number = turned ? corners.length - i : i + 1
    return { number, from, to, kind: isWall(number, from, to) ? 'wall' : 'open' }
  })
  return { corners, edges }
}

function statedCorners(job: Job): readonly Point[] {
  const { width, depth } = job.size
  const zero = ticks(0)
  const corners = cornerList(job.shape.outline)
  if (corners.length === 0) {
    return [
      { x: zero, y: zero },
      { x: width, y: zero },
      { x: width, y: depth },
      { x: zero, y: depth },
    ]
  }
  const right = Math.max(...corners.map(({ x }) => x))
  const front = Math.max(...corners.map(({ y }) => y))
  const moved = (at: Ticks, furthest: number, size: Ticks) => (at === furthest ? size : at)
  return corners.map(({ x, y }) => ({ x: moved(x, right, width), y: moved(y, front, depth) }))
}
