/** Numbers in order, three and more that follow each other as a range: `1–3, 7, 8`. */
export function rangesOf(numbers: readonly number[]): string {
  const runs: number[][] = []
  for (const number of [...numbers].sort((a, b) => a - b)) {
    const run = runs.at(-1)
    if (run !== undefined && run.at(-1) === number - 1) run.push(number)
    else runs.push([number])
  }
  return runs.flatMap((run) => (run.length > 2 ? [`${run[0]}–${run.at(-1)}`] : run.map(String))).join(', ')
}
