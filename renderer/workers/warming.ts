/** Runs after which the engine has compiled what a design takes; until then a large deck takes several times as long. */
const RUNS = 5
/** A deck so much larger than any before goes ways that none went yet: guards, stairs, levels. */
const LARGER = 1.5

/**
 * Repeats the first design of a deck while nobody asks for another, so that its first edit is as quick as its tenth.
 * @param later runs what it is given after whatever is asked for by then
 */
export class Warming {
  readonly #later: (run: () => void) => void
  #largest = 0
  #left = 0
  #latest: (() => void) | null = null
  #waits = false

  constructor(later: (run: () => void) => void) {
    this.#later = later
  }

  /** @param size of the design that was just made @param again makes it once more */
  made(size: number, again: () => void): void {
    if (size > LARGER * this.#largest) {
      this.#largest = size
      this.#left = RUNS
    }
    this.#latest = again
    this.#goOn()
  }

  #goOn(): void {
    if (this.#left === 0 || this.#waits) return
    this.#waits = true
    this.#later(() => {
      this.#waits = false
      this.#left -= 1
      this.#latest?.()
      this.#goOn()
    })
  }
}
