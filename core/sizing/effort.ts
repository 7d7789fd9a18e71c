/** What the work of sizing is counted in, about 10 microseconds each on the machine that the results were measured on. */
export const EFFORT = {
  /** one way or group of ways taken from those that wait */
  look: 3,
  /** a deck framed and checked, beside its members */
  check: 100,
  member: 3,
  /** posts of a deck placed */
  place: 2,
  /** a cutting plan's search going on for another step */
  planStep: 250,
  /** goods counted, and a whole estimate from plans at hand */
  count: 100,
}

/** Work done so far, and how much may be: it decides where sizing ends, the clock never does. */
export class Effort {
  readonly limit: number
  #spent = 0
  #onBounds = 0

  constructor(limit: number) {
    this.limit = limit
  }

  get spent(): number {
    return this.#spent
  }

  get left(): number {
    return Math.max(0, this.limit - this.#spent)
  }

  /** Bounds have had their half of it; the rest is for ways. */
  get boundsAreDone(): boolean {
    return this.#onBounds * 2 > this.limit
  }

  /** Work on bounds, beside all other. */
  addToBounds(amount: number): void {
    this.#onBounds += amount
    this.#spent += amount
  }

  add(amount: number): void {
    this.#spent += amount
  }
}
