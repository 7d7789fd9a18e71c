import type { Design } from '../estimate-types.ts'
import { type Ticks, ticks } from '../units/index.ts'

/** The outermost lines of the frame on its two axes. */
export function frameEdges({ outline }: Design['layout']): {
  readonly left: Ticks
  readonly right: Ticks
  readonly rear: Ticks
  readonly front: Ticks
} {
  const xs = outline.map(({ x }) => x)
  const ys = outline.map(({ y }) => y)
  return {
    left: ticks(Math.min(...xs)),
    right: ticks(Math.max(...xs)),
    rear: ticks(Math.min(...ys)),
    front: ticks(Math.max(...ys)),
  }
}
