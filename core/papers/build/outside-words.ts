import type { Design } from '../../estimate-types.ts'
import { overallEdges } from '../../ground/index.ts'
import { printLength, ticks } from '../../units/index.ts'

type Shape = Pick<Design, 'layout'>

/** How far the frames of all levels reach along the house and away from it. */
export function outsideOf({ layout }: Shape): { readonly along: string; readonly away: string } {
  const { left, right, rear, front } = overallEdges(layout)
  return { along: printLength(ticks(right - left)), away: printLength(ticks(front - rear)) }
}

/** Whether the deck is less than the rectangle around it: of a shape of its own, or on several levels. */
export function isNoRectangle({ layout }: Shape): boolean {
  const { left, right, rear, front } = overallEdges(layout)
  return (
    layout.levels.length > 1 ||
    layout.outline.length !== 4 ||
    layout.outline.some(({ x, y }) => (x !== left && x !== right) || (y !== rear && y !== front))
  )
}

/** Area of all levels, to the nearest square foot. */
export function areaWords({ layout }: Shape): string {
  return `${Math.round(layout.areaSquareFeet)} square feet`.replace(/\B(?=(?:\d{3})+ )/g, ',')
}

/** Outside dimensions in short; of what is no rectangle, that they are over all, and its area. */
export function outsideWords(shape: Shape): string {
  const { along, away } = outsideOf(shape)
  const levels = shape.layout.levels.length
  if (!isNoRectangle(shape)) return `${along} × ${away}`
  const what = levels > 1 ? `on ${levels} levels` : 'no rectangle'
  return `${along} × ${away} over all, ${what}, ${areaWords(shape)} in all`
}
