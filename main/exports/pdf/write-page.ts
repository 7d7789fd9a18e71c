import { fontRuns, type Mark, type Page, widthOf } from '../../../core/papers/index.ts'
import { FILLS, TONES } from '../look.ts'

type Doc = PDFKit.PDFDocument

/** Widths in the core are without kerning and with tabular figures. The type knows lists only, the library both. */
const FEATURES = { kern: false, liga: false, tnum: true } as unknown as PDFKit.Mixins.OpenTypeFeatures[]

/** The marks of one page, each at its place, in their order. */
export function writePage(doc: Doc, { marks }: Page, logo: Buffer | null): void {
  for (const mark of marks) {
    switch (mark.kind) {
      case 'text':
        writeText(doc, mark)
        break
      case 'image':
        if (logo !== null) doc.image(logo, mark.x, mark.y, { width: mark.w, height: mark.h })
        break
      default:
        draw(doc, mark)
    }
  }
}

function draw(doc: Doc, mark: Exclude<Mark, { kind: 'text' | 'image' }>): void {
  doc.lineWidth(mark.width)
  // the library takes lists of dashes, which its types do not know
  if (mark.dash.length > 0) doc.dash(mark.dash as unknown as number, {})
  else doc.undash()
  if (mark.kind === 'line') {
    doc.moveTo(mark.x1, mark.y1).lineTo(mark.x2, mark.y2).stroke(TONES[mark.tone])
    return
  }
  if (mark.kind === 'circle') doc.circle(mark.cx, mark.cy, mark.r)
  else {
    mark.points.forEach(([x, y], i) => {
      if (i === 0) doc.moveTo(x, y)
      else doc.lineTo(x, y)
    })
    doc.closePath()
  }
  const fill = FILLS[mark.fill]
  if (fill !== null && mark.width > 0) doc.fillAndStroke(fill, TONES[mark.tone])
  else if (fill !== null) doc.fill(fill)
  else doc.stroke(TONES[mark.tone])
}

function writeText(
  doc: Doc,
  { x, y, text, size, weight, anchor, turned, tone, width }: Extract<Mark, { kind: 'text' }>,
): void {
  doc.fontSize(size).fillColor(TONES[tone])
  if (turned) doc.save().rotate(-90, { origin: [x, y] })
  let left = anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2
  for (const { face, text: run } of fontRuns(text)) {
    doc.font(`${face} ${weight}`)
    // the library would turn and join what is turned and joined already: letters of other scripts go down one by one
    for (const part of face === 'own' || face === 'other' ? [run] : run) {
      doc.text(part, left, y, { lineBreak: false, baseline: 'alphabetic', features: FEATURES })
      left += widthOf(part, size, weight)
    }
  }
  if (turned) doc.restore()
}
