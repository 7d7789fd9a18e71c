import type { CodeTable, Confidence, Source, TableAxis, TableBlock, TableEntry } from '../data/index.ts'

export interface TableQuery {
  /** one value for each block axis, in their order */
  readonly at: readonly TableEntry[]
  readonly row: TableEntry
  readonly column: TableEntry
}

/** What a table says: the row and column used, whether they are exact or taken to the safe side, or that nothing covers it. */
export type TableLookup = {
  /** the table has a page for what was asked, whose rows can be relied on: another row of it may cover what this does not */
  readonly paged: boolean
} & (
  | {
      readonly kind: 'row'
      /** in the table's unit; null: the table says "not permitted" */
      readonly value: number | null
      readonly at: readonly TableEntry[]
      readonly row: TableEntry
      readonly column: TableEntry
      /** every axis was met exactly */
      readonly exact: boolean
      readonly source: Source
      readonly sentence: string
    }
  | { readonly kind: 'outside'; readonly source: Source | null; readonly sentence: string }
)

interface Taken {
  /** candidates: one, or the two neighbours */
  readonly entries: readonly TableEntry[]
  readonly asked: TableEntry
}

/** Slack for demands that were computed: far below a tick, far above rounding noise. */
const SLACK = 1e-9

/**
 * Looks a cell up, each axis to its own safe side, without interpolation.
 * Beyond the far end of an axis, or where a page or row is missing, the answer is "outside".
 */
export function lookUpRow(table: CodeTable, query: TableQuery): TableLookup {
  const pages: Taken[] = []
  for (const [i, axis] of table.blockAxes.entries()) {
    const asked = query.at[i] ?? ''
    const page = take(axis, asked)
    if (page === null) return outside(table, axis, asked, null)
    pages.push(page)
  }
  const wanted = pages.map((page) => page.entries[0] ?? '')
  const block = table.blocks.find((one) => one.at.every((entry, i) => entry === wanted[i]))
  if (block === undefined) {
    const sentence = `${table.title} lists nothing for ${table.blockAxes.map((axis, i) => say(axis, wanted[i] ?? '')).join(', ')}`
    return { kind: 'outside', paged: false, source: null, sentence }
  }
  const row = take(table.rowAxis, query.row)
  if (row === null) return outside(table, table.rowAxis, query.row, block)
  const column = take(table.columnAxis, query.column)
  if (column === null) return outside(table, table.columnAxis, query.column, block)
  return leastCell(table, block, pages, row, column)
}

function leastCell(
  table: CodeTable,
  block: TableBlock,
  pages: readonly Taken[],
  row: Taken,
  column: Taken,
): TableLookup {
  let best: { value: number | null; row: TableEntry; column: TableEntry } | null = null
  for (const rowEntry of row.entries) {
    const cells = block.rows[String(rowEntry)]
    if (cells === undefined) return outside(table, table.rowAxis, row.asked, block)
    for (const columnEntry of column.entries) {
      const value = cells[table.columnAxis.entries.indexOf(columnEntry)]
      if (value === undefined) return outside(table, table.columnAxis, column.asked, block)
      if (best === null || lesser(value, best.value)) best = { value, row: rowEntry, column: columnEntry }
    }
  }
  if (best === null) return outside(table, table.rowAxis, row.asked, block)
  const found = best
  const doubt = block.doubts?.find((one) => one.row === found.row && one.column === found.column)
  const parts = [
    ...table.blockAxes.map((axis, i) => tell(axis, block.at[i] ?? '', '', pages[i])),
    tell(table.rowAxis, found.row, ' row', row),
    tell(table.columnAxis, found.column, ' column', column),
  ]
  return {
    kind: 'row',
    paged: isRow(block.source.confidence),
    ...found,
    at: block.at,
    exact: [...pages, row, column].every((taken) => taken.entries[0] === taken.asked),
    source: doubt?.source ?? block.source,
    sentence: parts.join(', '),
  }
}

/** "Not permitted" is less than any number. */
function lesser(a: number | null, b: number | null): boolean {
  if (b === null) return false
  return a === null || a < b
}

function take(axis: TableAxis, asked: TableEntry): Taken | null {
  if (axis.entries.includes(asked)) return { entries: [asked], asked }
  if (axis.safeSide === 'exact' || typeof asked !== 'number' || !Number.isFinite(asked)) return null
  const numbers = axis.entries.filter((entry) => typeof entry === 'number')
  const met = numbers.find((entry) => Math.abs(entry - asked) <= SLACK * Math.max(1, Math.abs(entry)))
  if (met !== undefined) return { entries: [met], asked: met }
  const above = numbers.find((entry) => entry > asked)
  const below = numbers.findLast((entry) => entry < asked)
  if (axis.safeSide === 'down') return below === undefined ? null : { entries: [below], asked }
  if (above === undefined) return null
  if (axis.safeSide === 'up' || below === undefined) return { entries: [above], asked }
  return { entries: [below, above], asked }
}

function say(axis: TableAxis, entry: TableEntry): string {
  if (typeof entry === 'string') return axis.labels?.[entry] ?? entry
  return `${axis.name} ${Number(entry.toFixed(2))}${axis.unit === '' ? '' : ` ${axis.unit}`}`
}

/** As one reads an entry out: "2x10 row", "live load 40 psf (taken up from 33.33)". */
function tell(axis: TableAxis, used: TableEntry, part: string, taken: Taken | undefined): string {
  const read = `${say(axis, used)}${part}`
  if (
    taken === undefined ||
    typeof taken.asked !== 'number' ||
    typeof used !== 'number' ||
    taken.asked === used
  ) {
    return read
  }
  const how =
    taken.entries.length > 1
      ? 'the lesser neighbour of'
      : used > taken.asked
        ? 'taken up from'
        : 'taken down from'
  return `${read} (${how} ${Number(taken.asked.toFixed(2))})`
}

function outside(
  table: CodeTable,
  axis: TableAxis,
  asked: TableEntry,
  block: TableBlock | null,
): TableLookup {
  const what =
    typeof asked === 'number' && !Number.isFinite(asked) ? `so great a ${axis.name}` : say(axis, asked)
  const sentence = `${table.title}: no entry for ${what}`
  const paged = block !== null && isRow(block.source.confidence)
  return { kind: 'outside', paged, source: block?.source ?? table.blocks[0]?.source ?? null, sentence }
}

/** Whether a figure is a table row, or a page has such: it was read, or it was recalled and reproduced. */
export function isRow(confidence: Confidence): boolean {
  return confidence === 'verified' || confidence === 'from memory; reproduced'
}
