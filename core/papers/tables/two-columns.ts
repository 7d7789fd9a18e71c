import type { PaperTable } from '../types.ts'

/** What it is, and its sum. */
export function twoColumns(
  id: string,
  title: string,
  rows: readonly { readonly what: string; readonly amount: string }[],
): PaperTable {
  return {
    id,
    title,
    columns: [
      { key: 'what', label: 'What', align: 'left' },
      { key: 'amount', label: 'Amount', align: 'right' },
    ],
    rows,
  }
}
