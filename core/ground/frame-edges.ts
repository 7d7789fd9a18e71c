import type { Design } from '../estimate-types.ts'
import type { Point } from '../layout/index.ts'
import { type Ticks, ticks } from '../units/index.ts'

interface FrameEdges {
  readonly left: Ticks
  readonly right: Ticks
  readonly rear: Ticks
  readonly front: Ticks
}

/** The outermost lines of the frame of the first level, which stands at the house, on its two axes. */
export function frameEdges({ outline }: Pick<Design['layout'], 'outline'>): FrameEdges {
  return edgesOf(outline)
}

/** The outermost lines of the frames of all levels together. */
export function overallEdges({ levels }: Pick<Design['layout'], 'levels'>): FrameEdges {
  return edgesOf(levels.flatMap(({ outline }) => outline))
}

function edgesOf(corners: readonly Point[]): FrameEdges {
  const xs = corners.map(({ x }) => x)
  const ys = corners.map(({ y }) => y)
  return {
    left: ticks(Math.min(...xs)),
    right: ticks(Math.max(...xs)),
    rear: ticks(Math.min(...ys)),
    front: ticks(Math.max(...ys)),
  }
}
