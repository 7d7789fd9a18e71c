import { describe, expect, test } from 'vitest'
import { faultWords, type Meaning, readCutList, type Source } from '../../../core/cut-list/index.ts'
import { feet, inches } from '../../../core/units/index.ts'

function read(text: string, source: Source = 'list', columns?: readonly Meaning[]) {
  const result = readCutList(text, columns === undefined ? { source } : { source, columns })
  if (!result.ok) throw new Error(result.error.map(faultWords).join('\n'))
  return result.value
}

function faults(text: string, source: Source = 'list', columns?: readonly Meaning[]): string[] {
  const result = readCutList(text, columns === undefined ? { source } : { source, columns })
  if (result.ok) throw new Error('was read')
  return result.error.map(faultWords)
}

const short = (text: string, source?: Source, columns?: readonly Meaning[]) =>
  read(text, source, columns).pieces.map(({ count, length, mark, product }) => [count, length, mark, product])

const studs = [
  [4, inches(150), 'J1', '2x10'],
  [2, feet(9), 'J2', '2x6'],
]

describe('one list, however it comes', () => {
  test.each([
    ['commas', 'Qty,Length,Mark,Size\n4,12\'-6",J1,2x10\n2,9 ft,J2,2x6\n'],
    ['tabs, pasted from a spreadsheet', 'Qty\tLength\tMark\tSize\n4\t12\'-6"\tJ1\t2x10\n2\t9 ft\tJ2\t2x6'],
    ['semicolons', 'Qty;Length;Mark;Size\n4;12\'-6";J1;2x10\n2;9 ft;J2;2x6\n'],
    ['quoted cells', '"Qty","Length","Mark","Size"\n"4","12\'-6""","J1","2x10"\n2,"9 ft","J2","2x6"\n'],
    ['CRLF and a byte order mark', '\uFEFFQty,Length,Mark,Size\r\n4,150,J1,2x10\r\n2,108,J2,2x6\r\n'],
    ['lone CR', 'Qty,Length,Mark,Size\r4,150,J1,2x10\r2,108,J2,2x6'],
    [
      'other words, another order, a unit',
      'Product,Label,Length (ft),Pieces\n2x10,J1,12.5,4\n2x6,J2,9,2.0\n',
    ],
    [
      'blank rows and spaces',
      '\n Qty , Length , Mark , Size \n\n 4 , 12\'-6" , J1 , 2x10 \n,,,\n2,9 ft,J2,2x6\n\n',
    ],
    ['no headings', '4,12\'-6",J1,2x10\n2,9 ft,J2,2x6\n'],
    ['no headings, another order', 'J1\t2x10\t12\'-6"\t4\nJ2\t2x6\t108\t2\n'],
  ])('%s', (_, text) => {
    expect(short(text)).toEqual(studs)
  })

  test('columns told from the left need no headings, and leave out what they call nothing', () => {
    expect(
      short('x,150,4,J1,2x10\ny,108,2,J2,2x6', 'list', ['nothing', 'length', 'quantity', 'mark', 'product']),
    ).toEqual(studs)
  })

  test('a single column of numbers is lengths in inches, one piece each', () => {
    expect(short('96\n48 1/2\n')).toEqual([
      [1, inches(96), '', ''],
      [1, inches(48.5), '', ''],
    ])
  })

  test('columns that are not read are told', () => {
    expect(read('Length,Where,Colour\n9 ft,porch,\n').ignored).toEqual(['Where', 'Colour'])
  })

  test('a mark may hold a separator or a line break in quotes, and keeps its row and line', () => {
    const list = read('Length,Mark\n9 ft,"a, b\nc"\n8 ft,d\n')
    expect(list.pieces.map(({ mark, row, line }) => [mark, row, line])).toEqual([
      ['a, b c', 2, 2],
      ['d', 3, 4],
    ])
  })
})

