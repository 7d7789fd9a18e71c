import type { Design } from '../../../core/estimate-types.ts'
import { frameEdges, isBeforeOneWall, sightOf, tiesTo } from '../../../core/ground/index.ts'
import { printLength } from '../../../core/units/index.ts'
import { type Fit, toX, toY } from '../../drawing/fit.ts'
import { holesOf } from './holes.ts'

/** The two lines that prove the chosen hole: from both corners at the wall, or from corners of a house in the way. */
export function ProvingDiagonals({
  fit,
  design,
  chosen,
}: {
  readonly fit: Fit
  readonly design: Design
  readonly chosen: string | null
}) {
  const hole = holesOf(design).find(({ id, postId }) => id === chosen || postId === chosen)
  if (hole === undefined) return null
  const edges = frameEdges(design.layout)
  const lines = isBeforeOneWall(design)
    ? [
        { x: edges.left, y: edges.rear, text: hole.fromLeft },
        { x: edges.right, y: edges.rear, text: hole.fromRight },
      ]
    : tiesTo(hole, sightOf(design.layout)).map(({ corner, measures }) => ({
        x: corner.x,
        y: corner.y,
        text: printLength(measures),
      }))
  const end = { x: toX(fit, hole.x), y: toY(fit, hole.y) }
  return (
    <g>
      {lines.map(({ x, y, text }) => {
        const start = { x: toX(fit, x), y: toY(fit, y) }
        return (
          <g key={`${x} ${y}`}>
            <line className="string-line is-diagonal" x1={start.x} y1={start.y} x2={end.x} y2={end.y} />
            <text
              className="string-text"
              x={(start.x + end.x) / 2}
              y={(start.y + end.y) / 2}
              textAnchor="middle"
            >
              {text}
            </text>
          </g>
        )
      })}
    </g>
  )
}
