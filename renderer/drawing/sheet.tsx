import { memo, type ReactNode, useMemo } from 'react'
import type { Drawing, Layer, Primitive } from '../../core/papers/index.ts'
import { ALONE, placesInChains } from './dimension-text.ts'
import { type Fit, toX, toY } from './fit.ts'
import { cornersOn, type Emphasis, PrimitiveShape } from './primitive.tsx'
import { uncrowded } from './uncrowded.ts'
import type { SheetPointer } from './use-sheet-pointer.ts'
import './drawing.css'

/** what is thinner than this on the screen gets a wider strip to point at, px */
const EASY = 14
/** a board on edge, in ticks, and how many px it takes to show its wood between full outlines */
const BOARD = 48
const EASY_WOOD = 5.5

export interface SheetProps {
  readonly drawing: Drawing
  /** layers that are shown, from the lowest up */
  readonly layers: readonly Layer[]
  /** its parts hide each other in their own order, not layer by layer */
  readonly isSolid: boolean
  readonly label: string
  /** where the drawing stands in the room */
  readonly fit: Fit
  readonly width: number
  readonly height: number
  readonly selected: string | null
  readonly hovered: string | null
  /** how a thing is to be drawn beside what is chosen: worst check on it */
  emphasisOf(id: string): Emphasis
  /** ids that can be chosen */
  canChoose(id: string): boolean
  readonly pointer: SheetPointer
  /** drawn over the sheet, in its place */
  overlay?(fit: Fit): ReactNode
}

/** A paper's drawing to scale; what lies under the pointer is found by id. */
export function Sheet(props: SheetProps) {
  const { drawing, layers, isSolid, fit, width, height } = props
  const shown = useMemo(
    () =>
      uncrowded(
        isSolid
          ? drawing.primitives.filter((p) => layers.includes(p.layer))
          : layers.flatMap((layer) => drawing.primitives.filter((p) => p.layer === layer)),
        fit.scale,
      ),
    [drawing, layers, isSolid, fit.scale],
  )
  const chains = useMemo(() => placesInChains(drawing.primitives), [drawing])
  return (
    <div className="sheet">
      <svg
        width={width}
        height={height}
        viewBox={`0 0 ${width} ${height}`}
        role="img"
        className={isSolid ? 'is-solid' : fit.scale * BOARD < EASY_WOOD ? 'is-fine' : undefined}
        aria-label={props.label}
        {...props.pointer}
      >
        <defs>
          <pattern
            id="hatch"
            width="7"
            height="7"
            patternUnits="userSpaceOnUse"
            patternTransform="rotate(45)"
          >
            <line x1="0" y1="0" x2="0" y2="7" className="hatch-line" />
          </pattern>
        </defs>
        {shown.map((p, index) => {
          const emphasis =
            p.id === props.selected ? 'selected' : p.id === props.hovered ? 'hovered' : props.emphasisOf(p.id)
          return (
            <Shape
              key={`${p.kind}:${p.id}:${index}`}
              p={p}
              fit={fit}
              emphasis={emphasis}
              inChain={chains.get(p.id) ?? ALONE}
            />
          )
        })}
        {props.overlay?.(fit)}
        {shown.map((p, index) =>
          props.canChoose(p.id) ? <HitArea key={`${p.id}:${index}`} p={p} fit={fit} /> : null,
        )}
      </svg>
    </div>
  )
}

const Shape = memo(PrimitiveShape)

const HitArea = memo(function HitArea({ p, fit }: { readonly p: Primitive; readonly fit: Fit }) {
  if (p.kind === 'rect') {
    const w = Math.max(EASY, p.w * fit.scale)
    const h = Math.max(EASY, p.h * fit.scale)
    const x = toX(fit, p.x + p.w / 2) - w / 2
    const y = toY(fit, p.y + p.h / 2) - h / 2
    return <rect className="hit" data-id={p.id} x={x} y={y} width={w} height={h} />
  }
  if (p.kind === 'polygon')
    return <polygon className="hit" data-id={p.id} points={cornersOn(fit, p.points)} />
  if (p.kind === 'circle') {
    return (
      <circle
        className="hit"
        data-id={p.id}
        cx={toX(fit, p.cx)}
        cy={toY(fit, p.cy)}
        r={Math.max(EASY / 2, p.r * fit.scale)}
      />
    )
  }
  return null
})
