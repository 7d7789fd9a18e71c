import PDFDocument from 'pdfkit'
import { type About, type Face, fontRuns, type Page } from '../../../core/papers/index.ts'
import { fontOf } from './fonts.ts'
import { writePage } from './write-page.ts'

/** A fixed day, so that the same pages give the same bytes. */
const EPOCH = new Date(Date.UTC(2000, 0, 1))

/** Pages as one PDF with the printed fonts inside; pages may differ in size. The same pages give the same bytes. */
export async function makePdf(pages: readonly Page[], about: About): Promise<Uint8Array> {
  const doc = new PDFDocument({
    autoFirstPage: false,
    margin: 0,
    lang: 'en-US',
    info: {
      Title: about.job,
      Creator: 'Kerfwright',
      Producer: 'Kerfwright',
      CreationDate: EPOCH,
      ModDate: EPOCH,
    },
  })
  const parts: Buffer[] = []
  doc.on('data', (part: Buffer) => parts.push(part))
  const ended = new Promise<void>((resolve, reject) => {
    doc.on('end', resolve)
    doc.on('error', reject)
  })
  for (const face of facesOn(pages)) {
    const { regular, bold } = fontOf(face)
    doc.registerFont(`${face} regular`, regular)
    doc.registerFont(`${face} bold`, bold)
  }
  const logo = about.logo === null ? null : Buffer.from(about.logo.data.split(',')[1] ?? '', 'base64')
  for (const page of pages) {
    doc.addPage({ size: [page.width, page.height], margin: 0 })
    writePage(doc, page, logo)
  }
  doc.end()
  await ended
  return new Uint8Array(Buffer.concat(parts))
}

/** The faces that are needed: that of every script is large, and read only where it is. */
function facesOn(pages: readonly Page[]): ReadonlySet<Face> {
  return new Set(
    pages.flatMap(({ marks }) =>
      marks.flatMap((mark) => (mark.kind === 'text' ? fontRuns(mark.text).map(({ face }) => face) : [])),
    ),
  )
}
