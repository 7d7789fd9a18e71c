import { edgesOf } from '../../cutting/index.ts'
import type { Block } from '../sheet-types.ts'
import { widthOf } from '../type/measure.ts'
import { fitText } from '../type/wrap.ts'
import type { Flow } from './flow.ts'
import { boxMark, halo, LINE, lineMark, pathMark, textMark } from './marks.ts'

type SetUpBlock = Extract<Block, { kind: 'set-up' }>

const BAR = 17
const FIGURE = 7.5
const SIZE = 8.5
const STEP = 13

/** Room for the board, the figures under it and its first three boxes, points. */
export function setUpRoom(flow: Flow, block: SetUpBlock): number {
  const rows = figureRows(flow, block, (flow.width - 2) / block.longest)
  return 16 + BAR + 12 + rows.length * 9 + STEP * Math.min(3, block.boards.length)
}

/** One setting of the saw: the board with its pieces and the tape's figures under it, and a box for each board. */
export function setUpBlock(flow: Flow, block: SetUpBlock): void {
  const { cuts, boards } = block
  const scale = (flow.width - 2) / block.longest
  const rows = figureRows(flow, block, scale)
  flow.need(setUpRoom(flow, block))
  flow.add(textMark(flow.left, flow.y + 11, block.title, { size: 9.5, weight: 'bold' }))
  flow.y += 16
  const top = flow.y
  const x = (at: number): number => flow.left + at * scale
  const end = cuts.at(-1)?.to ?? 0
  if (end < block.length) flow.add(boxMark(x(end), top, (block.length - end) * scale, BAR, { dash: [3, 2] }))
  cuts.forEach((cut) => {
    const { from, to, length } = cut
    const { near, far } = edgesOf(cut)
    const shape = [
      [x(far[0]), top],
      [x(far[1]), top],
      [x(near[1]), top + BAR],
      [x(near[0]), top + BAR],
    ] as const
    flow.add(pathMark(shape, { fill: 'wood', width: LINE.medium }))
    const words = flow.print(length)
    if (widthOf(words, SIZE) + 4 < (to - from) * scale)
      flow.add(textMark((x(from) + x(to)) / 2, top + BAR * 0.68, words, { size: SIZE, anchor: 'middle' }))
  })
  offcutWords(flow, block, x, top)
  flow.y = top + BAR + 2
  // all lines before all figures: those of a lower row pass behind what is written in the rows above
  rows.forEach((row, i) => {
    for (const { at } of row)
      flow.add(lineMark(x(at), top + BAR, x(at), flow.y + 9 * (i + 1) - 7, { width: LINE.fine }))
  })
  for (const row of rows) {
    flow.y += 9
    for (const { at, text } of row) {
      const wide = widthOf(text, FIGURE)
      const isFirst = startsAt(at * scale)
      const left = isFirst ? x(at) : x(at) - wide
      flow.add(
        halo({ x0: left - 0.5, x1: left + wide - 0.5, y0: flow.y - 6, y1: flow.y + 1 }),
        textMark(x(at), flow.y, text, { size: FIGURE, anchor: isFirst ? 'start' : 'end' }),
      )
    }
  }
  flow.y += 6
  boardBoxes(flow, boards)
  flow.y += 10
}

function offcutWords(
  flow: Flow,
  { cuts, length, offcut, fate }: SetUpBlock,
  x: (at: number) => number,
  top: number,
): void {
  const end = cuts.at(-1)?.to ?? 0
  if (offcut === 0) return
  const words = `${flow.print(offcut)} over: ${fate}`
  const wide = widthOf(words, FIGURE)
  const [a, b] = [x(end), x(length)]
  if (wide + 6 < b - a) {
    flow.add(textMark((a + b) / 2, top + BAR * 0.65, words, { size: FIGURE, anchor: 'middle' }))
  } else {
    flow.add(textMark(flow.left + flow.width, top - 5, words, { size: FIGURE, anchor: 'end', tone: 'soft' }))
  }
}

interface Figure {
  readonly at: number
  readonly text: string
}

/** Whether a figure begins at its line, which is so near the board's left end that it has no room before it. */
function startsAt(place: number): boolean {
  return place < 40
}

/** The tape's figure at each line of the saw, in as many rows as keep them apart. */
function figureRows(flow: Flow, { lines }: SetUpBlock, scale: number): readonly (readonly Figure[])[] {
  const rows: { readonly figures: Figure[]; end: number }[] = []
  for (const at of lines) {
    const text = flow.print(at)
    const wide = widthOf(text, FIGURE) + 6
    const start = startsAt(at * scale) ? at * scale : at * scale - wide
    const row = rows.find(({ end }) => end <= start)
    if (row === undefined) rows.push({ figures: [{ at, text }], end: start + wide })
    else {
      row.figures.push({ at, text })
      row.end = start + wide
    }
  }
  return rows.map(({ figures }) => figures)
}

/** `□ 2x10-4: J1 + K2` for each board, in columns. */
function boardBoxes(flow: Flow, boards: SetUpBlock['boards']): void {
  const texts = boards.map(
    ({ name, marks, waits }) =>
      `${name}${waits === undefined ? '' : ` (waits: ${waits})`}: ${marks.join(' + ')}`,
  )
  const widest = Math.max(...texts.map((text) => widthOf(text, SIZE)))
  const columns = Math.max(1, Math.floor(flow.width / (widest + 28)))
  const width = flow.width / columns
  texts.forEach((text, i) => {
    if (i % columns === 0) {
      flow.need(STEP)
      flow.y += STEP
    }
    const left = flow.left + (i % columns) * width
    flow.add(
      boxMark(left + 1, flow.y - 8, 8.5, 8.5, { width: LINE.medium }),
      textMark(left + 14, flow.y, fitText(text, width - 16, SIZE), { size: SIZE }),
    )
  })
}
