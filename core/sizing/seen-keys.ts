/** A thing by two whole numbers. */
export type Key = readonly [place: number, parts: number]

/** Keys that were seen, family by family. */
export class SeenKeys<Family> {
  readonly #families = new Map<Family, Map<number, Set<number>>>()

  /** Whether anything of a family was seen. */
  holds(family: Family): boolean {
    return this.#families.has(family)
  }

  has(family: Family, [place, parts]: Key): boolean {
    return this.#families.get(family)?.get(place)?.has(parts) === true
  }

  add(family: Family, [place, parts]: Key): void {
    const places = this.#families.get(family) ?? new Map<number, Set<number>>()
    this.#families.set(family, places)
    const seen = places.get(place) ?? new Set<number>()
    places.set(place, seen)
    seen.add(parts)
  }
}
