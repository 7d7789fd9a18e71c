/**
 * Pull on the upper fastener of a guard post, lb, by statics: P (h + t) / arm + P, the post turning about the
 * place below that holds its foot. AWC DCA 6 asks for hold-downs of 1,800 lb at least.
 * @param load P at the top of the guard, lb; 200 by IRC 2021 Table R301.5
 * @param height h, from the deck's surface to the load, in
 * @param below t, from the deck's surface to the upper fastener, in
 * @param arm between the upper fastener and what holds the foot, in
 */
export function guardPostPull(load: number, height: number, below: number, arm: number): number {
  return (load * (height + below)) / arm + load
}

/** Moment at the deck's surface of a guard post, in-lb: P h. */
export function guardPostMoment(load: number, height: number): number {
  return load * height
}
