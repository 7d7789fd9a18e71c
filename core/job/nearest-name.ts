/** The known name most like the written one, if it is like enough to be meant; ties go to the earlier. */
export function nearestName(written: string, known: readonly string[]): string | null {
  const lower = written.slice(0, 60).toLowerCase()
  let nearest: string | null = null
  // a third of the letters may differ; in a very short name one
  let least = (lower.length <= 3 ? 1 : Math.max(2, Math.floor(lower.length / 3))) + 1
  for (const name of known) {
    const distance = editDistance(lower, name.toLowerCase())
    if (distance < least) {
      least = distance
      nearest = name
    }
  }
  return nearest
}

/** Fewest letters to add, drop, change or swap with their neighbour (optimal string alignment). */
export function editDistance(a: string, b: string): number {
  let beforeLast: number[] = []
  let last = Array.from({ length: b.length + 1 }, (_, j) => j)
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i]
    for (let j = 1; j <= b.length; j += 1) {
      const same = a[i - 1] === b[j - 1]
      let least = Math.min(at(last, j) + 1, at(row, j - 1) + 1, at(last, j - 1) + (same ? 0 : 1))
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        least = Math.min(least, at(beforeLast, j - 2) + 1)
      row.push(least)
    }
    beforeLast = last
    last = row
  }
  return at(last, b.length)
}

function at(row: readonly number[], j: number): number {
  const value = row[j]
  if (value === undefined) throw new RangeError('outside the row')
  return value
}
