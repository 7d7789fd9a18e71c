import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { type PriceBook, SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { unitPrice } from '../../../core/units/index.ts'
import { makeWorkbook, type PricedEstimate } from '../../../main/exports/workbook/index.ts'
import { UNDER_WAY } from '../../core/costing/worked-costing.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { paperSource } from '../../fixtures/paper-source.ts'
import { priced } from './priced.ts'
import { type Figures, figuresOf, readBook, recalculated } from './recalculate.ts'

const folder = mkdtempSync(join(tmpdir(), 'kerfwright-workbook-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

/** Every good at a price that ends in half a cent, so that odd quantities end in half a cent too. */
const HALF_CENTS: PriceBook = {
  ...SAMPLE_BOOK,
  goods: SAMPLE_BOOK.goods.map((good, index) => ({
    ...good,
    price: unitPrice(good.price - (good.price % 100) + 50 + 100 * index),
  })),
}

/** Boards, goods, hours and joints stated by hand, a price of hours, and a line that is not there. */
const STATED =
  'lumber-30210-16: 21 at $20.0005; good-joist-hanger-2x10: 47; good-concrete-bag-80lb: at $6.125; ' +
  'labour-task-joist: 19.125 at $57.5; labour-task-layout-corner: 4; joint-decking-labour: 11 at $2.2222; good-gone: 3'

const HOSTILE = '=HYPERLINK("http://x","y") & _x0041_ \u0007 <b>½ " \' łódź'

const CASES: { readonly [name: string]: () => Promise<readonly [PricedEstimate, PriceBook]> } = {
  margin: async () => [await priced(), SAMPLE_BOOK],
  markup: async () => [
    await priced({
      pricing: { method: 'markup', markup: '42.5 %', salesTax: '8.87 %', priceTax: '4.45 %' },
    }),
    SAMPLE_BOOK,
  ],
  owner: async () => [await priced({ builder: 'owner' }), SAMPLE_BOOK],
  halves: async () => [await priced({}, HALF_CENTS), HALF_CENTS],
  truck: async () => [
    await priced({
      ground: { concrete: 'ready-mix', digging: 'machine auger', breakerDays: 2 },
      pricing: { dailySetUp: true },
    }),
    SAMPLE_BOOK,
  ],
  stated: async () => [await priced({ pricing: { lines: STATED } }), SAMPLE_BOOK],
  statedByOwner: async () => [await priced({ builder: 'owner', pricing: { lines: STATED } }), SAMPLE_BOOK],
  hostile: async () => [
    await priced({
      name: HOSTILE,
      costing: { bought: [{ what: HOSTILE, supplier: HOSTILE, receipt: HOSTILE, amount: 1 }] },
    }),
    SAMPLE_BOOK,
  ],
  // held against an estimate that it keeps
  underWay: async () => {
    const { costing, pricing } = UNDER_WAY
    return [await priced({ pricing: pricing ?? {}, costing: costing ?? {} }), SAMPLE_BOOK]
  },
  // held against the present estimate, with a line bought whole and one bought in part
  asBuilt: async () => [
    await priced({
      costing: {
        bought: [
          { line: 'good-joist-hanger-2x10', quantity: 17, amount: '$41.15' },
          { line: 'lumber-30210-16', quantity: 4, amount: '$99.01' },
        ],
        worked: [{ line: 'labour-task-joist', hours: 3.125 }],
      },
    }),
    SAMPLE_BOOK,
  ],
}

const made: { [name: string]: { estimate: PricedEstimate; file: Uint8Array; stored: Figures } } = {}
let worked: { readonly [name: string]: Figures } = {}

beforeAll(async () => {
  for (const [name, make] of Object.entries(CASES)) {
    const [estimate, book] = await make()
    const file = await makeWorkbook(estimate, book)
    made[name] = { estimate, file, stored: await figuresOf(file) }
  }
  worked = await recalculated(
    folder,
    Object.fromEntries(Object.entries(made).map(([name, { file }]) => [name, file])),
  )
}, 240_000)

describe('the sheet of what was built', () => {
  test('sums what was bought and worked as the core does, by its own formulas', () => {
    // worked by hand in the tests of costing
    const { names } = caseOf('underWay').worked
    expect(centsOf(names.get('direct_estimated'))).toBe(113_466)
    expect(centsOf(names.get('direct_actual'))).toBe(84_348)
    expect(centsOf(names.get('direct_open'))).toBe(36_773)
    expect(centsOf(names.get('direct_likely'))).toBe(121_121)
    expect(centsOf(names.get('left_likely'))).toBe(40_973)
  })

  test('is held against the direct cost of the present estimate where none is kept, and is left out of a job not begun', () => {
    const { estimate, worked: figures } = caseOf('asBuilt')
    expect(centsOf(figures.names.get('direct_estimated'))).toBe(estimate.pricing.totals.direct)
    expect(caseOf('margin').worked.names.has('direct_actual')).toBe(false)
  })
})

function caseOf(name: string) {
  const found = made[name]
  const figures = worked[name]
  if (found === undefined || figures === undefined) throw new Error(`${name} was not made`)
  return { ...found, worked: figures }
}

/** A money cell as cents; more than a millionth of a cent off is no rounding noise. */
function centsOf(value: unknown): number {
  const cents = Number(value) * 100
  expect(Math.abs(cents - Math.round(cents))).toBeLessThan(1e-6)
  return Math.round(cents)
}

describe.each(Object.keys(CASES))('the workbook of the demo (%s), worked out by LibreOffice', (name) => {
  test('gives every total to the cent as the core does', () => {
    const { estimate, worked: figures } = caseOf(name)
    const { totals } = estimate.pricing
    const expected = {
      material: totals.material,
      // whatever is costed is ordered
      order_total: totals.material,
      tax: totals.tax,
      labour: totals.labour,
      other: totals.other,
      direct: totals.direct,
      contingency: totals.contingency,
      ...(totals.method === 'none' ? {} : { overhead: totals.overhead, price: totals.price }),
      ...(totals.priceTax === 0 ? {} : { price_tax: totals.priceTax, price_with_tax: totals.priceWithTax }),
      cost: totals.cost,
      per_square_foot: totals.perSquareFoot,
      worker_hours: totals.workerHours,
      crew_hours: totals.crewHours,
    }
    const found = Object.fromEntries(
      Object.keys(expected).map((key) => [key, centsOf(figures.names.get(key))]),
    )
    expect(found).toEqual(expected)
  })

  test('gives in every cell what is stored for readers that do not calculate', () => {
    const { stored, worked: figures } = caseOf(name)
    expect(stored.cells.size).toBeGreaterThan(250)
    expect([...figures.cells.keys()].sort()).toEqual([...stored.cells.keys()].sort())
    const differing = [...stored.cells].filter(
      ([address, value]) => Math.abs(Number(value) - Number(figures.cells.get(address))) > 1e-9,
    )
    expect(differing).toEqual([])
  })
})

describe('prices changed in the workbook', () => {
  test('change the total as the core would', async () => {
    const dearer = {
      ...SAMPLE_BOOK,
      goods: SAMPLE_BOOK.goods.map((good) =>
        good.sku === 'joist-hanger-2x10' ? { ...good, price: unitPrice(99_990) } : good,
      ),
    }
    const book = await readBook(caseOf('margin').file)
    const order = book.getWorksheet('Order')
    order?.eachRow((row) => {
      if (String(row.getCell(1).value).startsWith('Joist hanger for a 2x10')) row.getCell(5).value = 9.999
    })
    const changed = new Uint8Array(await book.xlsx.writeBuffer())
    const { changed: figures } = await recalculated(join(folder, 'dearer'), { changed })
    const expected = (await priced({}, dearer)).pricing.totals
    expect(expected.price).toBeGreaterThan(caseOf('margin').estimate.pricing.totals.price)
    expect(centsOf(figures?.names.get('material'))).toBe(expected.material)
    expect(centsOf(figures?.names.get('price'))).toBe(expected.price)
  }, 120_000)

  test('a changed labour rate and a changed production rate change labour', async () => {
    const rates = SAMPLE_BOOK.rates.map((rate) =>
      rate.id === 'joist' ? { ...rate, crewHours: rate.crewHours * 2 } : rate,
    )
    const slower = { ...SAMPLE_BOOK, rates, labourRate: 7333 as PriceBook['labourRate'] }
    const book = await readBook(caseOf('margin').file)
    const hours = book.getWorksheet('Hours')
    hours?.eachRow((row) => {
      if (row.getCell(1).value === 'Loaded labour rate per worker hour') row.getCell(5).value = 73.33
      if (String(row.getCell(1).value).startsWith('Crown, cut, set'))
        row.getCell(5).value = Number(row.getCell(5).value) * 2
    })
    const changed = new Uint8Array(await book.xlsx.writeBuffer())
    const { changed: figures } = await recalculated(join(folder, 'slower'), { changed })
    const { totals } = (await priced({}, slower)).pricing
    expect(centsOf(figures?.names.get('labour'))).toBe(totals.labour)
    expect(centsOf(figures?.names.get('worker_hours'))).toBe(totals.workerHours)
  }, 120_000)
})

describe('the workbook as a file', () => {
  test('has its sheets, each with its page set up', async () => {
    const book = await readBook(caseOf('margin').file)
    expect(book.worksheets.map((sheet) => sheet.name)).toEqual([
      'Summary',
      'Order',
      'Cutting plan',
      'Members',
      'Hardware and concrete',
      'Ground',
      'Hours',
      'Cost',
      'Checks',
      'Joist marks',
      'Pieces by place',
    ])
    for (const sheet of book.worksheets) {
      expect(sheet.pageSetup).toMatchObject({ paperSize: 1, fitToPage: true, fitToWidth: 1, fitToHeight: 0 })
      expect(sheet.pageSetup.printArea).toMatch(/^A\$?1:/)
      expect(sheet.headerFooter.oddFooter).toMatch(/Page &P of &N/)
    }
  })

  test('repeats the headings of a table on the pages and the screens that it fills, and of no other one', async () => {
    const book = await readBook(caseOf('margin').file)
    const of = (name: string) => {
      const sheet = book.getWorksheet(name)
      return { repeated: sheet?.pageSetup.printTitlesRow ?? '', frozen: sheet?.views[0]?.state }
    }
    for (const name of ['Order', 'Cutting plan', 'Members', 'Checks'])
      expect(of(name), name).toEqual({ repeated: expect.stringMatching(/^\d+:\d+$/), frozen: 'frozen' })
    // footings, strings, concrete and digging stand below one another, each with headings of its own
    expect(of('Ground')).toEqual({ repeated: '', frozen: 'normal' })
    expect(of('Hardware and concrete')).toEqual({ repeated: '', frozen: 'frozen' })
  })

  test('has every joist mark and every piece, as the printed tables have them', async () => {
    const { file, estimate } = caseOf('margin')
    const book = await readBook(file)
    const words = (name: string) => {
      const all: string[] = []
      book.getWorksheet(name)?.eachRow((row) => row.eachCell((cell) => all.push(String(cell.value))))
      return all
    }
    const marks = words('Joist marks')
    for (const { mark } of estimate.frame.members.filter(({ role }) => role === 'joist'))
      expect(
        marks.some((text) => text.split(/[ ,]/).includes(mark)),
        mark,
      ).toBe(true)
    const pieces = words('Pieces by place')
    for (const { mark } of estimate.plans.flatMap(({ plan }) => plan.boards.flatMap(({ cuts }) => cuts)))
      expect(
        pieces.some((text) => text.split(/[ ,]/).includes(mark)),
        mark,
      ).toBe(true)
  })

  test('says in the order what waits for a designer, and how many of each', async () => {
    const { estimate, book: prices } = paperSource(
      CATALOGUE.find(({ file }) => file === 'wrap-hip.json')?.job ?? {},
      SAMPLE_BOOK,
      { quick: true },
    )
    const book = await readBook(await makeWorkbook(estimate, prices))
    const words: string[] = []
    book.getWorksheet('Order')?.eachRow((row) => words.push(String(row.getCell(1).value ?? '')))
    expect(words.find((text) => text.startsWith('Joist hanger for two 2x10, skewed'))).toContain('on hold, H')
    // J1 to J4 and J34 to J37 on the rims, J6 and J32 at the hip's end
    expect(words.find((text) => text.startsWith('Joist hanger for a 2x10, skewed'))).toContain(
      '10 on hold, H',
    )
    expect(words.join('\n')).toMatch(/H1: Rim that carries joists.*licensed designer/)
  })

  test('is the same bytes each time', async () => {
    const [estimate, book] = await (CASES.margin as NonNullable<typeof CASES.margin>)()
    const again = await makeWorkbook(estimate, book)
    expect(Buffer.from(again).equals(Buffer.from(caseOf('margin').file))).toBe(true)
  }, 60_000)

  test('keeps text that looks like a formula, a code or markup as text', async () => {
    const { file, worked: figures } = caseOf('hostile')
    const book = await readBook(file)
    const title = book.getWorksheet('Summary')?.getCell('A1')
    expect(title?.formula).toBeUndefined()
    expect(String(title?.value)).toContain('=HYPERLINK("http://x","y")')
    expect(String(title?.value)).not.toContain('\u0007')
    expect(figures.cells.has('Summary!A1')).toBe(false)
    expect(book.getWorksheet('Summary')?.headerFooter.oddFooter).toContain('&&')
  })

  test('names every mark of the frame in the member schedule and every piece in the cutting plan', async () => {
    const { file, estimate } = caseOf('margin')
    const book = await readBook(file)
    const words: string[] = []
    book.getWorksheet('Cutting plan')?.eachRow((row) => words.push(String(row.getCell(3).value ?? '')))
    const said = words.join(' · ')
    for (const { plan } of estimate.plans) {
      for (const cut of plan.boards.flatMap((board) => board.cuts)) expect(said).toContain(`${cut.mark} `)
    }
    let members = 0
    book.getWorksheet('Members')?.eachRow((row) => {
      if (row.getCell(1).value === 'All') members = Number(row.getCell(4).result)
    })
    expect(members).toBe(estimate.frame.members.length)
  })

  test('says where it rests on invented prices, and cautions', async () => {
    const book = await readBook(caseOf('margin').file)
    const words: string[] = []
    book.getWorksheet('Summary')?.eachRow((row) => row.eachCell((cell) => words.push(String(cell.value))))
    expect(words.join('\n')).toMatch(/These prices are invented/)
    expect(words.join('\n')).toMatch(/the building official govern/)
    expect(words.join('\n')).toMatch(/utilities marked before digging/)
  })
})
