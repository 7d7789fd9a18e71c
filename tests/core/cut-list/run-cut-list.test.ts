import { beforeAll, describe, expect, test } from 'vitest'
import { type CutListRequest, faultWords, runCutList } from '../../../core/cut-list/index.ts'
import type { LpEngine } from '../../../core/cutting/index.ts'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { feet, inches } from '../../../core/units/index.ts'
import { loadEngine } from '../../../main/workers/lp/index.ts'

let engine: LpEngine
beforeAll(async () => {
  engine = await loadEngine()
})

const saw = { kerf: inches(1 / 8), endTrim: inches(0) }

function run(text: string, more: Partial<CutListRequest> = {}) {
  const answer = runCutList({ text, ...saw, ...more }, SAMPLE_BOOK, engine)
  if (!answer.ok) throw new Error(answer.faults.map(faultWords).join('\n'))
  return answer.result
}

function refused(text: string, more: Partial<CutListRequest> = {}) {
  const answer = runCutList({ text, ...saw, ...more }, SAMPLE_BOOK, engine)
  if (answer.ok) throw new Error('was planned')
  return answer.faults.map((fault) => `${fault.source}: ${faultWords(fault)}`)
}

const ordered = (text: string, more: Partial<CutListRequest> = {}) =>
  run(text, more).plans.map(({ product, plan }) => [
    product,
    plan.order.map(({ length, count }) => [length, count]),
    plan.cost,
  ])

describe('a list is planned', () => {
  test('one product after the other, each from the stock that names it', () => {
    // by hand: two 8 ft pieces fill a 16 but for the kerf, so each takes a 10; the 2x6 of 3 ft fit a 10 three times
    expect(
      ordered('Qty,Length,Product\n2,8 ft,2x4\n3,3 ft,2 X 6\n', {
        stockText: 'Length,Price,Product\n16 ft,9,2x4\n10 ft,5,2x4\n10 ft,6,2x6\n',
      }),
    ).toEqual([
      ['2x4', [[feet(10), 2]], 1000],
      ['2 X 6', [[feet(10), 1]], 600],
    ])
  })

  test('a kerf decides whether two halves come from one board, and a trim too', () => {
    const list = 'Qty,Length\n2,8 ft\n'
    const stockText = 'Length,Price\n16 ft,9\n'
    const boards = (more: Partial<CutListRequest>) =>
      run(list, { stockText, ...more }).plans[0]?.plan.boards.length
    expect(boards({ kerf: inches(0) })).toBe(1)
    expect(boards({ kerf: inches(1 / 32) })).toBe(2)
    expect(boards({ kerf: inches(0), endTrim: inches(1) })).toBe(2)
  })

  test('in packs, at least so many, and cheaper from a count on where that pays', () => {
    const list = 'Qty,Length\n5,9 ft\n'
    const buys = (row: string) =>
      ordered(list, { stockText: `Length,Price,Pack,Minimum,Break from,Break price\n${row}\n` })[0]
    // by hand: five boards; two packs of four are eight; seven are the least; five cost less as six from six on
    expect(buys('10 ft,6,,,,')).toEqual(['', [[feet(10), 5]], 3000])
    expect(buys('10 ft,6,4,,,')).toEqual(['', [[feet(10), 8]], 4800])
    expect(buys('10 ft,6,,7,,')).toEqual(['', [[feet(10), 7]], 4200])
    expect(buys('10 ft,6,,,6,4')).toEqual(['', [[feet(10), 6]], 2400])
    expect(buys('10 ft,6,,,6,5.90')).toEqual(['', [[feet(10), 5]], 3000])
  })

  test('from what is on hand first, where that costs nothing', () => {
    const { plans } = run(
      'Pieces\nQty,Length\n3,9 ft\nStock\nLength,Price\n10 ft,7\nOffcuts\nLength,Qty\n9 ft,2\n',
    )
    const [first] = plans
    expect(first?.plan.cost).toBe(700)
    const onHand = first?.stock.filter(({ offcut }) => offcut).map(({ id }) => id)
    expect(
      first?.plan.order.filter(({ stockId }) => onHand?.includes(stockId)).map(({ count }) => count),
    ).toEqual([2])
  })

  test('from the price book where it gives no stock, and says so with the book’s date', () => {
    const result = run('Qty,Length,Product\n2,9 ft,2x10\n')
    expect(result.book).toEqual({ name: SAMPLE_BOOK.name, date: SAMPLE_BOOK.date, invented: true })
    expect(result.remarks.join()).toContain('the price book’s')
    const price = SAMPLE_BOOK.lumber
      .find(({ product }) => product.size === '2x10')
      ?.stock.find(({ length }) => length === feet(10))?.price
    expect(result.plans[0]?.plan.cost).toBe(2 * Number(price))
  })

  test('by its least length where no stock has a price, and says so', () => {
    const result = run('Qty,Length\n5,5 ft\n', { stockText: 'Length\n12 ft\n16 ft\n' })
    const [first] = result.plans
    // 12s hold two each and 16s three: 12 + 16 = 28 ft is the least for five
    expect(first?.plan.order.map(({ length, count }) => [length, count])).toEqual([
      [feet(12), 1],
      [feet(16), 1],
    ])
    expect(Number(first?.plan.cost) * Number(first?.lengthUnit)).toBe(feet(28))
    expect(result.remarks.join()).toContain('least length')
    expect(result.book).toBeNull()
  })

  test('a piece that no board holds is said, with the other products planned', () => {
    const result = run('Length,Product,Mark\n30 ft,2x6,R\n3 ft,2x8,S\n')
    expect(result.plans.map(({ product }) => product)).toEqual(['2x8'])
    expect(result.infeasible).toMatchObject([{ subject: 'R', help: expect.stringContaining('30 ft') }])
  })

  test('too few boards are said', () => {
    const result = run('Qty,Length\n3,9 ft\n', { stockText: 'Length,Price,Supply\n10 ft,5,2\n' })
    expect(result.plans).toEqual([])
    expect(result.infeasible[0]?.message).toContain('do not suffice')
  })

  test('a piece without a mark is marked by its row', () => {
    expect(
      run('Length,Product\n3 ft,2x8\n\n4 ft,2x8').plans[0]?.plan.boards[0]?.cuts.map(({ mark }) => mark),
    ).toEqual(expect.arrayContaining(['#2', '#4']))
  })

  test('to the same bytes each time', () => {
    const text = 'Qty,Length,Product\n12,7 ft 3 in,2x6\n9,5 ft,2x6\n7,43,2x6\n'
    expect(JSON.stringify(run(text))).toBe(JSON.stringify(run(text)))
  })
})

