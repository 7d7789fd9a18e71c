/** What part of a drawing is shown: how many times larger than whole, and which point of its extent is in the middle. */
export interface ViewWindow {
  readonly zoom: number
  /** shares of the extent, 0 to 1 */
  readonly x: number
  readonly y: number
}

export const WHOLE: ViewWindow = { zoom: 1, x: 0.5, y: 0.5 }
/** one press of a key or a button */
export const ZOOM_STEP = 1.25
const MOST = 24
/** a zoom this close to whole is whole */
const NEARLY = 1.001

/** Never smaller than whole, and not larger than what shows a pencil's line. */
export function zoomWithin(zoom: number): number {
  return zoom < NEARLY ? 1 : Math.min(MOST, zoom)
}

/** Within bounds: the middle never leaves the drawing, and what is whole stands in the middle. */
export function windowWithin({ zoom, x, y }: ViewWindow): ViewWindow {
  const within = zoomWithin(zoom)
  if (within === 1) return WHOLE
  const inside = (share: number) => Math.min(1, Math.max(0, share))
  return { zoom: within, x: inside(x), y: inside(y) }
}
