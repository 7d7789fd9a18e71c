import { ticks } from '../../units/index.ts'
import type { Block, StripMark } from '../sheet-types.ts'
import type { Flow } from './flow.ts'
import { boxMark, LINE, lineMark, textMark } from './marks.ts'
import { POINTS_PER_TICK } from './scales.ts'
import { heading } from './text-blocks.ts'

const TICKS_PER_INCH = 32
const BAND = 64
const BETWEEN = 34

/**
 * A strip at true size in bands of whole inches, to be cut out and joined end to end: an inch rule along its lower edge,
 * the marks over it, and at each end the inch at which the next band goes on.
 */
export function stripBlock(
  flow: Flow,
  { id, title, length, marks }: Extract<Block, { kind: 'strip' }>,
): void {
  heading(flow, title)
  const inches = Math.floor((flow.width - 8) / (TICKS_PER_INCH * POINTS_PER_TICK))
  const each = inches * TICKS_PER_INCH
  const count = Math.max(1, Math.ceil(length / each))
  for (let band = 0; band < count; band += 1) {
    const from = band * each
    const to = Math.min(length, from + each)
    flow.need(BAND + BETWEEN)
    const top = flow.y + 14
    const x = (at: number): number => flow.left + 4 + (at - from) * POINTS_PER_TICK
    flow.place({
      drawing: `${id}-${band + 1}`,
      scale: POINTS_PER_TICK,
      left: flow.left + 4,
      top,
      x0: from,
      y0: 0,
    })
    const name = `${title}: band ${band + 1} of ${count}, ${flow.print(ticks(from))} to ${flow.print(ticks(Math.round(to)))}`
    flow.add(
      textMark(flow.left + 4, top - 4, name, { size: 7.5, tone: 'soft' }),
      boxMark(x(from), top, x(to) - x(from), BAND, { width: LINE.fine, id }),
      ...rule(from, to, x, top + BAND),
      ...marks
        .filter(
          (mark) => mark.at >= from - (mark.side === 'right' ? mark.wide : 0) && mark.at <= to + mark.wide,
        )
        .flatMap((mark) => markOn(mark, from, to, x, top)),
      ...(band > 0 ? [textMark(x(from) + 3, top + BAND - 18, `joins band ${band}`, { size: 6 })] : []),
      ...(band < count - 1
        ? [textMark(x(to) - 3, top + BAND - 18, `joins band ${band + 2}`, { size: 6, anchor: 'end' })]
        : []),
    )
    flow.y = top + BAND + BETWEEN - 14
  }
}

function rule(from: number, to: number, x: (at: number) => number, y: number) {
  const half = TICKS_PER_INCH / 2
  const steps = Array.from({ length: Math.floor((to - from) / half) + 1 }, (_, i) => from + i * half)
  return steps.flatMap((at) => {
    const whole = at % TICKS_PER_INCH === 0
    const line = lineMark(x(at), y, x(at), y - (whole ? 8 : 4), { width: LINE.fine })
    return whole && at > from && at < to
      ? [
          line,
          textMark(x(at), y - 9.5, `${at / TICKS_PER_INCH}`, { size: 6, anchor: 'middle', tone: 'soft' }),
        ]
      : [line]
  })
}

function markOn(
  { at, label, side, wide }: StripMark,
  from: number,
  to: number,
  x: (at: number) => number,
  top: number,
) {
  const bottom = top + BAND - 22
  const inside = at >= from && at <= to
  const out = inside ? [lineMark(x(at), top, x(at), bottom, { width: LINE.heavy })] : []
  if (side === null) {
    return inside ? [...out, textMark(x(at) + 3, top + 10, label, { size: 8, weight: 'bold' })] : out
  }
  const [a, b] = side === 'right' ? [at, at + wide] : [at - wide, at]
  if (b <= from || a >= to) return out
  const middle = (Math.max(a, from) + Math.min(b, to)) / 2
  if ((a + b) / 2 < from || (a + b) / 2 > to) return out
  const r = 7
  const cy = (top + bottom) / 2 + 6
  return [
    ...out,
    lineMark(x(middle) - r, cy - r, x(middle) + r, cy + r, { width: LINE.heavy }),
    lineMark(x(middle) - r, cy + r, x(middle) + r, cy - r, { width: LINE.heavy }),
    textMark(x(middle), top + 11, label, { size: 8, weight: 'bold', anchor: 'middle' }),
  ]
}
