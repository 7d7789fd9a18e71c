/** From ticks of a drawing to points on its page. */
export type ToPage = (at: number) => number

/** A part of a page that writing takes up, points. */
export interface Room {
  readonly x0: number
  readonly x1: number
  readonly y0: number
  readonly y1: number
}

/** Whether two parts of a page lie on one another. */
export function meet(a: Room, b: Room): boolean {
  return a.x0 < b.x1 && a.x1 > b.x0 && a.y0 < b.y1 && a.y1 > b.y0
}
