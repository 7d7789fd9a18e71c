import { memo, type PointerEvent, type ReactNode, useMemo } from 'react'
import type { Drawing, Layer, Primitive } from '../../core/papers/index.ts'
import { type Fit, fitInto, toX, toY } from './fit.ts'
import { cornersOn, type Emphasis, PrimitiveShape } from './primitive.tsx'
import { uncrowded } from './uncrowded.ts'
import { usePrinting } from './use-printing.ts'
import { useSize } from './use-size.ts'
import './drawing.css'

const PAD = 18
/** Letter across without margins and head, in CSS px: what the drawing fills in print. */
const PAPER = { width: 960, height: 640 }
/** what is thinner than this on the screen gets a wider strip to point at, px */
const EASY = 14
/** a board on edge, in ticks, and how many px it takes to show its wood between full outlines */
const BOARD = 48
const EASY_WOOD = 5.5

export interface SheetProps {
  readonly drawing: Drawing
  /** layers that are shown, from the lowest up */
  readonly layers: readonly Layer[]
  readonly label: string
  readonly selected: string | null
  readonly hovered: string | null
  /** how a thing is to be drawn beside what is chosen: worst check on it */
  emphasisOf(id: string): Emphasis
  /** ids that can be chosen */
  canChoose(id: string): boolean
  onSelect(id: string | null): void
  onHover(id: string | null): void
  /** drawn over the sheet, in its place */
  overlay?(fit: Fit): ReactNode
}

/** A paper's drawing to scale, filling its room; what lies under the pointer is found by id. */
export function Sheet(props: SheetProps) {
  const [room, onScreen] = useSize<HTMLDivElement>({ width: 800, height: 420 })
  const size = usePrinting() ? PAPER : onScreen
  const { drawing, layers } = props
  const fit = useMemo(() => fitInto(drawing, size.width, size.height, PAD), [drawing, size])
  const shown = useMemo(
    () =>
      uncrowded(
        layers.flatMap((layer) => drawing.primitives.filter((p) => p.layer === layer)),
        fit.scale,
      ),
    [drawing, layers, fit.scale],
  )
  const at = (event: PointerEvent) =>
    event.target instanceof Element ? event.target.getAttribute('data-id') : null

  return (
    <div className="sheet" ref={room}>
      <svg
        width={size.width}
        height={size.height}
        viewBox={`0 0 ${size.width} ${size.height}`}
        role="img"
        className={fit.scale * BOARD < EASY_WOOD ? 'is-fine' : undefined}
        aria-label={props.label}
        onPointerMove={(event) => props.onHover(at(event))}
        onPointerLeave={() => props.onHover(null)}
        onPointerUp={(event) => props.onSelect(at(event))}
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
          return <Shape key={`${p.kind}:${p.id}:${index}`} p={p} fit={fit} emphasis={emphasis} />
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
