import ExcelJs from 'exceljs'
import type { Cell, Format } from './cell.ts'
import { cellText, footerText } from './plain-text.ts'
import { columnName, type Row, type Sheet } from './sheet.ts'

/** Ink, soft ink, hairline and the blue of what can be changed, as in the window (`#1a5fb4`), for white paper. */
const INK = 'FF18232B'
const SOFT = 'FF5C6870'
const HAIR = 'FFD5D0C4'
const BLUE = 'FF1A5FB4'
const FACE = 'Atkinson Hyperlegible Next'
const SIZE = 10
/** height of one line of body type, points */
const LINE = 14

const NUMBER_FORMATS: { readonly [format in Format]: string } = {
  money: '$#,##0.00;-$#,##0.00;$0.00',
  'unit price': '$#,##0.00##',
  count: '#,##0',
  decimal: '#,##0.##',
  fixed: '#,##0.00',
  hours: '#,##0.000',
  share: '0.00%',
  inches: '#,##0 ??/??',
  ratio: '0%',
  rate: '0.0####',
}

/** A fixed day, so that the same estimate gives the same bytes. */
const EPOCH = new Date(Date.UTC(2000, 0, 1))

/** The one place that speaks to exceljs: sheets as data become the bytes of a workbook. */
export async function writeWorkbook(
  sheets: readonly Sheet[],
  about: { title: string; foot: string },
): Promise<Uint8Array> {
  const book = new ExcelJs.Workbook()
  book.creator = 'Kerfwright'
  book.lastModifiedBy = 'Kerfwright'
  book.created = EPOCH
  book.modified = EPOCH
  book.title = cellText(about.title)
  book.calcProperties.fullCalcOnLoad = true
  for (const sheet of sheets) writeSheet(book, sheet, footerText(about.foot))
  return new Uint8Array(await book.xlsx.writeBuffer())
}

function writeSheet(book: ExcelJs.Workbook, sheet: Sheet, foot: string): void {
  const lastColumn = columnName(sheet.columns.length)
  const page: Partial<ExcelJs.PageSetup> = {
    paperSize: 1 as ExcelJs.PaperSize,
    orientation: sheet.landscape ? 'landscape' : 'portrait',
    fitToPage: true,
    fitToWidth: 1,
    fitToHeight: 0,
    horizontalCentered: false,
    margins: { left: 0.6, right: 0.6, top: 0.6, bottom: 0.7, header: 0.3, footer: 0.35 },
    // the $ keeps the area absolute: without it the rows are written relative to the cell in hand
    printArea: `A$1:${lastColumn}$${sheet.rows.length}`,
  }
  if (sheet.headerRow !== null && sheet.repeats) page.printTitlesRow = `${sheet.headerRow}:${sheet.headerRow}`
  const target = book.addWorksheet(sheet.name, {
    pageSetup: page,
    headerFooter: { oddFooter: `&L&8${foot}&C&8&A&R&8Page &P of &N` },
    properties: { defaultRowHeight: LINE },
    views: [
      sheet.headerRow === null
        ? { state: 'normal', showGridLines: false }
        : { state: 'frozen', ySplit: sheet.headerRow, showGridLines: false },
    ],
  })
  target.columns = sheet.columns.map(({ width }) => ({ width }))
  sheet.rows.forEach((row, index) => {
    writeRow(target, row, index + 1, sheet.columns.length)
  })
}

const EXTRA_HEIGHT: { readonly [kind in Row['kind']]: number } = {
  title: 10,
  note: 2,
  heading: 8,
  header: 3,
  group: 6,
  body: 2,
  gap: -4,
}

function writeRow(sheet: ExcelJs.Worksheet, row: Row, number: number, columns: number): void {
  const target = sheet.getRow(number)
  target.height = row.lines * LINE + EXTRA_HEIGHT[row.kind]
  let covered = 0
  row.cells.forEach((cell, index) => {
    // a merged cell shares its style with those it covers
    if (index < covered) return
    writeCell(target.getCell(index + 1), cell, row.kind, index)
    covered = index + (cell.span ?? 1)
    if (covered > index + 1) sheet.mergeCells(number, index + 1, number, covered)
  })
  if (row.kind !== 'header' && row.kind !== 'body') return
  const ruled = row.cells.find((cell) => cell.rule !== undefined)?.rule
  for (let column = 1; column <= columns; column += 1) {
    target.getCell(column).border = bordersOf(row.kind, ruled)
  }
}

function bordersOf(kind: 'header' | 'body', rule: Cell['rule']): Partial<ExcelJs.Borders> {
  if (kind === 'header') return { bottom: { style: 'thin', color: { argb: INK } } }
  const bottom = { style: 'hair', color: { argb: HAIR } } as const
  if (rule === undefined) return { bottom }
  return { top: { style: rule === 'strong' ? 'medium' : 'thin', color: { argb: INK } }, bottom }
}

function writeCell(place: ExcelJs.Cell, cell: Cell, kind: Row['kind'], index: number): void {
  if (cell.kind === 'text') place.value = cellText(cell.text)
  if (cell.kind === 'number') place.value = cell.value
  if (cell.kind === 'formula') place.value = { formula: cell.formula, result: cell.value, date1904: false }
  if (cell.kind === 'number' || cell.kind === 'formula') place.numFmt = NUMBER_FORMATS[cell.format]
  const colour = cell.input === true ? BLUE : cell.soft === true ? SOFT : INK
  place.font = { name: FACE, size: cell.size ?? SIZE, bold: cell.bold === true, color: { argb: colour } }
  const figures = cell.kind === 'number' || cell.kind === 'formula'
  const right = cell.right === true || figures
  place.alignment = {
    horizontal: right ? 'right' : 'left',
    // keeps words off the figures that end where they begin
    indent: right || index === 0 ? 0 : 1,
    vertical: kind === 'body' || kind === 'note' ? 'top' : 'bottom',
    wrapText: cell.wrap === true,
  }
  if (cell.name !== undefined) place.name = cell.name
}
