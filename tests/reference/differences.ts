import {
  BEAM_SPANS,
  type CodeTable,
  JOIST_CANTILEVERS,
  JOIST_SPANS,
  type LumberSize,
  POST_HEIGHTS,
  type TableBlock,
  type TableEntry,
} from '../../core/data/index.ts'
import { beamSpan, cantilever, joistSpan, postHeight } from './recomputed.ts'

type Recompute = (block: TableBlock, row: string, column: number) => number

const RECOMPUTED: readonly (readonly [CodeTable, Recompute])[] = [
  [JOIST_SPANS, ({ at }, row, column) => joistSpan(row as LumberSize, column, String(at[1]), Number(at[0]))],
  [JOIST_CANTILEVERS, ({ at }, row, column) => cantilever(row as LumberSize, String(at[1]), column * 12)],
  [BEAM_SPANS, (_block, row, column) => beamSpan(Number(row[0]), row.slice(2) as LumberSize, column)],
  [POST_HEIGHTS, (_block, row, column) => postHeight(row as LumberSize, column)],
]

/** A page on which every cell that is not what the equations give is named: table, recomputed, difference. */
export function differencesText(): string {
  return [
    '# Tables and equations, cell by cell',
    '',
    'Written by `vitest run tests/reference/differences -u`; without `-u` that test holds this page to the data.',
    'Inches. Table less recomputed: a minus means that the table is the shorter, and it is the table that is used.',
    'Footings and the tables of AWC DCA 6 are recomputed in `tests/reference` alone.',
    '',
    ...RECOMPUTED.flatMap(([table, recompute]) => section(table, recompute)),
  ].join('\n')
}

function section(table: CodeTable, recompute: Recompute): readonly string[] {
  const clause = table.blocks[0]?.source.clause ?? ''
  return [
    `## ${table.title}, IRC 2021 ${clause}`,
    '',
    '| page | how far known | cells | equal | differ |',
    '| --- | --- | ---: | ---: | --- |',
    ...table.blocks.map((block) => page(table, block, recompute)),
    '',
  ]
}

function page(table: CodeTable, block: TableBlock, recompute: Recompute): string {
  const differing: string[] = []
  let cells = 0
  for (const [row, values] of Object.entries(block.rows)) {
    for (const [i, value] of values.entries()) {
      if (value === null) continue
      cells++
      const column = table.columnAxis.entries[i] ?? 0
      const apart = value - recompute(block, row, Number(column))
      if (apart !== 0)
        differing.push(
          `${row} at ${column} ${table.columnAxis.unit}: ${value} (${apart > 0 ? '+' : ''}${apart})`,
        )
    }
  }
  const named = block.at.map((entry, i) => name(table, i, entry)).join(', ')
  return `| ${named} | ${block.source.confidence} | ${cells} | ${cells - differing.length} | ${differing.join('; ') || 'none'} |`
}

function name(table: CodeTable, axis: number, entry: TableEntry): string {
  const { labels, unit } = table.blockAxes[axis] ?? { labels: undefined, unit: '' }
  return typeof entry === 'string' ? (labels?.[entry] ?? entry) : `${entry} ${unit}`
}
