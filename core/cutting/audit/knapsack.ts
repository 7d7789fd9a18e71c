/** A cut width (length + kerf), what it is worth, and how many of it one board can use. */
export interface Worth {
  readonly width: number
  readonly price: number
  readonly most: number
}

/**
 * Best worth for every total width from 0 to `capacity`, each width used at most `most` times: for each remainder
 * of the width a sliding maximum over the last `most` copies. Whole-numbered prices give exact sums.
 * @param exact true: −Infinity where no filling has just that total; false: totals up to it count
 */
export function bestWorth(worths: readonly Worth[], capacity: number, exact: boolean): Float64Array {
  let best = new Float64Array(capacity + 1).fill(exact ? Number.NEGATIVE_INFINITY : 0)
  best[0] = 0
  for (const { width, price, most } of worths) {
    if (most <= 0 || width > capacity) continue
    const next = Float64Array.from(best)
    for (let rest = 0; rest < width && rest + width <= capacity; rest++)
      slide(best, next, rest, width, price, most)
    best = next
  }
  return best
}

function slide(
  best: Float64Array,
  next: Float64Array,
  rest: number,
  width: number,
  price: number,
  most: number,
): void {
  const queue: number[] = []
  let head = 0
  const level = (step: number): number => (best[rest + step * width] ?? 0) - step * price
  for (let step = 0; rest + step * width < best.length; step++) {
    const now = level(step)
    while (queue.length > head && level(queue[queue.length - 1] ?? 0) <= now) queue.pop()
    queue.push(step)
    if ((queue[head] ?? 0) < step - most) head++
    next[rest + step * width] = level(queue[head] ?? 0) + step * price
  }
}
