import {
  type About,
  aboutOf,
  layOutPages,
  makeSheets,
  orderMessages,
  type Page,
  type PageOptions,
  type PaperSource,
  type Sheet,
  type SheetId,
} from '../../core/papers/index.ts'
import { hasTables, makeCsv } from '../exports/csv/index.ts'
import { makeDxf } from '../exports/dxf/index.ts'
import { makeSvg } from '../exports/svg/index.ts'
import type { PaperFormat } from './paper-formats.ts'

export interface PaperWish {
  readonly only: readonly SheetId[]
  readonly formats: readonly PaperFormat[]
  readonly page: PageOptions
  /** name of the files, without an ending */
  readonly stem: string
}

/** Writes pages down as one PDF: here, or on a thread of its own. */
export type PdfMaker = (pages: readonly Page[], about: About) => Promise<Uint8Array>

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

/** Every file of the wish, made whole in memory before any is written; none where the job has nothing for its sheets. */
export async function makePapers(
  source: PaperSource,
  { only, formats, page, stem }: PaperWish,
  makePdf: PdfMaker,
): Promise<{ readonly files: readonly PaperFile[]; readonly pages: readonly Page[] }> {
  const sheets = makeSheets(source, only)
  const pages = layOutPages(sheets, aboutOf(source), page)
  if (pages.length === 0) return { files: [], pages }
  const made = {
    pdf: async () => [{ name: `${stem}.pdf`, content: await makePdf(pages, aboutOf(source)) }],
    svg: () => pages.map((each) => ({ name: svgName(stem, each), content: makeSvg(each, source.firm.logo) })),
    dxf: () => sheets.flatMap((sheet) => drawingsOf(sheet, stem)),
    csv: () =>
      sheets
        .filter(hasTables)
        .map((sheet) => ({ name: `${stem} ${sheet.name ?? sheet.id}.csv`, content: makeCsv(sheet) })),
    txt: () =>
      sheets.some(({ id }) => id === 'order')
        ? orderMessages(source).map(({ name, text }) => ({
            name: `${stem} ${name}.txt`,
            content: `${text}\n`,
          }))
        : [],
  } satisfies { readonly [format in PaperFormat]: () => unknown }
  const files: PaperFile[] = []
  for (const format of formats) files.push(...(await made[format]()))
  return { files, pages }
}

function svgName(stem: string, { number, of, sheet }: Page): string {
  return `${stem} ${`${number}`.padStart(`${of}`.length, '0')} ${sheet}.svg`
}

function drawingsOf({ blocks }: Sheet, stem: string): readonly PaperFile[] {
  return blocks.flatMap((block) =>
    block.kind === 'drawing'
      ? [{ name: `${stem} ${block.drawing.id}.dxf`, content: makeDxf(block.drawing) }]
      : [],
  )
}
