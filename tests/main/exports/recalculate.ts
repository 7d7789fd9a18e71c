import { execFileSync } from 'node:child_process'
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import ExcelJs from 'exceljs'
import JsZip from 'jszip'

/** Value of every formula cell by sheet and address, e.g. "Cost!F12", and of every named cell by its name. */
export interface Figures {
  readonly cells: ReadonlyMap<string, unknown>
  readonly names: ReadonlyMap<string, unknown>
}

/** The workbook without its cached results: LibreOffice trusts those, and would recalculate nothing. */
export async function withoutResults(file: Uint8Array): Promise<Uint8Array> {
  const zip = await JsZip.loadAsync(file)
  for (const name of Object.keys(zip.files).filter((part) => part.startsWith('xl/worksheets/sheet'))) {
    const xml = await (zip.files[name] as JsZip.JSZipObject).async('string')
    zip.file(name, xml.replace(/(<f>[^<]*<\/f>)<v>[^<]*<\/v>/g, '$1'))
  }
  return zip.generateAsync({ type: 'uint8array' })
}

/** Lets LibreOffice work out every formula of the given workbooks, in one run, and reads what it found. */
export async function recalculated(
  folder: string,
  files: { readonly [name: string]: Uint8Array },
): Promise<{ readonly [name: string]: Figures }> {
  const from = join(folder, 'plain')
  const to = join(folder, 'calculated')
  mkdirSync(from, { recursive: true })
  for (const [name, file] of Object.entries(files))
    writeFileSync(join(from, `${name}.xlsx`), await withoutResults(file))
  const inputs = Object.keys(files).map((name) => join(from, `${name}.xlsx`))
  execFileSync(
    'soffice',
    [
      '--headless',
      `-env:UserInstallation=file://${join(folder, 'office')}`,
      '--convert-to',
      'xlsx',
      '--outdir',
      to,
      ...inputs,
    ],
    { stdio: 'ignore', timeout: 120_000 },
  )
  const found: { [name: string]: Figures } = {}
  for (const name of Object.keys(files)) found[name] = await figuresOf(readFileSync(join(to, `${name}.xlsx`)))
  return found
}

/** Results as a file holds them. */
export async function figuresOf(file: Uint8Array): Promise<Figures> {
  const book = await readBook(file)
  const cells = new Map<string, unknown>()
  book.eachSheet((sheet) => {
    sheet.eachRow((row) => {
      row.eachCell((cell) => {
        if (cell.type === ExcelJs.ValueType.Formula)
          cells.set(`${sheet.name}!${cell.address}`, cell.result ?? 0)
      })
    })
  })
  const names = new Map<string, unknown>()
  for (const { name, ranges } of book.definedNames.model) {
    const [, sheetName = '', address = ''] = /^'?(.*?)'?!(.*)$/.exec(ranges[0] ?? '') ?? []
    const cell = book.getWorksheet(sheetName)?.getCell(address.replaceAll('$', ''))
    if (cell !== undefined && !name.startsWith('_'))
      names.set(name, cell.type === ExcelJs.ValueType.Formula ? (cell.result ?? 0) : cell.value)
  }
  return { cells, names }
}

export async function readBook(file: Uint8Array): Promise<ExcelJs.Workbook> {
  const book = new ExcelJs.Workbook()
  await book.xlsx.load(Buffer.from(file) as unknown as ArrayBuffer)
  return book
}
