import { changesBetween } from './cost-parts.ts'
import type { CompareRow } from './types.ts'

/** Rows by width, each with what changed against the next narrower one that has a price. */
export function explainRows(rows: readonly CompareRow[]): readonly CompareRow[] {
  let before: CompareRow | null = null
  return [...rows]
    .sort((a, b) => a.width - b.width)
    .map((row) => {
      if (row.fault !== null) return row
      const changes = before === null ? [] : changesBetween(before.parts, row.parts)
      before = row
      return { ...row, changes }
    })
}
