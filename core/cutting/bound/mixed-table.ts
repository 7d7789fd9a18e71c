import type { Mix } from '../mitres/mix.ts'
import type { BoardTable, Spot } from './board-table.ts'
import type { Filling } from './knapsack-table.ts'

/** One row: `multiple` copies of an item taken together or not at all; a state goes over into `next`. */
interface Row {
  readonly item: number
  readonly multiple: number
  readonly width: number
  readonly next: Int32Array
}

/**
 * `KnapsackTable` where ends of pieces share cuts: a column for each state of the mix, every count of an item by powers
 * of two. With whole-numbered profits every value is exact.
 */
export class MixedTable implements BoardTable {
  /** value[state × (capacity + 1) + used] */
  readonly value: Float64Array
  readonly cells: number
  readonly #capacity: number
  readonly #mix: Mix
  readonly #widths: readonly number[]
  readonly #kinds: readonly number[]
  readonly #rows: Row[] = []
  readonly #first: Int32Array
  /** 0: not taken; else the state before, and one; kept up only for the states that a row reaches, see `#reached` */
  readonly #taken: Uint8Array
  /** a bit for each state, one mask for each row */
  readonly #reached: Uint32Array
  /** the shortest use of a board in each state; beyond its capacity where there is none */
  readonly #least: Int32Array
  /** what states hold, each once */
  readonly #holds: readonly number[]
  #profits: ArrayLike<number> = []

  /**
   * @param widths descending
   * @param kinds of the mix, one for each item
   * @param limits most copies of each in one board
   * @param shared a table of the same capacity and mix and no smaller limits, whose memory is taken over
   */
  constructor(
    widths: readonly number[],
    kinds: readonly number[],
    limits: readonly number[],
    capacity: number,
    mix: Mix,
    shared?: MixedTable,
  ) {
    this.#capacity = capacity
    this.#mix = mix
    this.#widths = widths
    this.#kinds = kinds
    this.#first = new Int32Array(widths.length + 1)
    for (let item = widths.length - 1; item >= 0; item--) {
      this.#first[item] = this.#rows.length
      const width = widths[item] ?? 1
      let left = Math.min(Math.floor(capacity / width), limits[item] ?? 0)
      for (let multiple = 1; left > 0; multiple *= 2) {
        const copies = Math.min(multiple, left)
        this.#rows.push({ item, multiple: copies, width: copies * width, next: this.#nextOf(item, copies) })
        left -= copies
      }
    }
    const columns = mix.states * (capacity + 1)
    const cells = this.#rows.length * columns
    this.cells = cells
    this.value = shared?.value ?? new Float64Array(columns)
    this.#taken =
      shared !== undefined && shared.#taken.length >= cells ? shared.#taken : new Uint8Array(cells)
    this.#reached = new Uint32Array(this.#rows.length)
    this.#least = new Int32Array(mix.states)
    this.#holds = [...new Set(mix.held)]
  }

