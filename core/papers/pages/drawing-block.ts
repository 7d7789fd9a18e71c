import type { Placed } from '../page-types.ts'
import type { Block } from '../sheet-types.ts'
import type { Drawing } from '../types.ts'
import { drawMarks } from './draw-marks.ts'
import type { Flow } from './flow.ts'
import { boxMark, lineMark, textMark } from './marks.ts'
import { POINTS_PER_TICK, permitScale, scaleFor, scaleName } from './scales.ts'

type DrawingBlock = Extract<Block, { kind: 'drawing' }>

const CAPTION = 26
/** What a bar of a scale counts in: whole feet or metres, ticks long, or a part of one where that is too long. */
const BARS = {
  feet: { unit: 384, name: 'ft', counts: [20, 10, 5, 4, 2, 1], part: { share: 0.5, text: '6 in' } },
  metres: {
    unit: (1000 / 25.4) * 32,
    name: 'm',
    counts: [10, 5, 4, 2, 1],
    part: { share: 0.1, text: '100 mm' },
  },
} as const

/**
 * A drawing at the largest usual scale that its room allows, with the scale's name and a bar to measure a copy by.
 * @param alike the scale, 1 : n, of others like it, taken over down to that of permit sets
 */
export function drawingBlock(flow: Flow, block: DrawingBlock, alike: number | null = null): void {
  const { drawing, sketch = false } = block
  const extent = { w: drawing.x1 - drawing.x0, h: drawing.y1 - drawing.y0 }
  const denominator = scaleAmong(flow, block, alike)
  const { scale: stated } = flow.options
  const asStated = stated === null || block.near === true || denominator === stated
  const scale = POINTS_PER_TICK / denominator
  const height = extent.h * scale
  flow.need(drawingRoom(flow, block, alike))
  const placed: Placed = {
    drawing: drawing.id,
    scale,
    left: flow.left + (flow.width - extent.w * scale) / 2,
    top: flow.y,
    x0: drawing.x0,
    y0: drawing.y0,
  }
  flow.place(placed)
  flow.add(...drawMarks(drawing, block.layers, placed))
  flow.y += height
  caption(flow, drawing, sketch ? 'Not to scale' : scaleWords(denominator, asStated), sketch ? null : scale)
}

/** How high it comes out with its caption and what is to follow on its page, points. */
export function drawingRoom(flow: Flow, block: DrawingBlock, alike: number | null): number {
  const { drawing, follows = 0 } = block
  return ((drawing.y1 - drawing.y0) * POINTS_PER_TICK) / scaleAmong(flow, block, alike) + CAPTION + follows
}

function scaleAmong(flow: Flow, block: DrawingBlock, alike: number | null): number {
  return Math.max(ownScale(flow, block), Math.min(alike ?? 0, permitScale(flow.options.paper)))
}

/** 1 : n at which it fits by itself. */
function ownScale(flow: Flow, { drawing, share = 1, near }: DrawingBlock): number {
  const extent = { w: drawing.x1 - drawing.x0, h: drawing.y1 - drawing.y0 }
  const room = { w: flow.width, h: flow.whole * share - CAPTION }
  return scaleFor(extent, room, flow.options.paper, near === true ? null : flow.options.scale)
}

/** The one scale, as 1 : n, of drawings that are drawn alike, by their common name. */
export function alikeScales(flow: Flow, blocks: readonly Block[]): ReadonlyMap<string, number> {
  const scales = new Map<string, number>()
  for (const block of blocks) {
    if (block.kind !== 'drawing' || block.alike === undefined) continue
    scales.set(block.alike, Math.max(ownScale(flow, block), scales.get(block.alike) ?? 0))
  }
  return scales
}

function scaleWords(denominator: number, asStated: boolean): string {
  const name = `Scale ${scaleName(denominator)}`
  return asStated ? name : `${name}: the stated scale does not fit this paper`
}

function caption(flow: Flow, drawing: Drawing, words: string, scale: number | null): void {
  const y = flow.y + 14
  flow.add(textMark(flow.left, y, `${drawing.title} · ${words}`, { size: 8, tone: 'soft' }))
  if (scale !== null) scaleBar(flow, y, scale)
  flow.y += CAPTION
}

/** A bar at most a quarter of the page long: a print that was made smaller gives itself away. */
function scaleBar(flow: Flow, y: number, scale: number): void {
  const { unit, name, counts, part } = BARS[flow.options.metric === true ? 'metres' : 'feet']
  const one = unit * scale
  const count = counts.find((n) => n * one <= flow.width / 4)
  const [long, words] =
    count === undefined ? [one * part.share, part.text] : [count * one, `${count} ${name}`]
  const right = flow.left + flow.width
  const left = right - long
  flow.add(
    boxMark(left, y - 4, long / 2, 4, { fill: 'ink', width: 0.35 }),
    boxMark(left + long / 2, y - 4, long / 2, 4, { width: 0.35 }),
    lineMark(left, y - 7, left, y, { width: 0.35 }),
    lineMark(right, y - 7, right, y, { width: 0.35 }),
    textMark(left - 4, y, '0', { size: 7, anchor: 'end' }),
    textMark(right, y - 9, words, { size: 7, anchor: 'end' }),
  )
}
