import type { Block, Sheet, Step } from '../sheet-types.ts'
import type { Drawing, PaperTable, Primitive } from '../types.ts'
import { metricText } from './metric-text.ts'

/** A sheet with its lengths in millimetres; texts that are the user's own stay as they are. */
export function inMetric(sheet: Sheet, own: ReadonlySet<string>): Sheet {
  const say = (text: string): string => (own.has(text) ? text : metricText(text))
  return { ...sheet, blocks: sheet.blocks.map((block) => blockOf(block, say)) }
}

type Say = (text: string) => string

function blockOf(block: Block, say: Say): Block {
  switch (block.kind) {
    case 'heading':
    case 'caution':
      return { ...block, text: say(block.text) }
    case 'text':
      return block.foreign === true ? block : { ...block, text: say(block.text) }
    case 'steps':
      return { ...block, items: block.items.map((item) => stepOf(item, say)) }
    case 'checklist':
      return { ...block, items: block.items.map(say) }
    case 'facts':
      return { ...block, rows: block.rows.map(([label, value]) => [say(label), say(value)] as const) }
    case 'table':
      return { ...block, table: tableOf(block.table, say) }
    case 'drawing':
      return { ...block, drawing: drawingOf(block.drawing, say) }
    case 'strip':
    case 'set-up':
      return { ...block, title: say(block.title) }
    case 'signatures':
    case 'contents':
    case 'page break':
      return block
  }
}

function stepOf({ text, notes, cautions }: Step, say: Say): Step {
  return {
    text: say(text),
    ...(notes === undefined ? {} : { notes: notes.map(say) }),
    ...(cautions === undefined ? {} : { cautions: cautions.map(say) }),
  }
}

/** Columns with names of goods, by their tables: a good is asked for by the size that the trade calls it. */
const GOODS: { readonly [table: string]: string } = {
  hardware: 'label',
  'hardware-held': 'label',
  cost: 'label',
  nailing: 'fastener',
}

function tableOf(table: PaperTable, say: Say): PaperTable {
  const goods = GOODS[table.id]
  return {
    ...table,
    title: say(table.title),
    columns: table.columns.map((column) => ({ ...column, label: say(column.label) })),
    rows: table.rows.map((row) =>
      Object.fromEntries(
        Object.entries(row).map(([key, value]) => [key, key === goods ? value : say(value)]),
      ),
    ),
  }
}

function drawingOf(drawing: Drawing, say: Say): Drawing {
  const primitives = drawing.primitives.map(
    (p): Primitive => (p.kind === 'text' || p.kind === 'dimension' ? { ...p, text: say(p.text) } : p),
  )
  return { ...drawing, primitives }
}
