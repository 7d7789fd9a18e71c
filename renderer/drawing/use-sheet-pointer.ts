import { type PointerEvent, useMemo, useRef } from 'react'

type Press = PointerEvent<SVGSVGElement>

/** What the sheet hands its pointer to. */
export type SheetPointer = {
  readonly [name in
    | 'onPointerDown'
    | 'onPointerMove'
    | 'onPointerUp'
    | 'onPointerCancel'
    | 'onPointerLeave']: (event: Press) => void
}

interface Point {
  readonly x: number
  readonly y: number
}

/** What pressing, drawing and pinching on a sheet do. Lengths in px. */
interface SheetGestures {
  onHover(id: string | null): void
  onSelect(id: string | null): void
  onPan(dx: number, dy: number): void
  /** so many times larger about a place of the room */
  onZoom(factor: number, at: Point): void
  /** a thing was pressed and drawn away. @returns whether it moves; if not, the drawing does */
  onTake(id: string): boolean
  /** so far from where it was taken */
  onDraw(by: Point, isFine: boolean): void
  onLetGo(): void
  onGiveUp(): void
}

/** a press that moves less than this is a click, px */
const CLICK = 4

type Mode = 'none' | 'press' | 'pan' | 'pinch' | 'move'

/** One pointer presses, pans or moves a thing; two pinch. */
export function useSheetPointer(gestures: SheetGestures): SheetPointer {
  const now = useRef(gestures)
  now.current = gestures
  const state = useRef({
    mode: 'none' as Mode,
    id: null as string | null,
    start: { x: 0, y: 0 },
    points: new Map<number, Point>(),
  })

  return useMemo((): SheetPointer => {
    const here = state.current
    const at = (event: Press): Point => {
      const box = event.currentTarget.getBoundingClientRect()
      return { x: event.clientX - box.left, y: event.clientY - box.top }
    }

    function pinch(before: readonly Point[], after: readonly Point[]) {
      const [a, b] = [spread(before), spread(after)]
      now.current.onPan(b.x - a.x, b.y - a.y)
      if (a.apart > 0) now.current.onZoom(b.apart / a.apart, b)
    }

    function end(event: Press, isGivenUp: boolean) {
      if (!here.points.delete(event.pointerId)) return
      if (here.mode === 'move') {
        if (isGivenUp) now.current.onGiveUp()
        else now.current.onLetGo()
      } else if (here.mode === 'press' && !isGivenUp) {
        now.current.onSelect(here.id)
      }
      here.mode = 'none'
    }

    return {
      onPointerDown(event) {
        if (event.button > 1 || here.points.size > 1) return
        event.currentTarget.setPointerCapture(event.pointerId)
        here.points.set(event.pointerId, at(event))
        if (here.points.size === 2) {
          if (here.mode === 'move') now.current.onGiveUp()
          here.mode = 'pinch'
          return
        }
        here.mode = event.button === 1 ? 'pan' : 'press'
        here.id = idAt(event)
        here.start = at(event)
      },
      onPointerMove(event) {
        const before = [...here.points.values()]
        const last = here.points.get(event.pointerId)
        if (last === undefined) {
          if (event.pointerType !== 'touch') now.current.onHover(idAt(event))
          return
        }
        const point = at(event)
        here.points.set(event.pointerId, point)
        const by = { x: point.x - here.start.x, y: point.y - here.start.y }
        if (here.mode === 'pinch') {
          pinch(before, [...here.points.values()])
        } else if (here.mode === 'press' && Math.hypot(by.x, by.y) > CLICK) {
          here.mode = here.id !== null && now.current.onTake(here.id) ? 'move' : 'pan'
          if (here.mode === 'pan') now.current.onPan(by.x, by.y)
        } else if (here.mode === 'pan') {
          now.current.onPan(point.x - last.x, point.y - last.y)
        }
        if (here.mode === 'move') now.current.onDraw(by, event.altKey)
      },
      onPointerUp: (event) => end(event, false),
      onPointerCancel: (event) => end(event, true),
      onPointerLeave: () => now.current.onHover(null),
    }
  }, [])
}

function idAt({ target }: Press): string | null {
  return target instanceof Element ? target.getAttribute('data-id') : null
}

/** The middle of two points, and how far they are apart. */
function spread([a, b]: readonly Point[]): Point & { readonly apart: number } {
  if (a === undefined || b === undefined) return { x: 0, y: 0, apart: 0 }
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2, apart: Math.hypot(a.x - b.x, a.y - b.y) }
}
