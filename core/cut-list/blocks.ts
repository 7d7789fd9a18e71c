import type { SheetRow } from './delimited.ts'
import type { Source } from './types.ts'

/** What a row stands for. */
export type RowKind = 'piece' | 'stock' | 'offcut'

/** Rows under one heading. */
export interface Block {
  readonly kind: RowKind
  readonly rows: readonly SheetRow[]
}

const KINDS: ReadonlyMap<string, RowKind> = new Map([
  ...(['piece', 'pieces', 'cut', 'cuts', 'part', 'parts', 'cut list'] as const).map(
    (word): [string, RowKind] => [word, 'piece'],
  ),
  ...(['stock', 'board', 'boards', 'buy', 'on sale'] as const).map((word): [string, RowKind] => [
    word,
    'stock',
  ]),
  ...(['offcut', 'offcuts', 'on hand', 'have'] as const).map((word): [string, RowKind] => [word, 'offcut']),
])

/** What a word such as "stock" or "Pieces:" says of a row or a block, or null. */
export function readKind(text: string): RowKind | null {
  return KINDS.get(text.toLowerCase().replace(/[:.]$/, '').trim()) ?? null
}

/** Splits a sheet where a row holds nothing but "Pieces", "Stock" or "Offcuts"; blank rows are left out. */
export function blocksOf(rows: readonly SheetRow[], source: Source): readonly Block[] {
  const blocks: { kind: RowKind; rows: SheetRow[] }[] = [
    { kind: source === 'stock' ? 'stock' : 'piece', rows: [] },
  ]
  for (const row of rows) {
    const filled = row.cells.filter((cell) => cell !== '')
    const kind = filled.length === 1 ? readKind(filled[0] ?? '') : null
    if (kind !== null) blocks.push({ kind, rows: [] })
    else if (filled.length > 0) blocks.at(-1)?.rows.push(row)
  }
  return blocks.filter((block) => block.rows.length > 0)
}
