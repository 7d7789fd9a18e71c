import {
  blocksOf,
  guessColumns,
  type Meaning,
  readDelimited,
  type SheetRow,
} from '../../../core/cut-list/index.ts'

/** Rows shown of a list; enough to see what each column holds. */
const SHOWN = 6
/** Columns shown; a sheet pasted whole may have hundreds of empty ones. */
const WIDEST = 12

export interface Preview {
  readonly rows: readonly SheetRow[]
  /** what each column was found to hold */
  readonly found: readonly Meaning[]
  readonly more: number
  /** pieces and stock stand below each other, each under its own headings */
  readonly blocks: boolean
}

/** The first rows of a list; null where it has none or breaks off from its own form. */
export function previewOf(text: string): Preview | null {
  const sheet = readDelimited(text)
  if (!sheet.ok) return null
  const blocks = blocksOf(sheet.value, 'list')
  const rows = blocks.flatMap((block) => block.rows)
  if (rows.length === 0) return null
  const width = Math.min(WIDEST, Math.max(...rows.map(({ cells }) => cells.length)))
  const found = guessColumns(blocks[0]?.rows ?? [])
  return {
    rows: rows.slice(0, SHOWN),
    found: Array.from({ length: width }, (_, index) => found[index] ?? 'nothing'),
    more: Math.max(0, rows.length - SHOWN),
    blocks: blocks.length > 1,
  }
}
