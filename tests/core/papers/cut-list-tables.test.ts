import { describe, expect, test } from 'vitest'
import { runCutList } from '../../../core/cut-list/index.ts'
import * as papers from '../../../core/papers/index.ts'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { inches, parseLength } from '../../../core/units/index.ts'
import { engine } from '../../fixtures/engine.ts'

const saw = { kerf: inches(1 / 8), endTrim: inches(0) }

function planned(text: string, stockText = '') {
  const answer = runCutList({ text, stockText, ...saw }, SAMPLE_BOOK, engine)
  if (!answer.ok) throw new Error(JSON.stringify(answer.faults))
  return answer.result
}

const priced = planned(
  'Qty,Length,Mark\n5,5 ft,A\n2,7 ft 6 1/2 in,B\n',
  'Code,Length,Price\nY-12,12 ft,$9.10\n',
)
const unpriced = planned('Qty,Length\n5,5 ft\n', 'Length\n12 ft\n16 ft\n')
const mixed = planned(
  'Pieces\nQty,Length\n2,9 ft\nStock\nLength,Price\n10 ft,7\nOffcuts\nLength\n9 ft 6 in\n',
)

describe('papers of a cut list', () => {
  test('have a cell for every column in every row', () => {
    for (const result of [priced, unpriced, mixed]) {
      for (const table of [
        papers.cutListOrderTable(result),
        papers.cutListSheetTable(result),
        papers.cutListPiecesTable(result),
        papers.cutListBoundTable(result),
      ]) {
        const keys = table.columns.map(({ key }) => key).sort()
        for (const row of table.rows) expect(Object.keys(row).sort()).toEqual(keys)
      }
    }
  })

  test('the order’s amounts sum to the cost, under the yard’s own codes', () => {
    const { rows } = papers.cutListOrderTable(priced)
    // by hand: a 5 and a 7'-6 1/2" and two kerfs are over 12 ft, so the two long ones take a board each, the five
    // short ones three
    expect(rows).toEqual([
      { product: '', code: 'Y-12', length: '12 ft', count: '5', price: '$9.10', amount: '$45.50', from: '' },
    ])
    expect(papers.cutListBoundTable(priced).rows).toMatchObject([{ cost: '$45.50', bound: '$45.50' }])
  })

  test('boards that are cut alike share a row, with the numbers of all', () => {
    const { rows } = papers.cutListSheetTable(
      planned('Qty,Length,Mark\n3,9 ft,A\n1,8 ft,B\n', 'Length\n10 ft\n'),
    )
    expect(rows.map(({ boards, count, pieces, offcut }) => [boards, count, pieces, offcut])).toEqual([
      ['1–3', '3', `A 9'-0"`, '11 7/8"'],
      ['4', '1', `B 8'-0"`, `1'-11 7/8"`],
    ])
  })

  test('stock without prices shows lengths and no money', () => {
    expect(papers.cutListBoundTable(unpriced).rows).toMatchObject([{ cost: '28 ft', bound: '28 ft' }])
    expect(JSON.stringify(papers.cutListRows(unpriced))).not.toContain('$')
  })

  test('what is on hand is said to be, and has no price', () => {
    const { rows } = papers.cutListOrderTable(mixed)
    expect(rows.find(({ from }) => from === 'on hand')).toMatchObject({
      length: `9'-6"`,
      price: '',
      amount: '',
    })
  })

  test('pieces stand on their board in order, a kerf apart, each of its own length', () => {
    const { rows } = papers.cutListPiecesTable(priced)
    expect(rows).toHaveLength(7)
    const length = (text: string | undefined) => {
      const read = parseLength(text ?? '')
      if (!read.ok) throw new Error(read.error.message)
      return read.value
    }
    for (const [index, row] of rows.entries()) {
      expect(length(row.to) - length(row.from)).toBe(length(row.length))
      const before = rows[index - 1]
      if (before?.board === row.board) expect(length(row.from) - length(before?.to)).toBe(saw.kerf)
    }
  })
})
