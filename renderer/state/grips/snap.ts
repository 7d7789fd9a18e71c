import type { PlanPoint } from '../../../core/frame/index.ts'
import { type Ticks, ticks } from '../../../core/units/index.ts'
import type { Grip, GripAxis } from './types.ts'

/** The nearest place on the grid of steps, within bounds; a bound that lies off the grid can be reached too. */
export function snapped({ min, max, step, fine }: GripAxis, value: number, isFine: boolean): Ticks {
  const grid = isFine ? fine : step
  return ticks(Math.round(Math.min(max, Math.max(min, Math.round(value / grid) * grid))))
}

/** The value so many steps on, on the grid and within bounds. */
export function stepped(axis: GripAxis, value: number, steps: number, isFine: boolean): Ticks {
  const grid = isFine ? axis.fine : axis.step
  const from = steps > 0 ? Math.floor(value / grid) : Math.ceil(value / grid)
  return ticks(Math.round(Math.min(axis.max, Math.max(axis.min, (from + steps) * grid))))
}

/** Values of a grip that was drawn so far over the plan from where it lies. */
export function drawnTo({ axes }: Grip, by: PlanPoint, isFine: boolean): readonly Ticks[] {
  return axes.map((axis) => snapped(axis, axis.value + by.x * axis.way.x + by.y * axis.way.y, isFine))
}

/**
 * Values of a grip after an arrow key: the axis that runs more the key's way goes so many steps on. Null where no axis
 * runs that way.
 */
export function nudgedTo(
  { axes }: Grip,
  values: readonly number[],
  key: PlanPoint,
  steps: number,
  isFine: boolean,
): readonly Ticks[] | null {
  const along = axes.map(({ way }) => way.x * key.x + way.y * key.y)
  const best = along.findIndex((share) => Math.abs(share) > 0.6)
  const axis = axes[best]
  if (axis === undefined) return null
  const sign = (along[best] ?? 0) > 0 ? 1 : -1
  return axes.map((each, i) =>
    i === best
      ? stepped(each, values[i] ?? each.value, sign * steps, isFine)
      : ticks(values[i] ?? each.value),
  )
}

/** Where a grip lies when its axes have these values. */
export function movedLine({ line, axes }: Grip, values: readonly number[]): readonly [PlanPoint, PlanPoint] {
  const by = axes.reduce(
    (sum, { way, value }, i) => ({
      x: sum.x + way.x * ((values[i] ?? value) - value),
      y: sum.y + way.y * ((values[i] ?? value) - value),
    }),
    { x: 0, y: 0 },
  )
  const [from, to] = line
  return [
    { x: from.x + by.x, y: from.y + by.y },
    { x: to.x + by.x, y: to.y + by.y },
  ]
}
