import type { Design } from '../../estimate-types.ts'
import { diagonal } from '../../frame/index.ts'
import { type LayoutString, wallCorners } from '../../ground/index.ts'
import { printLength } from '../../units/index.ts'

/**
 * Where a string that ends at the house meets its wall, from a corner of the house: that between two walls where the wall
 * has one. Null of a string that runs past the house.
 */
export function houseEnd({ x1, y1, x2, y2 }: LayoutString, { layout, job }: Design): string | null {
  if (job.site.attachment === 'freestanding') return null
  const walls = layout.edges.filter(({ kind }) => kind === 'wall')
  const shared = walls.flatMap((wall) => wallCorners(wall, layout.edges))
  for (const end of [
    { x: x1, y: y1 },
    { x: x2, y: y2 },
  ]) {
    const wall = walls.find(({ from, to }) => within(from.x, to.x, end.x) && within(from.y, to.y, end.y))
    if (wall === undefined) continue
    const numbers = wallCorners(wall, layout.edges)
    const corner = numbers.find((one) => shared.filter((other) => other === one).length > 1) ?? wall.number
    const { x, y } = corner === wall.number ? wall.from : wall.to
    return `${printLength(diagonal(end.x - x, end.y - y))} from corner ${corner}`
  }
  return null
}

/** A tick more or less. */
function within(a: number, b: number, at: number): boolean {
  return at >= Math.min(a, b) - 1 && at <= Math.max(a, b) + 1
}
