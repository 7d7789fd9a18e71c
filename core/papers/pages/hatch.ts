/** Slanting lines that fill a box, `apart` points from one to the next, each cut at the box's edges. */
export function hatch(
  x: number,
  y: number,
  w: number,
  h: number,
  apart: number,
): readonly (readonly [number, number, number, number])[] {
  const step = apart * Math.SQRT2
  const count = Math.floor((w + h) / step)
  return Array.from({ length: count }, (_, i) => {
    const at = (i + 1) * step
    const [fromX, fromY] = at <= h ? [0, at] : [at - h, h]
    const [toX, toY] = at <= w ? [at, 0] : [w, at - w]
    return [x + fromX, y + fromY, x + toX, y + toY] as const
  })
}
