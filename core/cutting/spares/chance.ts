import type { SpareLength } from './types.ts'

/** Chance of each number of unusable boards among `boards`, each unusable with chance `unusable` on its own. */
export function unusableAmong(boards: number, unusable: number): Float64Array {
  const chance = new Float64Array(boards + 1)
  chance[0] = 1
  for (let board = 1; board <= boards; board++) {
    for (let bad = board; bad > 0; bad--) {
      chance[bad] = (chance[bad] ?? 0) * (1 - unusable) + (chance[bad - 1] ?? 0) * unusable
    }
    chance[0] = (chance[0] ?? 0) * (1 - unusable)
  }
  return chance
}

/**
 * One length further down: `surplus[w]` is the chance that w good boards are over among the longer ones and none was
 * lacking so far. A good board of this length or a longer one that is over can stand in here; where none is left the
 * order falls short, and that chance is dropped.
 */
export function afterLength(surplus: Float64Array, spares: number, unusable: Float64Array): Float64Array {
  const next = new Float64Array(surplus.length + spares)
  for (let over = 0; over < surplus.length; over++) {
    const chance = surplus[over] ?? 0
    if (chance === 0) continue
    for (let bad = 0; bad < unusable.length && bad <= over + spares; bad++) {
      next[over + spares - bad] = (next[over + spares - bad] ?? 0) + chance * (unusable[bad] ?? 0)
    }
  }
  return next
}

export function mass(surplus: Float64Array): number {
  let sum = 0
  for (let over = surplus.length - 1; over >= 0; over--) sum += surplus[over] ?? 0
  return sum
}

/** Lengths from the longest; of equal ones the order given. */
export function longestFirst(lengths: readonly SpareLength[]): SpareLength[] {
  return [...lengths].sort((a, b) => b.length - a.length)
}
