import { Clipper, FillRule } from 'clipper2-ts'
import type { Polygon } from './types.ts'

/** Clipping is done on a grid this much finer than a tick, so that corners off the grid keep their place. */
const FINER = 1024

type Paths = ReturnType<typeof Clipper.intersect>

function toPaths(polygons: readonly Polygon[]): Paths {
  return polygons.map((polygon) =>
    polygon.map(({ x, y }) => ({ x: Math.round(x * FINER), y: Math.round(y * FINER) })),
  )
}

function fromPaths(paths: Paths): readonly Polygon[] {
  return paths.map((path) => path.map(({ x, y }) => ({ x: x / FINER, y: y / FINER })))
}

/** What lies in both. Pieces have positive area, holes in them negative. */
export function common(a: readonly Polygon[], b: readonly Polygon[]): readonly Polygon[] {
  return fromPaths(Clipper.intersect(toPaths(a), toPaths(b), FillRule.NonZero))
}

/** What lies in the first and not in the second. */
export function without(a: readonly Polygon[], b: readonly Polygon[]): readonly Polygon[] {
  return fromPaths(Clipper.difference(toPaths(a), toPaths(b), FillRule.NonZero))
}
