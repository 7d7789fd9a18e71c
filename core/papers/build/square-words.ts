import type { Design } from '../../estimate-types.ts'
import { printLength } from '../../units/index.ts'

/** What proves the frame square: of an outline that is no rectangle, the rectangle around it. */
export function squareWords({ layout, frame }: Pick<Design, 'layout' | 'frame'>): string {
  const of = layout.outline.length === 4 ? 'both diagonals' : 'both diagonals of the rectangle around it'
  return `${of} ${printLength(frame.longDiagonal)}`
}