describe('stock', () => {
  test('comes in a block of the list under its own headings, offcuts in another', () => {
    const list = read(
      'Pieces\nQty,Length\n4,9 ft\n\nStock:\nLength,Price,Supply\n16 ft,$8.98,3\n20 ft,"$1,012.90",\n\nOffcuts\nLength\n10 ft\n',
    )
    expect(list.pieces).toHaveLength(1)
    expect(list.stock.map(({ length, price, supply, offcut }) => [length, price, supply, offcut])).toEqual([
      [feet(16), 898, 3, false],
      [feet(20), 101_290, null, false],
      [feet(10), null, 1, true],
    ])
  })

  test('comes in rows of its kind', () => {
    const list = read('Kind,Qty,Length,Price\npiece,4,9 ft,\nstock,,16 ft,9\nOffcut,2,10 ft,0\n')
    expect(list.pieces).toHaveLength(1)
    expect(list.stock.map(({ length, price, supply, offcut }) => [length, price, supply, offcut])).toEqual([
      [feet(16), 900, null, false],
      [feet(10), 0, 2, true],
    ])
  })

  test('comes in a text of its own', () => {
    const list = read('Code,Length,Price each\nA-16,16 ft,9.5\n', 'stock')
    expect(list.stock).toMatchObject([{ code: 'A-16', length: feet(16), price: 950, supply: null }])
  })
})

describe('how a length is bought', () => {
  const H = 'Length,Price,Pack,Minimum,Break from,Break price,Supply\n'

  test('comes in columns of its own, each left empty where nothing is to be said', () => {
    const list = read(`${H}16 ft,9,4,8,20,8.50,\n20 ft,12,,,,,6\n`, 'stock')
    expect(list.stock).toMatchObject([
      { pack: 4, minimum: 8, priceBreak: { from: 20, price: 850 }, supply: null },
      { pack: null, minimum: null, priceBreak: null, supply: 6 },
    ])
  })

  test.each<[string, string, RegExp]>([
    ['a pack of none', '16 ft,9,0,,,,', /^row 2, column C \(Pack\): there are 0 of them; /],
    [
      'a pack that is no number',
      '16 ft,9,few,,,,',
      /^row 2, column C \(Pack\): "few" is not a whole number; /,
    ],
    [
      'a pack larger than the supply',
      '16 ft,9,8,,,,6',
      /^row 2, column C .*8 at least are bought, and 6 are to be had; /,
    ],
    ['a least count above the supply', '16 ft,9,,7,,,6', /^row 2, column D .*7 at least are bought/],
    ['a count without its price', '16 ft,9,,,20,,', /^row 2, column E \(Break from\): .*no such price; /],
    [
      'a price without its count',
      '16 ft,9,,,,8,',
      /^row 2, column F \(Break price\): .*not from which count/,
    ],
    ['a break from one', '16 ft,9,,,1,8,', /^row 2, column E .*leaves none for the first price; /],
    ['a break with no price before it', '16 ft,,,,20,8,', /^row 2, column F .*none for one; /],
    ['a break price of nothing', '16 ft,9,,,20,0,', /^row 2, column F .*is no price of a board; /],
  ])('%s is a fault at its cell, and nothing is imported', (_, row, words) => {
    const answer = readCutList(`${H}${row}\n20 ft,12,,,,,\n`, { source: 'stock' })
    expect(answer.ok ? [] : answer.error.map(faultWords)).toEqual([expect.stringMatching(words)])
  })

  test('of an offcut is a fault: it is not bought', () => {
    const answer = readCutList('Offcuts\nLength,Qty,Pack\n9 ft,2,4\n', { source: 'list' })
    expect(answer.ok ? '' : answer.error.map(faultWords)).toEqual([
      expect.stringMatching(/^row 3, column C \(Pack\): an offcut on hand is not bought; /),
    ])
  })
})

