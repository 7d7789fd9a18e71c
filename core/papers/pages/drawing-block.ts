import type { Placed } from '../page-types.ts'
import type { Block } from '../sheet-types.ts'
import type { Drawing } from '../types.ts'
import { drawMarks } from './draw-marks.ts'
import type { Flow } from './flow.ts'
import { boxMark, lineMark, textMark } from './marks.ts'
import { POINTS_PER_TICK, scaleFor, scaleName } from './scales.ts'

const CAPTION = 26
const TICKS_PER_FOOT = 384

/** A drawing at the largest usual scale that its room allows, with the scale's name and a bar to measure a copy by. */
export function drawingBlock(flow: Flow, block: Extract<Block, { kind: 'drawing' }>): void {
  const { drawing, share = 1, sketch = false } = block
  const extent = { w: drawing.x1 - drawing.x0, h: drawing.y1 - drawing.y0 }
  const room = { w: flow.width, h: flow.whole * share - CAPTION }
  const { denominator, asStated } = scaleFor(extent, room, flow.options.paper, flow.options.scale)
  const scale = POINTS_PER_TICK / denominator
  const height = extent.h * scale
  flow.need(height + CAPTION + (block.follows ?? 0))
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

/** A bar of whole feet, at most a quarter of the page long: a print that was made smaller gives itself away. */
function scaleBar(flow: Flow, y: number, scale: number): void {
  const foot = TICKS_PER_FOOT * scale
  const feet = [20, 10, 5, 4, 2, 1].find((n) => n * foot <= flow.width / 4)
  const parts = feet === undefined ? [{ inches: 6 }] : [{ feet }]
  const long = feet === undefined ? foot / 2 : feet * foot
  const right = flow.left + flow.width
  const left = right - long
  flow.add(
    boxMark(left, y - 4, long / 2, 4, { fill: 'ink', width: 0.35 }),
    boxMark(left + long / 2, y - 4, long / 2, 4, { width: 0.35 }),
    lineMark(left, y - 7, left, y, { width: 0.35 }),
    lineMark(right, y - 7, right, y, { width: 0.35 }),
    textMark(left - 4, y, '0', { size: 7, anchor: 'end' }),
    textMark(right, y - 9, parts[0] !== undefined && 'feet' in parts[0] ? `${feet} ft` : '6 in', {
      size: 7,
      anchor: 'end',
    }),
  )
}
