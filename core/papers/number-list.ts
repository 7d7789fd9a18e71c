/** Numbers in order, three or more in a row as "3 to 7": 1, 3 to 7, 9. */
export function numberList(numbers: readonly number[]): string {
  const runs: [number, number][] = []
  for (const n of [...numbers].sort((a, b) => a - b)) {
    const last = runs.at(-1)
    if (last !== undefined && n === last[1] + 1) last[1] = n
    else runs.push([n, n])
  }
  return runs
    .flatMap(([from, to]) =>
      to - from > 1 ? [`${from} to ${to}`] : from === to ? [`${from}`] : [`${from}`, `${to}`],
    )
    .join(', ')
}
