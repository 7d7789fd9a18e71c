import type { CompareRow } from '../../core/compare/index.ts'
import { compareTable } from '../../core/papers/index.ts'
import { type Cents, printLength, printMoneyChange } from '../../core/units/index.ts'
import { textTable, wrap } from './text-table.ts'

const LABEL_WIDTH = 12
const INDENT = ' '.repeat(2 + LABEL_WIDTH)
const WIDTH = 110 - INDENT.length

/** Widths side by side, and below them what made each dearer or cheaper than the one before. */
export function compareReport(rows: readonly CompareRow[]): string {
  const table = compareTable(rows)
  const figures = { ...table, columns: table.columns.filter(({ key }) => key !== 'why') }
  const reasons = rows.flatMap((row) => {
    const words = row.fault ?? row.changes.slice(0, 4).map(changeWords).join('; ')
    if (words === '') return []
    const [first = '', ...more] = wrap(words, WIDTH)
    return [
      `  ${printLength(row.width).padStart(LABEL_WIDTH - 2)}  ${first}`,
      ...more.map((line) => INDENT + line),
    ]
  })
  const why =
    reasons.length === 0 ? '' : `\nWhat makes each differ from the width before\n${reasons.join('\n')}\n`
  return textTable(figures) + why
}

function changeWords({ label, change }: { readonly label: string; readonly change: Cents }): string {
  return `${label} ${printMoneyChange(change)}`
}
