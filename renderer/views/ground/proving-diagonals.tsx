import type { Design } from '../../../core/estimate-types.ts'
import { frameEdges } from '../../../core/ground/index.ts'
import { type Fit, toX, toY } from '../../drawing/fit.ts'
import { holesOf } from './holes.ts'

/** The two diagonals that prove the chosen hole, from both corners at the wall. */
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
  const end = { x: toX(fit, hole.x), y: toY(fit, hole.y) }
  return (
    <g>
      {[
        { from: edges.left, text: hole.fromLeft },
        { from: edges.right, text: hole.fromRight },
      ].map(({ from, text }) => {
        const start = { x: toX(fit, from), y: toY(fit, edges.rear) }
        return (
          <g key={from}>
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
