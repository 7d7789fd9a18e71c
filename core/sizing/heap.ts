/** Entries by their bound, the least first; of equal bounds the one put in first. */
export class Heap<Entry> {
  readonly #entries: { readonly bound: number; readonly order: number; readonly entry: Entry }[] = []
  #order = 0

  get size(): number {
    return this.#entries.length
  }

  push(bound: number, entry: Entry): void {
    const entries = this.#entries
    entries.push({ bound, order: this.#order, entry })
    this.#order += 1
    let at = entries.length - 1
    while (at > 0) {
      const parent = (at - 1) >> 1
      if (!this.#before(at, parent)) break
      this.#swap(at, parent)
      at = parent
    }
  }

  pop(): { readonly bound: number; readonly entry: Entry } | null {
    const entries = this.#entries
    const [first] = entries
    const last = entries.pop()
    if (first === undefined || last === undefined) return null
    if (entries.length === 0) return first
    entries[0] = last
    let at = 0
    for (;;) {
      let least = at
      for (const child of [2 * at + 1, 2 * at + 2])
        if (child < entries.length && this.#before(child, least)) least = child
      if (least === at) return first
      this.#swap(at, least)
      at = least
    }
  }

  #before(a: number, b: number): boolean {
    const [one, other] = [this.#entries[a], this.#entries[b]]
    if (one === undefined || other === undefined) return false
    return one.bound < other.bound || (one.bound === other.bound && one.order < other.order)
  }

  #swap(a: number, b: number): void {
    const [one, other] = [this.#entries[a], this.#entries[b]]
    if (one === undefined || other === undefined) return
    this.#entries[a] = other
    this.#entries[b] = one
  }
}
