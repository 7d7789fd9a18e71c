import type { CanvasElement, Content } from 'pdfmake/interfaces.js'
import { ASCENT, type Mark, type Page } from '../../../core/papers/index.ts'
import { FACE, FILLS, TONES } from '../look.ts'
import { svgText } from '../svg/escape.ts'

/** Widths in the core are without kerning and with tabular figures. The type knows lists only, the library both. */
const FEATURES = { kern: false, liga: false, tnum: true } as unknown as []

/** The marks of one page as pdfmake takes them, each at its place; neighbouring shapes share one canvas. */
export function pageContent({ marks }: Page): readonly Content[] {
  const content: Content[] = []
  let shapes: CanvasElement[] = []
  const flush = (): void => {
    if (shapes.length > 0) content.push({ canvas: shapes, absolutePosition: { x: 0, y: 0 } })
    shapes = []
  }
  for (const mark of marks) {
    if (mark.kind !== 'text') {
      shapes.push(shapeOf(mark))
      continue
    }
    flush()
    content.push(textOf(mark))
  }
  flush()
  return content
}

function shapeOf(mark: Exclude<Mark, { kind: 'text' }>): CanvasElement {
  const [length, space] = mark.dash
  const look = {
    lineWidth: mark.width,
    ...(mark.width > 0 ? { lineColor: TONES[mark.tone] } : {}),
    ...(length === undefined ? {} : { dash: { length, space: space ?? length } }),
  }
  if (mark.kind === 'line') {
    return { type: 'line', x1: mark.x1, y1: mark.y1, x2: mark.x2, y2: mark.y2, ...look }
  }
  const color = FILLS[mark.fill]
  const filled = color === null ? {} : { color }
  if (mark.kind === 'circle') {
    return { type: 'ellipse', x: mark.cx, y: mark.cy, r1: mark.r, r2: mark.r, ...look, ...filled }
  }
  return {
    type: 'polyline',
    closePath: true,
    points: mark.points.map(([x, y]) => ({ x, y })),
    ...look,
    ...filled,
  }
}

function textOf({
  x,
  y,
  text,
  size,
  weight,
  anchor,
  turned,
  tone,
  width,
}: Extract<Mark, { kind: 'text' }>): Content {
  const bold = weight === 'bold'
  if (turned) {
    const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="40" height="${2 * width + 8}" viewBox="0 0 40 ${2 * width + 8}"><text x="0" y="0" transform="translate(20 ${width + 4}) rotate(-90)" text-anchor="${anchor}" font-family="${FACE}" font-size="${size}" fill="${TONES[tone]}"${bold ? ' font-weight="bold"' : ''}>${svgText(text)}</text></svg>`
    return { svg, absolutePosition: { x: x - 20, y: y - width - 4 } }
  }
  const left = anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2
  return {
    text,
    fontSize: size,
    bold,
    noWrap: true,
    preserveLeadingSpaces: true,
    color: TONES[tone],
    // without figures a text that starts at its place may be kerned: the library then keeps what it shaped once
    ...(anchor === 'start' && !/\d/.test(text) ? {} : { fontFeatures: FEATURES }),
    absolutePosition: { x: left, y: y - (ASCENT * size) / 1000 },
  }
}
