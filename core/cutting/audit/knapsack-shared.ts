import { endsLeft } from './ends-left.ts'
import type { Worth } from './knapsack.ts'

/**
 * Best worth of a board by its room, where what it loses depends on which ends of its pieces find no like one: copy by
 * copy, for every state of the ends. Whole-numbered prices give exact sums.
 */
export function bestWorthShared(
  worths: readonly (Worth & { readonly ends: string })[],
  capacity: number,
  saves: ReadonlyMap<string, number>,
  wider: number,
): (room: number) => number {
  const left = endsLeft([...new Set(worths.map(({ ends }) => ends))], saves, wider)
  const best = Array.from({ length: left.states }, (_, state) =>
    new Float64Array(capacity + 1).fill(state === 0 ? 0 : Number.NEGATIVE_INFINITY),
  )
  /** the least total with which each state is reached; none where it is not */
  const least = new Map([[0, 0]])
  for (const { width, price, most, ends } of worths) {
    const copies = Math.min(most, Math.floor(capacity / width))
    for (let copy = 0; copy < copies; copy++) {
      // one copy at a time: what it is laid beside has none of this copy yet
      const before = [...least].map(([state, total]) => ({
        total,
        from: Float64Array.from(best[state] ?? []),
        into: left.step(state, ends),
      }))
      for (const { total, from, into } of before) {
        const to = best[into]
        if (to === undefined || total + width > capacity) continue
        least.set(into, Math.min(total + width, least.get(into) ?? capacity))
        for (let used = total + width; used <= capacity; used++) {
          const worth = (from[used - width] as number) + price
          if (worth > (to[used] as number)) to[used] = worth
        }
      }
    }
  }
  return (room) =>
    best.reduce((most, table, state) => {
      const used = room - left.lost(state)
      return used < 0 ? most : Math.max(most, table[used] ?? Number.NEGATIVE_INFINITY)
    }, 0)
}
