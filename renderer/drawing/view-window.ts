import { type Extent, type Fit, fitInto } from './fit.ts'

/** What part of a drawing is shown: how many times larger than whole, and which point of its extent is in the middle. */
interface Shown {
  readonly zoom: number
  /** shares of the extent */
  readonly x: number
  readonly y: number
}

/** A drawing and the room on the screen, px, that it is shown in; whole it keeps `pad` clear of the room's sides. */
export interface Stage {
  readonly extent: Extent
  readonly width: number
  readonly height: number
  readonly pad: number
}

/** Where the drawing stands on the screen; at zoom 1 it is whole and fills the room. */
export function viewFit({ extent, width, height, pad }: Stage, { zoom, x, y }: Shown): Fit {
  const whole = fitInto(extent, width, height, pad)
  if (zoom === 1) return whole
  const scale = whole.scale * zoom
  return {
    ...whole,
    scale,
    left: width / 2 - x * (extent.x1 - extent.x0) * scale,
    top: height / 2 - y * (extent.y1 - extent.y0) * scale,
  }
}

/** Shown at another zoom, the point of the drawing under a place on the screen staying under it. */
export function zoomedAt(
  stage: Stage,
  shown: Shown,
  zoom: number,
  at: { readonly x: number; readonly y: number },
): Shown {
  const { extent, width, height } = stage
  const before = viewFit(stage, shown)
  const scale = (before.scale / shown.zoom) * zoom
  const along = (at.x - before.left) / before.scale
  const down = (at.y - before.top) / before.scale
  return {
    zoom,
    x: (along + (width / 2 - at.x) / scale) / (extent.x1 - extent.x0),
    y: (down + (height / 2 - at.y) / scale) / (extent.y1 - extent.y0),
  }
}

/** Moved over the screen by so many px. */
export function panned(stage: Stage, shown: Shown, dx: number, dy: number): Shown {
  const { extent } = stage
  const { scale } = viewFit(stage, shown)
  return {
    zoom: shown.zoom,
    x: shown.x - dx / scale / (extent.x1 - extent.x0),
    y: shown.y - dy / scale / (extent.y1 - extent.y0),
  }
}
