import type { Primitive } from '../../core/papers/index.ts'
import { Dimension } from './dimension.tsx'
import { ALONE, type InChain } from './dimension-text.ts'
import { type Fit, toX, toY } from './fit.ts'

export type Emphasis = 'selected' | 'hovered' | 'fails' | 'near' | 'none'

/** A joint is drawn at least so far past the member's faces, px. */
const JOINT_REACH = 5

/** One primitive of a paper as SVG; class names carry meaning, the style sheet carries colour and weight. */
export function PrimitiveShape({
  p,
  fit,
  emphasis,
  inChain = ALONE,
}: {
  readonly p: Primitive
  readonly fit: Fit
  readonly emphasis: Emphasis
  /** of a dimension: where it stands among those on its line */
  readonly inChain?: InChain
}) {
  const said = emphasis === 'none' ? '' : ` is-${emphasis}`
  switch (p.kind) {
    case 'rect':
      if (p.fill === 'house') return <House p={p} fit={fit} />
      return (
        <rect
          className={`fill-${p.fill} weight-${p.weight} stroke-${p.stroke} on-${p.layer}${said}`}
          x={toX(fit, p.x)}
          y={toY(fit, p.y)}
          width={Math.max(1, p.w * fit.scale)}
          height={Math.max(1, p.h * fit.scale)}
        />
      )
    case 'polygon':
      return (
        <polygon
          className={
            p.fill === 'house'
              ? 'fill-house'
              : `fill-${p.fill} weight-${p.weight} stroke-${p.stroke} on-${p.layer}${said}`
          }
          points={cornersOn(fit, p.points)}
        />
      )
    case 'line':
      return (
        <line
          className={`weight-${p.weight} stroke-${p.stroke} on-${p.layer}${said}`}
          x1={toX(fit, p.x1)}
          y1={toY(fit, p.y1)}
          x2={toX(fit, p.x2)}
          y2={toY(fit, p.y2)}
        />
      )
    case 'circle':
      return (
        <circle
          className={`fill-none weight-${p.weight} stroke-${p.stroke} on-${p.layer}${said}`}
          cx={toX(fit, p.cx)}
          cy={toY(fit, p.cy)}
          r={p.r * fit.scale}
        />
      )
    case 'text':
      return (
        <text
          className={`text-${p.size} on-${p.layer}${said}`}
          x={toX(fit, p.x)}
          y={toY(fit, p.y)}
          textAnchor={p.anchor}
          dy="0.35em"
        >
          {p.text}
        </text>
      )
    case 'dimension':
      return <Dimension p={p} fit={fit} inChain={inChain} />
    case 'joint': {
      const reach = p.half * fit.scale + JOINT_REACH
      const x = toX(fit, p.x)
      const y = toY(fit, p.y)
      return p.along === 'x' ? (
        <line className={`joint${said}`} x1={x} x2={x} y1={y - reach} y2={y + reach} />
      ) : (
        <line className={`joint${said}`} x1={x - reach} x2={x + reach} y1={y} y2={y} />
      )
    }
  }
}

/** Corners of a shape as SVG writes them. */
export function cornersOn(fit: Fit, points: readonly { readonly x: number; readonly y: number }[]): string {
  return points.map(({ x, y }) => `${toX(fit, x)},${toY(fit, y)}`).join(' ')
}

/** The house: hatched, without an outline but for the face of its wall. */
function House({ p, fit }: { readonly p: Extract<Primitive, { kind: 'rect' }>; readonly fit: Fit }) {
  const x = toX(fit, p.x)
  const y = toY(fit, p.y)
  const w = p.w * fit.scale
  const h = p.h * fit.scale
  return (
    <g>
      <rect className="fill-house" x={x} y={y} width={w} height={h} />
      <line className="wall-face" x1={x} x2={x + w} y1={y + h} y2={y + h} />
      <text className="text-small on-house" x={x + w / 4} y={y + h / 2} dy="0.35em" textAnchor="middle">
        house
      </text>
    </g>
  )
}
