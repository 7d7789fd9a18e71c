import type { Design } from '../../../core/estimate-types.ts'
import { type Fit, toX, toY } from '../../drawing/fit.ts'
import { holesOf } from './holes.ts'

const CROSS = 5

/** String lines to the holes: along each beam, and from both corners at the wall to the chosen hole, else to the first. */
export function StringLines({
  fit,
  design,
  chosen,
}: {
  readonly fit: Fit
  readonly design: Design
  readonly chosen: string | null
}) {
  const { frame, job } = design
  const holes = holesOf(design)
  const proved = holes.find((hole) => hole.id === chosen || hole.postId === chosen) ?? holes[0]
  const x = (at: number) => toX(fit, at)
  const y = (at: number) => toY(fit, at)
  return (
    <g>
      {frame.beams.map((beam) => (
        <line
          key={beam.id}
          className="string-line"
          x1={x(-160)}
          x2={x(job.size.width + 160)}
          y1={y(beam.y)}
          y2={y(beam.y)}
        />
      ))}
      {proved && (
        <>
          <line className="string-line is-diagonal" x1={x(0)} y1={y(0)} x2={x(proved.x)} y2={y(proved.y)} />
          <line
            className="string-line is-diagonal"
            x1={x(job.size.width)}
            y1={y(0)}
            x2={x(proved.x)}
            y2={y(proved.y)}
          />
          <DiagonalText x={(x(0) + x(proved.x)) / 2} y={(y(0) + y(proved.y)) / 2} text={proved.fromLeft} />
          <DiagonalText
            x={(x(job.size.width) + x(proved.x)) / 2}
            y={(y(0) + y(proved.y)) / 2}
            text={proved.fromRight}
          />
        </>
      )}
      {holes.map((hole) => (
        <g key={hole.id}>
          <line x1={x(hole.x) - CROSS} x2={x(hole.x) + CROSS} y1={y(hole.y)} y2={y(hole.y)} />
          <line x1={x(hole.x)} x2={x(hole.x)} y1={y(hole.y) - CROSS} y2={y(hole.y) + CROSS} />
        </g>
      ))}
    </g>
  )
}

function DiagonalText({ x, y, text }: { readonly x: number; readonly y: number; readonly text: string }) {
  return (
    <text className="string-text" x={x} y={y} textAnchor="middle">
      {text}
    </text>
  )
}
