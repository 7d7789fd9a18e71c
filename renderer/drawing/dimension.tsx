import type { Primitive } from '../../core/papers/index.ts'
import { type InChain, nearestUpright, placeOfText, placeOfUprightText } from './dimension-text.ts'
import { type Fit, toX, toY } from './fit.ts'

type DimensionPrimitive = Extract<Primitive, { kind: 'dimension' }>

/** half of an architectural tick, px */
const TICK = 4.5
/** a witness line passes the dimension line by so much and starts so far off the thing measured, px */
const PAST = 5
const OFF = 4
/** the foot of a turned text on the right of its line is so far from it, px */
const OUTSIDE = 15

/**
 * A dimension line with architectural ticks, its text above it or, on an upright one, to its left and turned; where its
 * ticks leave no room there, on its outer side.
 */
export function Dimension({
  p,
  fit,
  inChain,
}: {
  readonly p: DimensionPrimitive
  readonly fit: Fit
  /** where it stands among those on its line */
  readonly inChain: InChain
}) {
  const upright = Math.abs(p.x2 - p.x1) < Math.abs(p.y2 - p.y1)
  const dx = upright ? p.offset : 0
  const dy = upright ? 0 : p.offset
  const way = Math.sign(p.offset) || 1
  const further = upright && p.offset !== 0 ? way * nearestUpright(fit.scale) : 0
  const ax = toX(fit, p.x1 + dx) + further
  const ay = toY(fit, p.y1 + dy)
  const bx = toX(fit, p.x2 + dx) + further
  const by = toY(fit, p.y2 + dy)
  const beside = placeOfUprightText(p.text, [ay, by])
  const level = placeOfText(p.text, [ax, bx], inChain)
  return (
    <g className="dimension">
      {p.offset !== 0 && (
        <>
          <Witness from={[toX(fit, p.x1), toY(fit, p.y1)]} to={[ax, ay]} way={way} upright={upright} />
          <Witness from={[toX(fit, p.x2), toY(fit, p.y2)]} to={[bx, by]} way={way} upright={upright} />
        </>
      )}
      <line className="dimension-line" x1={ax} y1={ay} x2={bx} y2={by} />
      <line className="dimension-tick" x1={ax - TICK} y1={ay + TICK} x2={ax + TICK} y2={ay - TICK} />
      <line className="dimension-tick" x1={bx - TICK} y1={by + TICK} x2={bx + TICK} y2={by - TICK} />
      {upright && beside === 'level' ? (
        <text
          className="dimension-text"
          textAnchor={way > 0 ? 'end' : 'start'}
          x={ax - way * 7}
          y={(ay + by) / 2}
          dy="0.35em"
        >
          {p.text}
        </text>
      ) : upright ? (
        <text
          className="dimension-text"
          textAnchor="middle"
          transform={`translate(${beside === 'outside' && way > 0 ? ax + OUTSIDE : ax - 5} ${(ay + by) / 2}) rotate(-90)`}
        >
          {p.text}
        </text>
      ) : (
        level !== null && (
          <text className="dimension-text" textAnchor={level.anchor} x={level.at} y={ay - 5}>
            {p.text}
          </text>
        )
      )}
    </g>
  )
}

function Witness({
  from,
  to,
  way,
  upright,
}: {
  readonly from: readonly [number, number]
  readonly to: readonly [number, number]
  readonly way: number
  readonly upright: boolean
}) {
  const off = way * OFF
  const past = way * PAST
  return upright ? (
    <line className="dimension-witness" x1={from[0] + off} y1={from[1]} x2={to[0] + past} y2={to[1]} />
  ) : (
    <line className="dimension-witness" x1={from[0]} y1={from[1] + off} x2={to[0]} y2={to[1] + past} />
  )
}