describe('a list that cannot be planned is refused whole, at the row', () => {
  test.each<[string, string, Partial<CutListRequest>, RegExp]>([
    ['headings alone', 'Qty,Length\n', {}, /^list: the list has no pieces; /],
    [
      'neither stock nor product',
      'Length\n9 ft\n',
      {},
      /^list: row 2: no stock is given and no product is named; /,
    ],
    [
      'a product that is not listed',
      'Length,Product\n9 ft,3x9',
      {},
      /^list: row 2: no stock is given for "3x9".*2x4/,
    ],
    [
      'a row without product',
      'Length,Product\n9 ft,2x6\n8 ft,',
      {},
      /^list: row 3: this row names no product/,
    ],
    [
      'stock without product',
      'Length,Product\n9 ft,2x6\n8 ft,2x4',
      { stockText: 'Length,Product\n10 ft,2x6\n10 ft,\n' },
      /^stock: row 3: this stock names no product; name one of: 2x6, 2x4/,
    ],
    [
      'some lengths priced',
      'Length\n9 ft',
      { stockText: 'Length,Price\n10 ft,5\n12 ft,\n' },
      /^stock: row 3: this length has no price/,
    ],
    [
      'a bad row of stock',
      'Length\n9 ft',
      { stockText: 'Length,Price\n10 fot,5\n' },
      /^stock: row 2, column A/,
    ],
    [
      'a piece among the stock',
      'Length\n9 ft',
      { stockText: 'Kind,Length\nstock,10 ft\npiece,3 ft\n' },
      /^stock: row 3: a piece stands among the stock/,
    ],
  ])('%s', (_, text, more, words) => {
    expect(refused(text, more)[0]).toMatch(words)
  })

  test('a size that the price book has in two species is asked back', () => {
    const [entry] = SAMPLE_BOOK.lumber
    if (entry === undefined) throw new Error('the sample lists lumber')
    const two = {
      ...SAMPLE_BOOK,
      lumber: [entry, { ...entry, product: { ...entry.product, species: 'HF' as const }, code: '40204' }],
    }
    const text = `Length,Product\n9 ft,${entry.product.size}\n`
    const answer = runCutList({ text, ...saw }, two, engine)
    expect(answer).toMatchObject({ ok: false, faults: [{ row: 2, fix: expect.stringContaining('hem-fir') }] })
    expect(runCutList({ text: text.replace(entry.product.size, '40204'), ...saw }, two, engine).ok).toBe(true)
  })
})
