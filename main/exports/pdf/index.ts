import pdfmake from 'pdfmake'
import type { Content } from 'pdfmake/interfaces.js'
import type { About, Page } from '../../../core/papers/index.ts'
import { FACE } from '../look.ts'
import { fontFiles } from './fonts.ts'
import { pageContent } from './page-content.ts'

/** A fixed day, so that the same pages give the same bytes. */
const EPOCH = new Date(Date.UTC(2000, 0, 1))

/** Pages as one PDF with the printed font inside; pages may differ in size. The same pages give the same bytes. */
export async function makePdf(pages: readonly Page[], about: About): Promise<Uint8Array> {
  const { folder, normal, bold } = fontFiles()
  pdfmake.setFonts({ [FACE]: { normal, bold } })
  pdfmake.setUrlAccessPolicy(() => false)
  pdfmake.setLocalAccessPolicy((path) => path.startsWith(folder))
  const content = pages.map((page, index): Content => {
    const stack = [...pageContent(page)]
    if (index === 0) return stack
    return { stack, pageBreak: 'before', pageOrientation: orientation(page) }
  })
  const [first] = pages
  if (first === undefined) throw new Error('a set of papers has a page')
  const made = pdfmake.createPdf({
    pageSize: { width: Math.min(first.width, first.height), height: Math.max(first.width, first.height) },
    pageOrientation: orientation(first),
    pageMargins: 0,
    defaultStyle: { font: FACE },
    language: 'en-US',
    info: {
      title: about.job,
      creator: 'Kerfwright',
      producer: 'Kerfwright',
      creationDate: EPOCH,
      modDate: EPOCH,
    },
    content,
  })
  return new Uint8Array(await made.getBuffer())
}

function orientation({ width, height }: Page): 'portrait' | 'landscape' {
  return width > height ? 'landscape' : 'portrait'
}
