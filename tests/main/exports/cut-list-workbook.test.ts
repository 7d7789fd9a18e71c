import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { type CutListResult, runCutList } from '../../../core/cut-list/index.ts'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { inches } from '../../../core/units/index.ts'
import { makeCutListWorkbook } from '../../../main/exports/workbook/index.ts'
import { loadEngine } from '../../../main/workers/lp/index.ts'
import { type Figures, figuresOf, readBook, recalculated } from './recalculate.ts'

const folder = mkdtempSync(join(tmpdir(), 'kerfwright-list-workbook-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

const HOSTILE = '=HYPERLINK("http://x","y") _x0041_'

/** Two products priced with a break and an offcut; stock without prices; marks and codes that a spreadsheet would run. */
const LISTS: { readonly [name: string]: readonly [list: string, stock: string] } = {
  priced: [
    'Qty,Length,Mark,Product,Runs wild\n9,7 ft 10 in,J,2x8,2 in\n4,41 3/8 in,B,2x6,\n',
    'Length,Price,Product,Kind,Break from,Break price\n16 ft,17.35,2x8,stock,4,15.05\n12 ft,9.99,2x6,stock,,\n8 ft,,2x8,offcut,,\n',
  ],
  unpriced: ['Qty,Length\n5,9 ft\n3,4 ft\n', 'Length\n10 ft\n16 ft\n'],
  hostile: [
    `Qty,Length,Mark,Product\n2,4 ft,"${HOSTILE.replaceAll('"', '""')}",+2x4\n`,
    'Length,Price,Code,Product\n8 ft,5,@SUM(A1),+2x4\n',
  ],
}

const made: { [name: string]: { result: CutListResult; file: Uint8Array; stored: Figures } } = {}
let worked: { readonly [name: string]: Figures } = {}

beforeAll(async () => {
  const engine = await loadEngine()
  for (const [name, [text, stockText]] of Object.entries(LISTS)) {
    const request = { text, stockText, kerf: inches(1 / 8), endTrim: inches(1 / 2) }
    const answer = runCutList(request, SAMPLE_BOOK, engine)
    if (!answer.ok) throw new Error(JSON.stringify(answer.faults))
    const file = await makeCutListWorkbook(answer.result)
    made[name] = { result: answer.result, file, stored: await figuresOf(file) }
  }
  worked = await recalculated(
    folder,
    Object.fromEntries(Object.entries(made).map(([name, { file }]) => [name, file])),
  )
}, 240_000)

function caseOf(name: string) {
  const found = made[name]
  const figures = worked[name]
  if (found === undefined || figures === undefined) throw new Error(`${name} was not made`)
  return { ...found, worked: figures }
}

describe.each(Object.keys(LISTS))('the workbook of a cut list (%s), worked out by LibreOffice', (name) => {
  test('gives in every cell what is stored for readers that do not calculate', () => {
    const { stored, worked: figures } = caseOf(name)
    expect(stored.cells.size).toBeGreaterThan(5)
    expect([...figures.cells.keys()].sort()).toEqual([...stored.cells.keys()].sort())
    const differing = [...stored.cells].filter(
      ([address, value]) => Math.abs(Number(value) - Number(figures.cells.get(address))) > 1e-9,
    )
    expect(differing).toEqual([])
  })

  test('is the same bytes for the same list', async () => {
    const { result, file } = caseOf(name)
    expect(Buffer.from(await makeCutListWorkbook(result)).equals(Buffer.from(file))).toBe(true)
  })
})

describe('the workbook of a cut list', () => {
  test('gives the cost of the whole order to the cent', () => {
    const { result, worked: figures } = caseOf('priced')
    const cost = result.plans.reduce((sum, { plan }) => sum + plan.cost, 0)
    expect(Math.round(Number(figures.names.get('list_total')) * 100)).toBe(cost)
    expect(cost).toBeGreaterThan(0)
  })

  test('holds foreign text as text: no cell of it is a formula or a link', async () => {
    const { result, file } = caseOf('hostile')
    expect(result.plans[0]?.plan.boards[0]?.cuts[0]?.mark).toBe(HOSTILE)
    const texts: string[] = []
    const foreign: unknown[] = []
    const book = await readBook(file)
    book.eachSheet((sheet) =>
      sheet.eachRow((row) =>
        row.eachCell((cell) => {
          if (typeof cell.value === 'string') texts.push(cell.value)
          if (cell.formula !== undefined && /HYPERLINK|@|2x4/.test(cell.formula)) foreign.push(cell.formula)
          if (cell.hyperlink !== undefined) foreign.push(cell.hyperlink)
        }),
      ),
    )
    expect(foreign).toEqual([])
    expect(texts.filter((text) => text.includes(HOSTILE))).not.toEqual([])
    expect(texts).toContain('@SUM(A1)')
    expect(texts).toContain('+2x4')
  })

  test('says to what a piece is cut in place', async () => {
    const sheet = (await readBook(caseOf('priced').file)).getWorksheet('Cutting sheet')
    const said: string[] = []
    sheet?.eachRow((row) => said.push(String(row.getCell(3).value)))
    expect(said.some((words) => words.includes(`J 8'-0" (in place to 7'-10")`))).toBe(true)
  })
})
