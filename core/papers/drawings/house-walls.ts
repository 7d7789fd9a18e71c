import type { Design } from '../../estimate-types.ts'
import { edgeAt, movedLeft } from '../../geometry/index.ts'
import { isRectangle } from '../../job/index.ts'
import { inches } from '../../units/index.ts'
import type { Primitive } from '../types.ts'
import { text } from './shapes.ts'

/** How much of the house is drawn, behind the wall line and past the deck's ends. */
export const HOUSE = inches(14)

/** The house along y = 0 behind a rectangle; along every wall edge of another outline. A freestanding deck has none. */
export function houseWalls(design: Design): readonly Primitive[] {
  const { job, layout } = design
  if (job.site.attachment === 'freestanding') return []
  if (!isRectangle(job))
    return layout.edges.flatMap((edge, i) => (edge.kind === 'wall' ? wall(design, i) : []))
  const beyond = job.decking.overhang + HOUSE
  return [
    {
      kind: 'rect',
      id: 'house-wall',
      layer: 'house',
      x: -beyond,
      y: -HOUSE,
      w: job.size.width + 2 * beyond,
      h: HOUSE,
      weight: 'heavy',
      stroke: 'solid',
      fill: 'house',
    },
  ]
}

function wall({ layout }: Design, index: number): readonly Primitive[] {
  const edge = edgeAt(layout.outline, index)
  const behind = movedLeft(edge, -HOUSE)
  const middle = { x: (edge.from.x + behind.to.x) / 2, y: (edge.from.y + behind.to.y) / 2 }
  return [
    {
      kind: 'polygon',
      id: 'house-wall',
      layer: 'house',
      points: [edge.from, edge.to, behind.to, behind.from],
      weight: 'fine',
      stroke: 'solid',
      fill: 'house',
    },
    {
      kind: 'line',
      id: 'house-wall',
      layer: 'house',
      x1: edge.from.x,
      y1: edge.from.y,
      x2: edge.to.x,
      y2: edge.to.y,
      weight: 'heavy',
      stroke: 'solid',
    },
    text('house-wall', 'house', middle.x, middle.y, 'house'),
  ]
}
