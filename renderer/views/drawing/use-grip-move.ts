import { useMemo, useRef } from 'react'
import type { Grip } from '../../state/grips/index.ts'
import { drawnTo, nudgedTo } from '../../state/grips/snap.ts'
import { useSession } from '../../state/session-context.ts'

interface Point {
  readonly x: number
  readonly y: number
}

/** Moves a grip by the pointer or by keys. */
export interface GripMove {
  take(grip: Grip): void
  /** drawn so far from where it was taken, px */
  draw(by: Point, isFine: boolean): void
  /** an arrow key pressed that points this way */
  nudge(grip: Grip, key: Point, steps: number, isFine: boolean): void
}

/** @param scale px per tick of the drawing */
export function useGripMove(scale: number): GripMove {
  const session = useSession()
  const now = useRef(scale)
  now.current = scale
  return useMemo((): GripMove => {
    const held = () => session.store.getState().held
    return {
      take(grip) {
        session.select(grip.id)
        session.takeHold(grip)
      },
      draw(by, isFine) {
        const grip = held()?.grip
        const onPlan = { x: by.x / now.current, y: by.y / now.current }
        if (grip) session.moveHeld(drawnTo(grip, onPlan, isFine))
      },
      nudge(grip, key, steps, isFine) {
        const own = held()
        const values = own?.grip.id === grip.id ? own.values : grip.axes.map(({ value }) => value)
        const base = own?.grip.id === grip.id ? own.grip : grip
        const next = nudgedTo(base, values, key, steps, isFine)
        if (next === null) return
        if (own?.grip.id !== grip.id) session.takeHold(grip)
        session.moveHeld(next)
      },
    }
  }, [session])
}