describe('a fault names row and column, what is wrong and what would be right', () => {
  const H = 'Qty,Length,Mark\n'
  test.each<[string, string, RegExp]>([
    ['no length', `${H}4,,J1`, /^row 2, column B \(Length\): there is no length here; /],
    ['a word for a length', `${H}4,long,J1`, /^row 2, column B \(Length\): "long": .+; /],
    ['a unit that is none', `${H}4,12 fot,J1`, /^row 2, column B \(Length\): "12 fot": "fot" is not a unit/],
    ['a metric cell', `${H}4,1200 mm,J1`, /^row 2, column B .*feet and inches, not in "mm".*3'-11 1\/4"/],
    [
      'a metric column',
      'Qty,Length (mm)\n4,1200',
      /^row 1, column B \(Length \(mm\)\): .*give the lengths in inches/,
    ],
    ['off the grid', `${H}4,1/64,J1`, /^row 2, column B \(Length\): "1\/64": /],
    ['nothing long', `${H}4,0,J1`, /^row 2, column B \(Length\): "0" is not longer than nothing/],
    ['a negative length', `${H}4,-9 ft,J1`, /^row 2, column B \(Length\): "-9 ft" is not longer/],
    ['a decimal comma', 'Qty;Length\n4;12,5', /^row 2, column B \(Length\): "12,5": a length has no comma/],
    ['half a piece', `${H}1.5,9 ft,J1`, /^row 2, column A \(Qty\): "1.5" is not a whole number; /],
    ['no quantity', `${H},9 ft,J1`, /^row 2, column A \(Qty\): there is no number here; /],
    ['none of it', `${H}0,9 ft,J1`, /^row 2, column A \(Qty\): there are 0 of them; .*leave the row out/],
    ['too many', `${H}20001,9 ft,J1`, /^row 2, column A \(Qty\): 20001 is more than 20000; /],
    ['too many together', `${H}19999,9 ft,a\n1,8 ft,b\n1,7 ft,c`, /^row 4, column A \(Qty\): with this row/],
    ['a total row', `${H}4,9 ft,J1\n4,,`, /^row 3, column B \(Length\): .*leave the row out/],
    ['a cell too many', `${H}4,12 ft, 6 in,J1`, /^row 2, column D: this row has 4 cells .*quotation marks/],
    [
      'an endless mark',
      `${H}4,9 ft,${'x'.repeat(101)}`,
      /^row 2, column C \(Mark\): this has 101 characters; /,
    ],
    ['a quote left open', `${H}4,"9 ft,J1\n2,8 ft,J2`, /^row 2, column B: a quotation mark opens this cell/],
    ['text after a quote', `${H}4,"9" ft,J1`, /^row 2, column B: text follows the quotation mark/],
    [
      'two lengths',
      'Length,Qty,Cut length\n9 ft,1,8 ft',
      /^row 1, column C \(Cut length\): columns A \(Length\) and C/,
    ],
    [
      'two quantities',
      'Qty,Length,Count\n1,9 ft,1',
      /^row 1, column C \(Count\): .*could both be the quantity/,
    ],
    ['no length column', 'Qty,Dimension\n4,9 ft', /^row 1: no heading names the lengths; .*length, len/],
    [
      'plain numbers without headings',
      '4,96\n2,48',
      /^row 1: no column can be told .*headings in the first row/,
    ],
    [
      'a kind that is none',
      'Kind,Length\nbord,9 ft',
      /^row 2, column A \(Kind\): "bord" .*piece, stock or offcut/,
    ],
    ['a board for nothing', 'Kind,Length,Price\nstock,9 ft,0', /^row 2, column C \(Price\): "0" is no price/],
    ['a price in words', 'Kind,Length,Price\nstock,9 ft,cheap', /^row 2, column C \(Price\): "cheap": /],
    ['nothing', ' \n\n', /^the list is empty; write a row of headings/],
  ])('%s', (_, text, words) => {
    expect(faults(text)[0]).toMatch(words)
  })

  test('all faults are told, and nothing of the list is kept', () => {
    const result = readCutList('Qty,Length\n4,9 ft\nx,\n0,8 ft\n', { source: 'list' })
    expect(result).toMatchObject({ ok: false })
    expect(result).not.toHaveProperty('value')
    if (result.ok) return
    expect(result.error.map(({ row, column }) => [row, column])).toEqual([
      [3, 2],
      [3, 1],
      [4, 1],
    ])
  })

  test('a column past Z has two letters', () => {
    const heads = Array.from({ length: 27 }, (_, at) => `h${'abcdefghijklmnopqrstuvwxyz'[at % 26]}`)
    expect(faults(`Length,${heads.slice(1).join(',')},Qty\n9 ft,${heads.slice(1).join(',')},no`)[0]).toMatch(
      /^row 2, column AB \(Qty\): /,
    )
  })
})
