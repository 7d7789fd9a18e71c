import { type Logo, type Mark, type Page, runsFromRight } from '../../../core/papers/index.ts'
import { FACES, FILLS, TONES } from '../look.ts'
import { svgText } from './escape.ts'

/** One page as an SVG of its true size; texts stay texts. */
export function makeSvg(page: Page, logo: Logo | null = null): string {
  const { width, height, marks } = page
  const lines = marks.map((mark) => `  ${shape(mark, logo)}`).join('\n')
  return `<?xml version="1.0" encoding="UTF-8"?>
<svg xmlns="http://www.w3.org/2000/svg" width="${width}pt" height="${height}pt" viewBox="0 0 ${width} ${height}" font-family="${FACES.map((face) => `'${face}'`).join(', ')}, sans-serif" style="font-kerning:none;font-variant-numeric:tabular-nums;font-variant-ligatures:none">
  <rect width="${width}" height="${height}" fill="#ffffff"/>
${lines}
</svg>
`
}

function shape(mark: Mark, logo: Logo | null): string {
  const id = mark.id === '' ? '' : ` data-id="${svgText(mark.id)}"`
  if (mark.kind === 'text') {
    const turned = mark.turned ? ` transform="rotate(-90 ${mark.x} ${mark.y})"` : ''
    // its letters follow from left to right already: no reader may turn them again
    const order = runsFromRight(mark.text) ? ' style="unicode-bidi:bidi-override;direction:ltr"' : ''
    const bold = mark.weight === 'bold' ? ' font-weight="600"' : ''
    return `<text x="${mark.x}" y="${mark.y}" font-size="${mark.size}" text-anchor="${mark.anchor}" fill="${TONES[mark.tone]}" xml:space="preserve"${order}${bold}${turned}${id}>${svgText(mark.text)}</text>`
  }
  if (mark.kind === 'image') {
    const source = logo === null ? '' : ` href="${svgText(logo.data)}"`
    return `<image x="${mark.x}" y="${mark.y}" width="${mark.w}" height="${mark.h}"${source}${id}/>`
  }
  const stroke = mark.width > 0 ? ` stroke="${TONES[mark.tone]}" stroke-width="${mark.width}"` : ''
  const dash = mark.dash.length > 0 ? ` stroke-dasharray="${mark.dash.join(' ')}"` : ''
  if (mark.kind === 'line') {
    return `<line x1="${mark.x1}" y1="${mark.y1}" x2="${mark.x2}" y2="${mark.y2}"${stroke}${dash}${id}/>`
  }
  const fill = ` fill="${FILLS[mark.fill] ?? 'none'}"`
  if (mark.kind === 'circle') {
    return `<circle cx="${mark.cx}" cy="${mark.cy}" r="${mark.r}"${fill}${stroke}${dash}${id}/>`
  }
  return `<polygon points="${mark.points.map(([x, y]) => `${x},${y}`).join(' ')}"${fill}${stroke}${dash}${id}/>`
}
