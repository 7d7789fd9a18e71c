import type { BoardTable, Spot } from './board-table.ts'

/** One row of the table: `multiple` copies of an item taken together, or any number of copies. */
interface Row {
  readonly item: number
  readonly multiple: number
  readonly width: number
  readonly endless: boolean
}

/** What the table is asked for: the best filling of capacity `used` or less, from its rows up to `row`. */
export interface Filling {
  readonly items: number[]
  readonly counts: number[]
}

/**
 * A bounded knapsack over all capacities up to the longest board at once. Rows run from the narrowest item to the
 * widest, so that after each of them the best filling with that item as its widest is at hand. With whole-numbered
 * profits every value is exact.
 */
export class KnapsackTable implements BoardTable {
  readonly capacity: number
  readonly value: Float64Array
  readonly cells: number
  readonly #rows: Row[] = []
  /** rows of item i are #first[i] … #first[i − 1] − 1, items being in descending width */
  readonly #first: Int32Array
  readonly #taken: Uint8Array
  readonly #widths: readonly number[]
  #profits: ArrayLike<number> = []
  #exact = false

  /**
   * @param widths descending
   * @param limits most copies of each in one board
   * @param shared a table of the same capacity and no smaller limits, whose memory is taken over
   */
  constructor(
    widths: readonly number[],
    limits: readonly number[],
    capacity: number,
    shared?: KnapsackTable,
  ) {
    this.capacity = capacity
    this.value = shared?.value ?? new Float64Array(capacity + 1)
    this.#widths = widths
    this.#first = new Int32Array(widths.length + 1)
    for (let item = widths.length - 1; item >= 0; item--) {
      this.#first[item] = this.#rows.length
      const width = widths[item] ?? 1
      const fit = Math.floor(capacity / width)
      let left = Math.min(fit, limits[item] ?? 0)
      if (left >= fit && fit > 1) this.#rows.push({ item, multiple: 1, width, endless: true })
      else {
        for (let multiple = 1; left > 0; multiple *= 2) {
          const copies = Math.min(multiple, left)
          this.#rows.push({ item, multiple: copies, width: copies * width, endless: false })
          left -= copies
        }
      }
    }
    const cells = this.#rows.length * (capacity + 1)
    this.cells = cells
    this.#taken =
      shared !== undefined && shared.#taken.length >= cells ? shared.#taken : new Uint8Array(cells)
  }

  /**
   * Fills the table.
   * @param exact true: value[u] is for a total width of exactly u, −Infinity where none reaches it
   * @param visit called before the rows of each item are applied, narrowest first
   * @param ends where only boards of these capacities are asked about, with or without one more piece of an item as
   * the widest: other widths that no such board can still have below a piece so wide are left as they are
   */
  fill(
    profits: ArrayLike<number>,
    exact: boolean,
    visit?: (item: number) => void,
    ends?: readonly number[],
  ): void {
    const { capacity, value } = this
    this.#profits = profits
    this.#exact = exact
    value.fill(exact ? Number.NEGATIVE_INFINITY : 0)
    value[0] = 0
    const size = capacity + 1
    this.#taken.fill(0, 0, this.#rows.length * size)
    let row = 0
    for (let item = this.#widths.length - 1; item >= 0; item--) {
      const profit = profits[item] ?? 0
      visit?.(item)
      const top = ends === undefined ? capacity : capacity - (this.#widths[item] ?? 0)
      for (; row < this.#rows.length; row++) {
        const entry = this.#rows[row] as Row
        if (entry.item !== item) break
        if (!this.#counts(item)) continue
        const base = row * size
        const { width, multiple } = entry
        if (entry.endless) fillUpwards(value, this.#taken, base, width, profit, width, top)
        for (const end of ends ?? [])
          if (end > top && end >= width)
            fillUpwards(value, this.#taken, base, width, profit * multiple, end, end)
        if (!entry.endless) fillDownwards(value, this.#taken, base, width, profit * multiple, top)
      }
    }
  }

  /** An item worth nothing may still bring a board to the width at which it costs less; elsewhere it is left out. */
  #counts(item: number): boolean {
    return this.#exact || (this.#profits[item] ?? 0) > 0
  }

  valueAt(capacity: number): number {
    return this.value[capacity] as number
  }

  valueBeside(item: number, capacity: number): number {
    const room = capacity - (this.#widths[item] ?? 0)
    return room < 0 ? Number.NEGATIVE_INFINITY : (this.value[room] as number)
  }

  spotAt(capacity: number): Spot {
    return { used: capacity, state: 0 }
  }

  spotBeside(item: number, capacity: number): Spot {
    return { used: capacity - (this.#widths[item] ?? 0), state: 0 }
  }

  traceSpot(widest: number, { used }: Spot): Filling {
    return this.trace(widest, used)
  }

  /** The filling behind value[used] as it stood when `widest` was the last item applied. */
  trace(widest: number, used: number): Filling {
    const counts = new Map<number, number>()
    const size = this.capacity + 1
    let at = used
    let row = (widest === 0 ? this.#rows.length : (this.#first[widest - 1] ?? 0)) - 1
    while (row >= 0 && at > 0) {
      const entry = this.#rows[row] as Row
      if (this.#counts(entry.item) && this.#taken[row * size + at] === 1) {
        counts.set(entry.item, (counts.get(entry.item) ?? 0) + entry.multiple)
        at -= entry.width
        if (entry.endless) continue
      }
      row--
    }
    const items = [...counts.keys()].sort((a, b) => a - b)
    return { items, counts: items.map((item) => counts.get(item) ?? 0) }
  }
}

/** Each width at most once more: from the top, so that what is read has not been written. */
function fillDownwards(
  value: Float64Array,
  taken: Uint8Array,
  base: number,
  width: number,
  profit: number,
  top: number,
): void {
  for (let at = top; at >= width; at--) {
    const with_ = (value[at - width] as number) + profit
    if (with_ > (value[at] as number)) {
      value[at] = with_
      taken[base + at] = 1
    }
  }
}

/** Any number of times: from below, so that what is read may have been written. */
function fillUpwards(
  value: Float64Array,
  taken: Uint8Array,
  base: number,
  width: number,
  profit: number,
  from: number,
  top: number,
): void {
  for (let at = from; at <= top; at++) {
    const with_ = (value[at - width] as number) + profit
    if (with_ > (value[at] as number)) {
      value[at] = with_
      taken[base + at] = 1
    }
  }
}
