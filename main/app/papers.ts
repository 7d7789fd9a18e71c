import {
  aboutOf,
  layOutPages,
  makeSheets,
  type Page,
  type PageOptions,
  type PaperSource,
  type SheetId,
} from '../../core/papers/index.ts'
import { makePdf } from '../exports/pdf/index.ts'
import { makeSvg } from '../exports/svg/index.ts'
import type { PaperFormat } from './paper-formats.ts'

export interface PaperWish {
  readonly only: readonly SheetId[]
  readonly formats: readonly PaperFormat[]
  readonly page: PageOptions
  /** name of the files, without an ending */
  readonly stem: string
}

export interface PaperFile {
  readonly name: string
  readonly content: Uint8Array | string
}

export function paperPages(
  source: PaperSource,
  only: readonly SheetId[],
  page: PageOptions,
): readonly Page[] {
  return layOutPages(makeSheets(source, only), aboutOf(source), page)
}

/** Every file of the wish, made whole in memory before any is written. */
export async function makePapers(
  source: PaperSource,
  { only, formats, page, stem }: PaperWish,
): Promise<{ readonly files: readonly PaperFile[]; readonly pages: readonly Page[] }> {
  const pages = paperPages(source, only, page)
  const files: PaperFile[] = []
  if (formats.includes('pdf'))
    files.push({ name: `${stem}.pdf`, content: await makePdf(pages, aboutOf(source)) })
  if (formats.includes('svg')) {
    for (const each of pages) {
      const number = `${each.number}`.padStart(2, '0')
      files.push({ name: `${stem} ${number} ${each.sheet}.svg`, content: makeSvg(each) })
    }
  }
  return { files, pages }
}
