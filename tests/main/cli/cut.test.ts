import { existsSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { readCutList, readDelimited } from '../../../core/cut-list/index.ts'
import { SAMPLE_BOOK, writePriceBook } from '../../../core/pricing/index.ts'
import { readBook } from '../exports/recalculate.ts'
import { runLine, scratch } from './run-line.ts'

const { at, write } = scratch()
const list = write(
  'list.csv',
  'Qty,Length,Mark,Product\n4,12\'-6",J1,2x10\n6,9 ft,J2,2x10\n10,3 ft,=B1,2x6\n',
)

describe('cut', () => {
  test('tells the order, the cutting sheet, cost, bound and proof, and which prices they rest on', async () => {
    const { code, said, warned } = await runLine('cut', list)
    expect(said).toContain(`Prices: ${SAMPLE_BOOK.name}, ${SAMPLE_BOOK.date}`)
    expect(said).toContain('These prices are invented')
    for (const words of ['Order', 'Cutting sheet', 'No less than', 'Proven.', `J1 12'-6"`]) {
      expect(said).toContain(words)
    }
    expect(said.split('\n').filter((line) => line.length > 110)).toEqual([])
    expect([code, warned]).toEqual([0, ''])
  })

  test('takes stock from a second file, which needs no prices', async () => {
    const stock = write('stock.csv', 'Length,Product\n16 ft,2x10\n20 ft,2x10\n12 ft,2x6\n')
    const { code, said } = await runLine('cut', list, '--stock', stock)
    expect(said).not.toContain('Prices:')
    expect(said).toContain('so the least length is bought')
    // by hand: with the kerf a 12 holds three pieces of 3 ft, so ten of them take four
    expect(said).toMatch(/48 ft +48 ft/)
    expect(code).toBe(0)
  })

  test('cuts with the kerf and trims that it is told', async () => {
    const halves = write('halves.csv', 'Qty,Length\n2,8 ft\n')
    const stock = write('sixteen.csv', 'Length\n16 ft\n')
    const boards = async (...words: string[]) => {
      const { said } = await runLine('cut', halves, '--stock', stock, '--json', ...words)
      return JSON.parse(said).result.plans[0].plan.boards.length
    }
    expect(await boards()).toBe(2)
    expect(await boards('--kerf', '0')).toBe(1)
    expect(await boards('--kerf', '0', '--trim', '1/2in')).toBe(2)
  })

  test('takes the prices of a file', async () => {
    const prices = write(
      'own.json',
      writePriceBook({ ...SAMPLE_BOOK, name: 'Own prices' }) as object | string,
    )
    expect((await runLine('cut', list, '--prices', prices)).said).toContain('Prices: Own prices')
  })

  test('reads columns as it is told', async () => {
    const bare = write('bare.csv', '4,150,2x10\n')
    expect((await runLine('cut', bare)).code).toBe(2)
    expect((await runLine('cut', bare, '--columns', 'quantity, length,product')).code).toBe(0)
  })

  test('writes a workbook of plan, order and cutting sheet beside the report', async () => {
    const { code, warned } = await runLine('cut', list, '--xlsx', at('list.xlsx'), '--csv', at('both.csv'))
    expect([code, warned]).toEqual([0, `CSV: ${at('both.csv')}\nWorkbook: ${at('list.xlsx')}\n`])
    const book = await readBook(readFileSync(at('list.xlsx')))
    expect(book.worksheets.map(({ name }) => name)).toEqual(['Plan', 'Order', 'Cutting sheet'])
  })

  test('writes a CSV file that reads back and holds no formula', async () => {
    const { code, warned } = await runLine('cut', list, '--csv', at('out.csv'))
    expect([code, warned]).toEqual([0, `CSV: ${at('out.csv')}\n`])
    const text = readFileSync(at('out.csv'), 'utf8')
    const sheet = readDelimited(text)
    if (!sheet.ok) throw new Error(sheet.error.message)
    const cells = sheet.value.flatMap((row) => row.cells)
    expect(cells).toContain("'=B1")
    expect(cells.filter((cell) => /^[=+\-@]/.test(cell))).toEqual([])
    const pieces = text.slice(text.indexOf('Pieces by board')).split('\r\n').slice(1).join('\r\n')
    const back = readCutList(pieces.replace('Board,Stock,', 'Board no,Stock length of it,'), {
      source: 'list',
    })
    if (!back.ok) throw new Error(JSON.stringify(back.error[0]))
    expect(back.value.pieces).toHaveLength(20)
    expect(back.value.pieces.filter(({ mark }) => mark === '=B1')).toHaveLength(10)
  })
})

describe('cut refuses', () => {
  test('a bad row with file, line, row and column, and writes nothing', async () => {
    const bad = write('bad.csv', 'Qty,Length\n4,9 ft\n3,12 fot\n0,3 ft\n')
    const { code, said, warned } = await runLine('cut', bad, '--csv', at('never.csv'))
    expect(warned).toContain(
      'bad.csv:3: row 3, column B (Length): "12 fot": "fot" is not a unit of length here',
    )
    expect(warned).toContain('bad.csv:4: row 4, column A (Qty): there are 0 of them')
    expect([code, said]).toEqual([2, ''])
    expect(existsSync(at('never.csv'))).toBe(false)
  })

  test('a bad row of the stock under the name of its file', async () => {
    const stock = write('bad-stock.csv', 'Length,Price\nx,5\n')
    const { code, warned } = await runLine('cut', list, '--stock', stock)
    expect(warned).toContain('bad-stock.csv:2: row 2, column A (Length): ')
    expect(code).toBe(2)
  })

  test('files that are not there, all of them', async () => {
    const { code, warned } = await runLine('cut', at('no.csv'), '--stock', at('none.csv'))
    expect(warned.match(/there is no such file/g)).toHaveLength(2)
    expect(code).toBe(2)
  })

  test.each([
    [['--kerf', '2 in'], '--kerf: Kerf is 2", more than 1/2"'],
    [['--kerf', 'thin'], '--kerf: Kerf is given as "thin"'],
    [['--trim', '-1'], '--trim: End trim is -1"'],
    [['--columns', 'length,qantity'], '--columns: there is no "qantity"; did you mean quantity?'],
    [['--hold', 'size'], '"cut" has no option --hold'],
  ])('%j', async (words, sentence) => {
    const { code, said, warned } = await runLine('cut', list, ...words)
    expect(warned).toContain(sentence)
    expect([code, said]).toEqual([2, ''])
  })

  test('foreign text cannot move the terminal', async () => {
    const { warned } = await runLine('cut', write('esc.csv', 'Length,Product\n9 ft,\u001b[31mred\n'))
    expect(warned).toContain('red')
    expect(warned).not.toContain('\u001b')
  })
})

describe('a list that is read but cannot be cut', () => {
  test('ends with 1, says which piece and what would help, and plans the other products', async () => {
    const long = write('long.csv', 'Length,Mark,Product\n30 ft,R,2x6\n3 ft,S,2x8\n')
    const { code, said, warned } = await runLine('cut', long, '--csv', at('part.csv'))
    expect(warned).toMatch(/long\.csv: Piece R of 2x6 .* 30 ft would do/)
    expect(said).toContain(`S 3'-0"`)
    expect(code).toBe(1)
    expect(existsSync(at('part.csv'))).toBe(true)
  })
})
