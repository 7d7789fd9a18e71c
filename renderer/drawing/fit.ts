/** Where a drawing in ticks stands on the screen, in pixels: x' = left + (x − x0) · scale. */
export interface Fit {
  /** pixels per tick */
  readonly scale: number
  readonly left: number
  readonly top: number
  readonly x0: number
  readonly y0: number
}

export interface Extent {
  readonly x0: number
  readonly y0: number
  readonly x1: number
  readonly y1: number
}

/** The largest scale at which the whole extent fits into the room, centred. */
export function fitInto(extent: Extent, width: number, height: number, pad: number): Fit {
  const w = Math.max(1, extent.x1 - extent.x0)
  const h = Math.max(1, extent.y1 - extent.y0)
  const scale = Math.max(0, Math.min((width - 2 * pad) / w, (height - 2 * pad) / h))
  return { scale, left: (width - w * scale) / 2, top: (height - h * scale) / 2, x0: extent.x0, y0: extent.y0 }
}

export function toX(fit: Fit, x: number): number {
  return fit.left + (x - fit.x0) * fit.scale
}

export function toY(fit: Fit, y: number): number {
  return fit.top + (y - fit.y0) * fit.scale
}