  #nextOf(item: number, copies: number): Int32Array {
    const { after, states, kinds } = this.#mix
    return Int32Array.from({ length: states }, (_, state) => {
      let reached = state
      for (let copy = 0; copy < copies; copy++)
        reached = after[reached * kinds.length + (this.#kinds[item] ?? 0)] ?? 0
      return reached
    })
  }

  fill(
    profits: ArrayLike<number>,
    exact: boolean,
    visit?: (item: number) => void,
    ends?: readonly number[],
  ): void {
    if (exact) throw new RangeError('boards whose cost depends on their use are planned without shared cuts')
    const { value } = this
    const size = this.#capacity + 1
    this.#profits = profits
    value.fill(Number.NEGATIVE_INFINITY)
    value.fill(0, 0, size)
    this.#least.fill(size)
    this.#least[0] = 0
    this.#reached.fill(0)
    const full = (ends ?? []).flatMap((end) => this.#holds.map((held) => end - held))
    let row = 0
    for (let item = this.#widths.length - 1; item >= 0; item--) {
      visit?.(item)
      // no board asked about can be fuller than this below a further piece as wide
      const top = ends === undefined ? this.#capacity : this.#capacity - (this.#widths[item] ?? 0)
      const above = full.filter((at) => at > top)
      for (; row < this.#rows.length && this.#rows[row]?.item === item; row++)
        if ((profits[item] ?? 0) > 0) this.#apply(row, top, above)
    }
  }

  /** Lays the row's copies on boards used up to `top`, and to those uses of `above`. */
  #apply(row: number, top: number, above: readonly number[]): void {
    const { width, multiple, item, next } = this.#rows[row] as Row
    const size = this.#capacity + 1
    const profit = (this.#profits[item] ?? 0) * multiple
    const first = this.#least.map((use) => use + width)
    const from = (state: number): number => first[state] as number
    const states = [...first.keys()].filter((state) => from(state) < size)
    for (const state of states) this.#reach(row, next[state] as number, from(state))
    for (const state of states)
      for (const at of above) if (at >= from(state)) this.#stretch(row, state, at, at, profit)
    // stretch by stretch of the board, none longer than what is laid on it: so nothing is read that this row has written
    for (let to = top; to >= width; to -= width)
      for (const state of states) this.#stretch(row, state, Math.max(from(state), to - width + 1), to, profit)
  }

  /** Notes that a row brings boards into a state, the shortest with this use. */
  #reach(row: number, state: number, use: number): void {
    const size = this.#capacity + 1
    this.#least[state] = Math.min(this.#least[state] as number, use)
    const bits = this.#reached[row] as number
    if ((bits & (1 << state)) !== 0) return
    this.#reached[row] = bits | (1 << state)
    const column = (row * this.#mix.states + state) * size
    this.#taken.fill(0, column, column + size)
  }

  #stretch(row: number, state: number, from: number, to: number, profit: number): void {
    const { value } = this
    const taken = this.#taken
    const { width, next } = this.#rows[row] as Row
    const size = this.#capacity + 1
    const before = state * size - width
    const after = (next[state] as number) * size
    const mark = row * this.#mix.states * size + after
    for (let at = to; at >= from; at--) {
      const sum = (value[before + at] as number) + profit
      if (sum > (value[after + at] as number)) {
        value[after + at] = sum
        taken[mark + at] = state + 1
      }
    }
  }

  #spot(capacity: number, heldOf: (state: number) => number): Spot & { readonly worth: number } {
    const size = this.#capacity + 1
    let best = { used: 0, state: 0, worth: Number.NEGATIVE_INFINITY }
    for (let state = 0; state < this.#mix.states; state++) {
      const used = capacity - heldOf(state)
      if (used < 0) continue
      const worth = this.value[state * size + used] as number
      if (worth > best.worth) best = { used, state, worth }
    }
    return best
  }

  #at(capacity: number): Spot & { readonly worth: number } {
    return this.#spot(capacity, (state) => this.#mix.held[state] ?? 0)
  }

  #beside(item: number, capacity: number): Spot & { readonly worth: number } {
    const { after, kinds, held } = this.#mix
    const kind = this.#kinds[item] ?? 0
    const room = capacity - (this.#widths[item] ?? 0)
    return this.#spot(room, (state) => held[after[state * kinds.length + kind] ?? 0] ?? 0)
  }

  valueAt(capacity: number): number {
    return this.#at(capacity).worth
  }

  valueBeside(item: number, capacity: number): number {
    return this.#beside(item, capacity).worth
  }

  spotAt(capacity: number): Spot {
    return this.#at(capacity)
  }

  spotBeside(item: number, capacity: number): Spot {
    return this.#beside(item, capacity)
  }

  traceSpot(widest: number, { used, state }: Spot): Filling {
    const counts = new Map<number, number>()
    const size = this.#capacity + 1
    const { states } = this.#mix
    let at = used
    let now = state
    for (let row = (widest === 0 ? this.#rows.length : (this.#first[widest - 1] ?? 0)) - 1; row >= 0; row--) {
      const { item, multiple, width } = this.#rows[row] as Row
      if (((this.#reached[row] ?? 0) & (1 << now)) === 0) continue
      const before = this.#taken[(row * states + now) * size + at] ?? 0
      if (before === 0) continue
      counts.set(item, (counts.get(item) ?? 0) + multiple)
      at -= width
      now = before - 1
    }
    const items = [...counts.keys()].sort((a, b) => a - b)
    return { items, counts: items.map((item) => counts.get(item) ?? 0) }
  }
}
