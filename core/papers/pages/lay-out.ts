import { inMetric } from '../metric/in-metric.ts'
import type { Page } from '../page-types.ts'
import type { About, Block, PageOptions, Sheet } from '../sheet-types.ts'
import { contentsTable } from './contents-block.ts'
import { alikeScales, drawingBlock, drawingRoom } from './drawing-block.ts'
import { Flow } from './flow.ts'
import { inColumns, onOnePage } from './groups.ts'
import { setUpBlock, setUpRoom } from './set-up-block.ts'
import { stripBlock } from './strip-block.ts'
import { tableBlock } from './table-block.ts'
import {
  caution,
  checklist,
  facts,
  heading,
  paragraph,
  signatures,
  signedRoom,
  stepHeight,
  steps,
} from './text-blocks.ts'

/** What stays with the lines to sign on that follow it. */
const HEADING: ReadonlySet<Block['kind']> = new Set(['heading', 'text', 'caution'])

/** What a heading itself takes: no drawing that is nearly as high as a page keeps it company. */
const LEAST_OVER = 45

/** Sheets on pages of one paper, numbered through. The same sheets give the same marks. */
export function layOutPages(sheets: readonly Sheet[], about: About, options: PageOptions): readonly Page[] {
  const own = new Set([about.job, about.firm])
  const said = options.metric === true ? sheets.map((sheet) => inMetric(sheet, own)) : sheets
  const [first] = said
  const flows =
    first?.id === 'contents'
      ? withIndex(
          first,
          said.slice(1).map((sheet) => flowOf(sheet, options)),
          options,
        )
      : said.map((sheet) => flowOf(sheet, options))
  const of = flows.reduce((sum, flow) => sum + flow.count, 0)
  let from = 1
  return flows.flatMap((flow) => {
    const pages = flow.pages(about, from, of)
    from += flow.count
    return pages
  })
}

function flowOf(sheet: Sheet, options: PageOptions): Flow {
  const flow = new Flow(sheet, options)
  placeGroups(flow, sheet.blocks)
  return flow
}

/**
 * The index before the sheets that it counts: its own pages are counted too, so it is written until they are as many as
 * it says. Larger page numbers never take less room, so that comes to an end.
 */
function withIndex(index: Sheet, others: readonly Flow[], options: PageOptions): readonly Flow[] {
  const counts = others.map(({ count }) => count)
  for (let own = 1; ; ) {
    const blocks = index.blocks.map((block) =>
      block.kind === 'contents' ? contentsTable(block, counts, own + 1) : block,
    )
    const flow = flowOf({ ...index, blocks }, options)
    if (flow.count === own) return [flow, ...others]
    own = flow.count
  }
}

/** Neighbours that belong together are placed as one; the others one after the other. */
function placeGroups(flow: Flow, blocks: readonly Block[]): void {
  const scales = alikeScales(flow, blocks)
  for (let i = 0; i < blocks.length; ) {
    const { columns, together } = blocks[i] ?? {}
    let end = i + 1
    while (
      (columns !== undefined || together !== undefined) &&
      blocks[end]?.columns === columns &&
      blocks[end]?.together === together
    )
      end += 1
    const group = blocks.slice(i, end)
    const write = (to: Flow): void => placeAll(to, group, blocks[end], scales)
    if (columns !== undefined) inColumns(flow, group, write)
    else if (together !== undefined) onOnePage(flow, write)
    else write(flow)
    i = end
  }
}

/** @param after what follows them on the sheet */
function placeAll(
  flow: Flow,
  blocks: readonly Block[],
  after: Block | undefined,
  scales: ReadonlyMap<string, number>,
): void {
  blocks.forEach((block, i) => {
    const next = blocks[i + 1] ?? after
    if (next?.kind === 'signatures' && HEADING.has(block.kind)) flow.need(signedRoom(next.lines))
    if (block.kind === 'heading') heading(flow, block.text, roomUnder(flow, next, scales))
    else place(flow, block, scales)
  })
}

/** What a heading wants under it, points: all of what follows that is not parted; the usual where nothing is said. */
function roomUnder(
  flow: Flow,
  next: Block | undefined,
  scales: ReadonlyMap<string, number>,
): number | undefined {
  if (next?.kind === 'set-up') return setUpRoom(flow, next)
  if (next?.kind === 'drawing') {
    const room = drawingRoom(flow, next, scales.get(next.alike ?? '') ?? null)
    return room > flow.whole - LEAST_OVER ? undefined : room
  }
  const [first] = next?.kind === 'steps' ? next.items : []
  return first === undefined ? undefined : Math.min(stepHeight(flow, first), flow.whole / 2)
}

function place(flow: Flow, block: Block, scales: ReadonlyMap<string, number>): void {
  switch (block.kind) {
    case 'heading':
      heading(flow, block.text)
      break
    case 'text':
      paragraph(flow, block)
      break
    case 'caution':
      caution(flow, block.text)
      break
    case 'steps':
      steps(flow, block.items, block.from)
      break
    case 'checklist':
      checklist(flow, block.items)
      break
    case 'facts':
      facts(flow, block.rows)
      break
    case 'table':
      tableBlock(flow, block)
      break
    case 'drawing':
      drawingBlock(flow, block, scales.get(block.alike ?? '') ?? null)
      break
    case 'strip':
      stripBlock(flow, block)
      break
    case 'set-up':
      setUpBlock(flow, block)
      break
    case 'signatures':
      signatures(flow, block.lines)
      break
    case 'page break':
      if (!flow.isFresh) flow.newPage()
  }
}
