/**
 * Solves A x = b for several b at once by Gaussian elimination with partial pivoting. A is changed.
 * Throws where A is singular: a beam without enough supports is a bug of the caller.
 */
export function solveLinear(a: number[][], columns: number[][]): number[][] {
  const n = a.length
  for (let pivot = 0; pivot < n; pivot++) {
    let best = pivot
    for (let row = pivot + 1; row < n; row++) if (at(a, row, pivot) ** 2 > at(a, best, pivot) ** 2) best = row
    swap(a, pivot, best)
    for (const column of columns) swap(column, pivot, best)
    const top = at(a, pivot, pivot)
    if (top === 0) throw new Error('the beam is not held by its supports')
    for (let row = pivot + 1; row < n; row++) {
      const factor = at(a, row, pivot) / top
      if (factor === 0) continue
      const from = a[pivot] ?? []
      const into = a[row] ?? []
      for (let j = pivot; j < n; j++) into[j] = (into[j] ?? 0) - factor * (from[j] ?? 0)
      for (const column of columns) column[row] = (column[row] ?? 0) - factor * (column[pivot] ?? 0)
    }
  }
  return columns.map((column) => substituteBack(a, column))
}

function substituteBack(a: readonly number[][], column: readonly number[]): number[] {
  const n = a.length
  const x = new Array<number>(n).fill(0)
  for (let row = n - 1; row >= 0; row--) {
    let sum = column[row] ?? 0
    for (let j = row + 1; j < n; j++) sum -= at(a, row, j) * (x[j] ?? 0)
    x[row] = sum / at(a, row, row)
  }
  return x
}

function at(a: readonly number[][], row: number, column: number): number {
  return a[row]?.[column] ?? 0
}

function swap<T>(list: T[], i: number, j: number): void {
  const [x, y] = [list[i], list[j]]
  if (i === j || x === undefined || y === undefined) return
  list[i] = y
  list[j] = x
}
