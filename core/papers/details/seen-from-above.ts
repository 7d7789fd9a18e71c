import type { Member } from '../../frame/index.ts'
import { common } from '../../geometry/index.ts'
import type { LineWeight, Primitive, Stroke } from '../types.ts'

interface Place {
  readonly x: number
  readonly y: number
}

/** A square of the plan about a place: what lies in it is drawn with that place as its origin, as the model has it. */
export interface Window {
  readonly about: Place
  /** half of its side, ticks */
  readonly half: number
}

interface Look {
  readonly weight?: LineWeight
  readonly stroke?: Stroke
  readonly fill?: 'wood' | 'ground' | 'none'
}

/** Members from above, cut off where the window ends. */
export function membersWithin(
  members: readonly Pick<Member, 'id' | 'box' | 'plan'>[],
  window: Window,
  look: Look = {},
): readonly Primitive[] {
  return members.flatMap(({ id, box, plan }) =>
    shapeWithin(
      id,
      plan ?? [
        { x: box.x0, y: box.y0 },
        { x: box.x1, y: box.y0 },
        { x: box.x1, y: box.y1 },
        { x: box.x0, y: box.y1 },
      ],
      window,
      look,
    ),
  )
}

/** Any shape, cut off alike. */
export function shapeWithin(
  id: string,
  shape: readonly Place[],
  { about, half }: Window,
  { weight = 'medium', stroke = 'solid', fill = 'none' }: Look = {},
): readonly Primitive[] {
  const square = [
    { x: about.x - half, y: about.y - half },
    { x: about.x + half, y: about.y - half },
    { x: about.x + half, y: about.y + half },
    { x: about.x - half, y: about.y + half },
  ]
  return common([shape], [square]).map(
    (points): Primitive => ({
      kind: 'polygon',
      id,
      layer: 'joists',
      points: points.map(({ x, y }) => ({ x: x - about.x, y: y - about.y })),
      weight,
      stroke,
      fill,
    }),
  )
}

/** A square of a side about a place, as a post is seen. */
export function squareAbout({ x, y }: Place, side: number): readonly Place[] {
  const half = side / 2
  return [
    { x: x - half, y: y - half },
    { x: x + half, y: y - half },
    { x: x + half, y: y + half },
    { x: x - half, y: y + half },
  ]
}
