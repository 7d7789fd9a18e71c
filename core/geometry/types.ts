/** A place on a plane, in ticks; off the grid where a line meets another at an angle. */
export interface PlanePoint {
  readonly x: number
  readonly y: number
}

/** Corners in order; the last is joined to the first. */
export type Polygon = readonly PlanePoint[]

export interface Segment {
  readonly from: PlanePoint
  readonly to: PlanePoint
}
