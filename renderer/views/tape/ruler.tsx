import type { PointerEvent } from 'react'
import type { CompareRow } from '../../../core/compare/index.ts'
import { TICKS_PER_FOOT, TICKS_PER_INCH } from '../../../core/units/index.ts'
import { TAPE_STEP } from '../../state/tape-range.ts'
import { stretches, type TapeScale, xOf } from './tape-scale.ts'

const TOP = 100
const BOTTOM = 132
const WIDE = 250
const WIDE_ENOUGH = 96

/** The tape measure: feet and their quarters; wood where every framing run is whole, hatched where runs are jointed. */
export function Ruler({
  scale,
  rows,
  dots,
  rings,
  ...handlers
}: {
  readonly scale: TapeScale
  readonly rows: readonly CompareRow[]
  readonly dots: readonly number[]
  readonly rings: readonly number[]
  onPointerDown(event: PointerEvent<Element>): void
  onPointerMove(event: PointerEvent<Element>): void
  onPointerUp(event: PointerEvent<Element>): void
}) {
  const quarters: number[] = []
  for (let at: number = scale.from; at <= scale.to; at += 3 * TICKS_PER_INCH) quarters.push(at)
  const parts = stretches(rows, TAPE_STEP, scale.from, scale.to)
  const on = (width: number) => width >= scale.from && width <= scale.to
  return (
    <g>
      <defs>
        <pattern
          id="jointed"
          width="6"
          height="6"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <line x1="0" y1="0" x2="0" y2="6" className="tape-hatch" />
        </pattern>
      </defs>
      <g className="tape-rule" {...handlers}>
        <rect
          className="tape-blank"
          x={scale.left}
          y={TOP}
          width={scale.right - scale.left}
          height={BOTTOM - TOP}
        />
        {parts.map((part) => (
          <rect
            key={part.from}
            className={part.whole ? 'tape-whole' : 'tape-jointed'}
            x={xOf(scale, part.from)}
            y={TOP}
            width={xOf(scale, part.to) - xOf(scale, part.from)}
            height={BOTTOM - TOP}
          />
        ))}
        {quarters.map((at) => {
          const foot = at % TICKS_PER_FOOT === 0
          const half = at % (TICKS_PER_FOOT / 2) === 0
          const x = xOf(scale, at)
          return (
            <g key={at}>
              <line
                className={foot ? 'tape-foot' : 'tape-inch'}
                x1={x}
                x2={x}
                y1={TOP}
                y2={TOP + (foot ? 13 : half ? 8 : 4.5)}
              />
              {foot && (
                <text className="tape-figure" x={x} y={BOTTOM - 5} textAnchor="middle">
                  {at / TICKS_PER_FOOT}
                </text>
              )}
            </g>
          )
        })}
        <line className="tape-edge" x1={scale.left} x2={scale.right} y1={TOP} y2={TOP} />
      </g>
      {dots.filter(on).map((width) => (
        <circle key={width} className="tape-dot" cx={xOf(scale, width)} cy={BOTTOM + 7} r={3} />
      ))}
      {rings.filter(on).map((width) => (
        <circle key={width} className="tape-ring" cx={xOf(scale, width)} cy={BOTTOM + 7} r={5.5} />
      ))}
      {parts.map((part) => {
        const a = xOf(scale, part.from)
        const b = xOf(scale, part.to)
        if (b - a < WIDE_ENOUGH) return null
        return (
          <text
            key={part.from}
            className={part.whole ? 'tape-said whole' : 'tape-said'}
            x={(a + b) / 2}
            y={BOTTOM + 23}
            textAnchor="middle"
          >
            {part.whole
              ? b - a < WIDE
                ? 'whole boards'
                : 'every framing run whole from one board'
              : b - a < WIDE
                ? 'jointed'
                : 'framing runs jointed'}
          </text>
        )
      })}
    </g>
  )
}
