import { type KeyboardEvent, type PointerEvent, useRef } from 'react'
import { printLength, ticks } from '../../../core/units/index.ts'
import { type Fit, toX, toY } from '../../drawing/fit.ts'
import type { Grip } from '../../state/grips/index.ts'
import { movedLine } from '../../state/grips/snap.ts'
import { useJob, useSession } from '../../state/session-context.ts'
import type { GripMove } from './use-grip-move.ts'

/** how far beside the end of a beam its grip stands, px */
const BESIDE = 13

/**
 * What can be moved on the plan, each under a handle: drawn with the pointer, or by arrow keys while it has the focus.
 * All are one stop of the Tab key; page up and page down go from one to the next.
 */
export function Grips({
  grips,
  chosen,
  fit,
  width,
  height,
  move,
  onSeek,
}: {
  readonly grips: readonly Grip[]
  readonly chosen: Grip | null
  readonly fit: Fit
  readonly width: number
  readonly height: number
  readonly move: GripMove
  /** brings a place of the plan into view */
  onSeek(at: { readonly x: number; readonly y: number }): void
}) {
  const session = useSession()
  const held = useJob((state) => state.held)
  const box = useRef<HTMLDivElement>(null)
  const shown = chosen ?? held?.grip ?? null
  const stop = shown?.id ?? grips[0]?.id

  function onKeyDown(event: KeyboardEvent<HTMLElement>, index: number) {
    const next = { PageDown: index + 1, PageUp: index - 1, Home: 0, End: grips.length - 1 }[event.key]
    const grip = next === undefined ? undefined : grips[Math.min(grips.length - 1, Math.max(0, next))]
    if (grip === undefined) return
    event.preventDefault()
    session.letGo()
    box.current?.querySelector<HTMLElement>(`[data-grip="${grip.id}"]`)?.focus()
  }

  return (
    <div
      className="grips"
      role="group"
      aria-label="What can be moved: arrow keys move it, page up and page down go to the next"
      ref={box}
    >
      {grips.map((grip, index) => {
        const values = held?.grip.id === grip.id ? held.values : grip.axes.map(({ value }) => value)
        const line = held?.grip.id === grip.id ? movedLine(held.grip, values) : grip.line
        const at = placeOn(grip, line, fit)
        const isAway = at.x < 0 || at.x > width || at.y < 0 || at.y > height
        const isShown = grip.id === shown?.id
        return (
          <button
            key={grip.id}
            type="button"
            data-grip={grip.id}
            className={`grip grip-${grip.kind} goes-${wayOf(grip)}${isShown ? ' is-chosen' : ''}${isAway ? ' is-away' : ''}`}
            style={{ left: at.x, top: at.y }}
            tabIndex={grip.id === stop ? 0 : -1}
            aria-label={`${grip.label}, ${placeText(grip, values)}`}
            aria-pressed={isShown}
            onFocus={() => {
              session.select(grip.id)
              if (isAway) onSeek(grip.line[0])
            }}
            onPointerEnter={() => session.hover(grip.id)}
            onPointerLeave={() => session.hover(null)}
            onKeyDown={(event) => onKeyDown(event, index)}
            {...drag(grip)}
          />
        )
      })}
      <output className="grip-said" aria-live="polite">
        {held && <Said held={held} fit={fit} width={width} />}
      </output>
    </div>
  )

  function drag(grip: Grip) {
    return {
      onPointerDown(event: PointerEvent<HTMLButtonElement>) {
        if (event.button !== 0) return
        event.currentTarget.setPointerCapture(event.pointerId)
        event.currentTarget.dataset.from = `${event.clientX},${event.clientY}`
        event.currentTarget.focus()
      },
      onPointerMove(event: PointerEvent<HTMLButtonElement>) {
        const from = event.currentTarget.dataset.from?.split(',').map(Number)
        if (from === undefined) return
        const by = { x: event.clientX - (from[0] ?? 0), y: event.clientY - (from[1] ?? 0) }
        if (session.store.getState().held === null) {
          if (event.currentTarget.dataset.gone !== undefined || Math.hypot(by.x, by.y) < 3) return
          event.currentTarget.dataset.gone = ''
          move.take(grip)
        }
        move.draw(by, event.altKey)
      },
      onPointerUp(event: PointerEvent<HTMLButtonElement>) {
        delete event.currentTarget.dataset.from
        delete event.currentTarget.dataset.gone
        session.letGo()
      },
      onPointerCancel(event: PointerEvent<HTMLButtonElement>) {
        delete event.currentTarget.dataset.from
        delete event.currentTarget.dataset.gone
        session.giveUpMove()
      },
    }
  }
}

/** The value at which something is held, beside it. */
function Said({
  held,
  fit,
  width,
}: {
  readonly held: { readonly grip: Grip; readonly values: readonly number[] }
  readonly fit: Fit
  readonly width: number
}) {
  const at = placeOn(held.grip, movedLine(held.grip, held.values), fit)
  const isLeft = at.x > width - 220
  return (
    <span className={isLeft ? 'grip-flag is-left' : 'grip-flag'} style={{ left: at.x, top: at.y }}>
      {placeText(held.grip, held.values)}
    </span>
  )
}

function placeText({ axes }: Grip, values: readonly number[]): string {
  return axes.map(({ name, value }, i) => `${printLength(ticks(values[i] ?? value))} ${name}`).join(', ')
}

/** Where the handle stands: in the middle of an edge, past the right end of a beam, on a corner or a post. */
function placeOn(
  { kind }: Grip,
  [from, to]: Grip['line'],
  fit: Fit,
): { readonly x: number; readonly y: number } {
  if (kind === 'beam') {
    const whole = Math.hypot(to.x - from.x, to.y - from.y) || 1
    return {
      x: toX(fit, to.x) + ((to.x - from.x) / whole) * BESIDE,
      y: toY(fit, to.y) + ((to.y - from.y) / whole) * BESIDE,
    }
  }
  return { x: (toX(fit, from.x) + toX(fit, to.x)) / 2, y: (toY(fit, from.y) + toY(fit, to.y)) / 2 }
}

/** For the pointer's shape: along the house, away from it, or both. */
function wayOf({ axes }: Grip): 'x' | 'y' | 'both' {
  if (axes.length > 1) return 'both'
  const way = axes[0]?.way
  return way !== undefined && Math.abs(way.x) >= Math.abs(way.y) ? 'x' : 'y'
}
