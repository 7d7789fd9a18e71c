import type { Primitive } from '../types.ts'
import { meet, type Room, type ToPage } from './rooms.ts'

/** Across and down, points. */
type Slide = readonly [number, number]

/** So far what is written may slide out of a crowd, and in what steps; points. */
const MOST = 22
const STEP = 2
/** A shape is long where one side is so many times the other. */
const LONG = 3

/** The first slide, none at all before all others, by which a room lies clear of those taken; null where none does. */
export function clearBy(room: Room, taken: readonly Room[], slides: readonly Slide[]): Slide | null {
  const near = taken.filter((other) =>
    meet(
      { x0: room.x0 - MOST * 2, x1: room.x1 + MOST * 2, y0: room.y0 - MOST * 2, y1: room.y1 + MOST * 2 },
      other,
    ),
  )
  const found = ([[0, 0], ...slides] as const).find(([dx, dy]) => {
    const moved = { x0: room.x0 + dx, x1: room.x1 + dx, y0: room.y0 + dy, y1: room.y1 + dy }
    return !near.some((other) => meet(moved, other))
  })
  return found ?? null
}

/** Nearest first, to either side along one axis. */
export function slidesAlong(axis: 'x' | 'y', most: number): readonly Slide[] {
  return steps(most).flatMap((far): readonly Slide[] =>
    axis === 'x'
      ? [
          [far, 0],
          [-far, 0],
        ]
      : [
          [0, far],
          [0, -far],
        ],
  )
}

/**
 * Where a mark may slide: along the board that it names, never off it onto another, and of anything else a little to all
 * sides.
 */
export function slidesOf(
  { id }: Primitive,
  all: readonly Primitive[],
  toX: ToPage,
  toY: ToPage,
): readonly Slide[] {
  const shape = all.find((one) => one.id === id && (one.kind === 'rect' || one.kind === 'polygon'))
  const [wide, high] = shape === undefined ? [0, 0] : extentOf(shape, toX, toY)
  if (wide > LONG * high) return slidesAlong('x', Math.min(MOST, wide / 2))
  if (high > LONG * wide) return slidesAlong('y', Math.min(MOST, high / 2))
  return steps(MOST).flatMap((far): readonly Slide[] => [
    [0, far],
    [0, -far],
    [far, 0],
    [-far, 0],
    [far, far],
    [-far, far],
    [far, -far],
    [-far, -far],
  ])
}

function extentOf(shape: Primitive, toX: ToPage, toY: ToPage): readonly [number, number] {
  if (shape.kind === 'rect')
    return [toX(shape.x + shape.w) - toX(shape.x), toY(shape.y + shape.h) - toY(shape.y)]
  if (shape.kind !== 'polygon') return [0, 0]
  const [xs, ys] = [shape.points.map(({ x }) => toX(x)), shape.points.map(({ y }) => toY(y))]
  return [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)]
}

function steps(most: number): readonly number[] {
  return Array.from({ length: Math.floor(most / STEP) }, (_, i) => (i + 1) * STEP)
}
