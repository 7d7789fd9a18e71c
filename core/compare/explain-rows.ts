import { changesBetween } from './cost-parts.ts'
import type { CompareRow } from './types.ts'

/**
 * Rows by width, each with what changed against the next narrower one that has a price. Of several rows of one width
 * the last counts: it is the one with the proof.
 */
export function explainRows(rows: readonly CompareRow[]): readonly CompareRow[] {
  let before: CompareRow | null = null
  return [...new Map(rows.map((row) => [row.width, row])).values()]
    .sort((a, b) => a.width - b.width)
    .map((row) => {
      if (row.fault !== null) return row
      const changes = before === null ? [] : changesBetween(before.parts, row.parts)
      before = row
      return { ...row, changes }
    })
}
