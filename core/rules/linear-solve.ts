/**
 * Solves A x = b for several b at once by Gaussian elimination. A is changed. A is symmetric and positive definite, as the
 * stiffness of a beam that is held is: every pivot is greater than nothing, and rows need no exchange. Throws where one is
 * not: a beam without enough supports is a bug of the caller.
 */
export function solveLinear(a: number[][], columns: number[][]): number[][] {
  const n = a.length
  for (let pivot = 0; pivot < n; pivot++) {
    const top = at(a, pivot, pivot)
    if (!(top > 0)) throw new Error('the beam is not held by its supports')
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
