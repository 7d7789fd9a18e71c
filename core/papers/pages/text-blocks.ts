import type { Block, Step } from '../sheet-types.ts'
import { wrapText } from '../type/wrap.ts'
import type { Flow } from './flow.ts'
import { boxMark, cautionSign, LINE, lineMark, type TextLook, textMark } from './marks.ts'

export const BODY = 9.5
export const LEADING = 1.34
/** what stands under a step */
const NOTE = 8.5
/** lines longer than this are hard to follow, points */
const READABLE = 540

/** Lines of text at an indent, each on whatever page it falls. */
export function flowLines(flow: Flow, words: string, indent: number, look: TextLook = {}): void {
  const { size = BODY, weight = 'regular' } = look
  const step = size * LEADING
  for (const line of wrapText(words, Math.min(READABLE, flow.width - indent), size, weight)) {
    flow.need(step)
    flow.y += step
    flow.add(textMark(flow.left + indent, flow.y - size * 0.3, line, { ...look, size, weight }))
  }
}

/** From what stands over a heading, points. */
export const BEFORE_HEADING = 10

/** A heading, not left alone at the foot of a page: with so much room under it, points. */
export function heading(flow: Flow, text: string, under = 28): void {
  flow.need(32 + under)
  if (!flow.isFresh) flow.y += BEFORE_HEADING
  flowLines(flow, text, 0, { size: 12, weight: 'bold' })
  flow.y += 3
}

export function paragraph(flow: Flow, { text, tone }: Extract<Block, { kind: 'text' }>): void {
  // what is strong heads what follows
  if (tone === 'strong') flow.need(3 * BODY * LEADING)
  flowLines(flow, text, 0, {
    tone: tone === 'soft' ? 'soft' : 'ink',
    weight: tone === 'strong' ? 'bold' : 'regular',
  })
  flow.y += 5
}

export function caution(flow: Flow, text: string, indent = 0): void {
  const lines = wrapText(text, Math.min(READABLE, flow.width - indent - 14), BODY, 'bold').length
  // a caution is read whole; one as long as a page runs on
  flow.need(Math.min(lines * BODY * LEADING, flow.whole))
  flow.add(cautionSign(flow.left + indent, flow.y + BODY * LEADING - BODY * 0.3, BODY))
  flowLines(flow, text, indent + 14, { weight: 'bold' })
  flow.y += 4
}

export function steps(flow: Flow, items: readonly Step[], from = 1): void {
  items.forEach(({ text, notes = [], cautions = [] }, index) => {
    flow.need(Math.min(stepHeight(flow, { text, notes, cautions }), flow.whole))
    const baseline = flow.y + BODY * LEADING - BODY * 0.3
    flow.add(
      textMark(flow.left + 16, baseline, `${from + index}.`, { size: BODY, weight: 'bold', anchor: 'end' }),
    )
    flowLines(flow, text, 22)
    for (const note of notes) flowLines(flow, note, 22, { size: NOTE, tone: 'soft' })
    for (const each of cautions) caution(flow, each, 22)
    flow.y += 4
  })
  flow.y += 4
}

/** Of one step with all that belongs to it, which is not parted, points. */
export function stepHeight(flow: Flow, { text, notes = [], cautions = [] }: Step): number {
  const lines = (
    words: string,
    indent: number,
    size: number,
    weight: 'regular' | 'bold' = 'regular',
  ): number => wrapText(words, Math.min(READABLE, flow.width - indent), size, weight).length * size * LEADING
  return (
    lines(text, 22, BODY) +
    notes.reduce((sum, note) => sum + lines(note, 22, NOTE), 0) +
    cautions.reduce((sum, each) => sum + lines(each, 36, BODY, 'bold') + 4, 0)
  )
}

export function checklist(flow: Flow, items: readonly string[]): void {
  for (const item of items) {
    flow.need(BODY * LEADING)
    flow.add(boxMark(flow.left + 1, flow.y + 2.5, 8.5, 8.5, { width: LINE.medium }))
    flowLines(flow, item, 18)
    flow.y += 4
  }
  flow.y += 4
}

/** What is the case, label beside value, one to a line; a label that is a text of its own stands over its value. */
export function facts(flow: Flow, rows: readonly (readonly [string, string])[]): void {
  const indent = 150
  const step = BODY * LEADING
  for (const [label, value] of rows) {
    const labelLines = wrapText(label, indent - 8, BODY)
    if (labelLines.length > 3) {
      flowLines(flow, label, 0, { tone: 'soft' })
      flowLines(flow, value, indent)
      continue
    }
    flow.need(labelLines.length * step)
    const start = flow.y
    labelLines.forEach((line, i) => {
      flow.add(textMark(flow.left, start + step * (i + 1) - BODY * 0.3, line, { size: BODY, tone: 'soft' }))
    })
    flowLines(flow, value, indent)
    if (flow.y > start) flow.y = Math.max(flow.y, start + labelLines.length * step)
    flow.y += 2
  }
  flow.y += 6
}

/** A line to sign on with its name, points. */
const SIGNATURE = 45

/** Room of lines that are signed, and of a few lines over them: nobody signs on a page that says nothing. */
export function signedRoom(lines: readonly string[]): number {
  return SIGNATURE * lines.length + 60
}

/** Lines to sign on, all on one page. */
export function signatures(flow: Flow, lines: readonly string[]): void {
  flow.need(SIGNATURE * lines.length)
  for (const line of lines) {
    flow.y += 30
    flow.add(lineMark(flow.left, flow.y, flow.left + 300, flow.y))
    flow.y += 2
    flowLines(flow, line, 0, { size: 8, tone: 'soft' })
  }
  flow.y += 8
}
