import type { Member } from '../../frame/index.ts'
import type { DeckEdge } from '../../stairs/index.ts'
import type { Layer, Primitive } from '../types.ts'

export type View = 'section' | 'front' | 'side'

/** Heights are drawn upward: a page counts down, so z turns its sign. */
export const up = (z: number): number => (z === 0 ? 0 : -z)

/** A member as the box that it is seen as, across the house or from the yard. */
export function standing({ id, box }: Pick<Member, 'id' | 'box'>, is: View, layer: Layer): Primitive {
  const [low, high] = is === 'front' ? [box.x0, box.x1] : [box.y0, box.y1]
  return {
    kind: 'rect',
    id,
    layer,
    x: low,
    y: up(box.z1),
    w: high - low,
    h: box.z1 - box.z0,
    weight: 'fine',
    stroke: 'solid',
    fill: 'wood',
  }
}

/** Whether what stands on an edge, or leaves the deck there, is drawn before the deck's own wood or over it. */
export type Depth = 'behind the deck' | 'before it'

/** An elevation looks at the front or at the left side; in a section nothing stands behind what is cut. */
export function depthOf({ out }: Pick<DeckEdge, 'out'>, is: View): Depth {
  const away = is === 'front' ? -out.y : is === 'side' ? out.x : 0
  return away > 0.5 ? 'behind the deck' : 'before it'
}
