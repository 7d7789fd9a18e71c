/** What the work of sizing is counted in, about 10 microseconds each on the machine that the results were measured on. */
export const EFFORT = {
  /** one way or group of ways taken from those that wait */
  look: 3,
  /** a deck framed and checked, beside its members */
  check: 100,
  member: 3,
  /** a post of a guard or a member of stairs laid */
  addition: 6,
  /** posts of a deck placed */
  place: 3,
  /** a deck framed for what a part of it costs at least, beside its members */
  frame: 150,
  framedMember: 1,
  /** a beam of another depth checked in a frame that is there */
  otherDepth: 100,
  /** a cutting plan begun, its pieces and lengths put in order, and audited */
  plan: 400,
  /** a linear program built, solved once, and each step of an integer one; by rows and columns */
  program: 80,
  programColumn: 0.3,
  solve: 40,
  solveRow: 1.2,
  solveColumn: 0.05,
  integerStep: 600,
  integerRow: 5,
  integerColumn: 0.2,
  /** of a table that boards are filled by */
  cell: 0.00025,
  /** goods counted */
  count: 60,
  /** the same for a frame that is known on other footings */
  otherFootings: 60,
  /** a whole estimate from plans at hand */
  whole: 100,
}

/** Effort of one plan's search: what is not proven by then seldom is soon. */
const MOST_OF_A_PLAN = 35_000

/** Work done so far, and how much may be: it decides where sizing ends, the clock never does. */
export class Effort {
  readonly #first: number
  #limit: number
  #spent = 0
  #onBounds = 0
  #foreseen = 0
  #ofAPlan = MOST_OF_A_PLAN

  constructor(limit: number) {
    this.#first = limit
    this.#limit = limit
  }

  get limit(): number {
    return this.#limit
  }

  /** How much of it one plan's search may take. */
  get ofAPlan(): number {
    return Math.min(this.#ofAPlan, this.left)
  }

  /** So much may be done beyond the limit, no more than `most` from now on, and `ofAPlan` of it for one plan. */
  grant(beyond: number, most = beyond, ofAPlan = most): void {
    this.#limit = Math.min(Math.max(this.#limit, this.#spent) + beyond, this.#spent + most)
    this.#ofAPlan = ofAPlan
  }

  get spent(): number {
    return this.#spent
  }

  get left(): number {
    return Math.max(0, this.#limit - this.#spent)
  }

  /** Bounds have had their half of it, or will need more than that; the rest is for ways. */
  get boundsAreDone(): boolean {
    return Math.max(this.#onBounds, this.#foreseen) * 2 > this.#first
  }

  /** Bounds will take so much from here on, as far as it can be told: what is not to be finished is not begun. */
  foreseeBounds(amount: number): void {
    this.#foreseen = Math.max(this.#foreseen, amount)
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
