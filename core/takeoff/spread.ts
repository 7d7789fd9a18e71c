/** The fewest of the free places, first and last among them, none farther from the one before it than `most`; null where there are none. */
export function fewest(free: readonly number[], most: number): number | null {
  const last = free.at(-1)
  let at = free[0]
  if (at === undefined || last === undefined || at === last) return null
  let count = 1
  let next = 0
  while (at < last) {
    const from: number = at
    while (next + 1 < free.length && (free[next + 1] ?? 0) - from <= most) next += 1
    const reached = free[next] ?? from
    if (reached === from) return null
    at = reached
    count += 1
  }
  return count
}

/** So many of the free places, first and last among them, nearest to equal distances, none too far apart; null where there are none. */
export function nearEqual(free: readonly number[], count: number, most: number): readonly number[] | null {
  const [first = 0] = free
  const last = free.at(-1) ?? first
  const spaces = count - 1
  // reached[k]: the least cost of a way to the free place k, and the place before it
  let reached: readonly (number | null)[] = free.map((_, k) => (k === 0 ? 0 : null))
  const ways: (readonly number[])[] = []
  for (let i = 1; i <= spaces; i += 1) {
    const ideal = first + (i * (last - first)) / spaces
    const before = reached
    const from: number[] = []
    let low = 0
    reached = free.map((at, k) => {
      while (at - (free[low] ?? at) > most) low += 1
      let [best, bestAt] = [null as number | null, low]
      for (let one = low; one < k; one += 1) {
        const cost = before[one] ?? null
        if (cost !== null && (best === null || cost < best)) [best, bestAt] = [cost, one]
      }
      from.push(bestAt)
      return best === null ? null : best + (at - ideal) ** 2
    })
    ways.push(from)
  }
  let k = free.length - 1
  if ((reached[k] ?? null) === null) return null
  const places = [last]
  for (const from of ways.toReversed()) {
    k = from[k] ?? 0
    places.unshift(free[k] ?? first)
  }
  return places
}
