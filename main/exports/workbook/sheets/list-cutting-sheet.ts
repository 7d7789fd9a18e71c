import type { CutListResult } from '../../../../core/cut-list/index.ts'
import type { Board } from '../../../../core/cutting/index.ts'
import { cutWords } from '../../../../core/papers/index.ts'
import { empty, formula, inchesOf, number, text } from '../cell.ts'
import { type Sheet, SheetBuilder } from '../sheet.ts'
import { nameOf, stockWords } from './list-order-sheet.ts'

const CUTTING = 'Cutting sheet'

/** Where the sheet has the lengths of one product: of all its boards, of what is in pieces, and of what is left over. */
export interface ListLengths {
  readonly boards: string
  readonly pieces: string
  readonly left: string
}

/** Which piece comes from which board, in the order it is cut; lengths in inches, so that they can be summed. */
export function listCuttingSheet({ plans }: CutListResult): {
  sheet: Sheet
  lengths: ReadonlyMap<string, ListLengths>
} {
  const sheet = new SheetBuilder(CUTTING, [8, 11, 82, 12, 12, 14, 12], true)
  const lengths = new Map<string, ListLengths>()
  sheet.title(CUTTING)
  sheet.note(
    'Cut from the left end in the order given. Where a piece runs wild, its length as cut is given, and the length to which it is cut in place.',
  )
  sheet.gap()
  sheet.header([
    'Board',
    'Stock',
    'Pieces, mark and length',
    '>Board, in',
    '>In pieces, in',
    '>Kerfs and trims, in',
    '>Left over, in',
  ])
  for (const each of plans) {
    const { boards } = each.plan
    if (boards.length === 0) continue
    sheet.group(nameOf(each))
    const first = sheet.next
    for (const board of boards) writeBoard(sheet, board)
    const last = sheet.next - 1
    const sum = (column: string, of: (board: Board) => number) =>
      formula(
        `SUM(${column}${first}:${column}${last})`,
        inchesOf(boards.reduce((all, board) => all + of(board), 0)),
        'inches',
        { bold: true },
      )
    const row = sheet.row([
      empty,
      empty,
      text('In all', { soft: true, rule: 'thin' }),
      sum('D', ({ length }) => length),
      sum('E', used),
      sum('F', sawn),
      sum('G', ({ offcut }) => offcut),
    ])
    const at = (column: string) => `'${CUTTING}'!${column}${row}`
    lengths.set(each.plan.jobId, { boards: at('D'), pieces: at('E'), left: at('G') })
  }
  return { sheet: sheet.done(), lengths }
}

function writeBoard(sheet: SheetBuilder, board: Board): void {
  const row = sheet.next
  sheet.row([
    text(`${board.number}`),
    text(stockWords(board.length)),
    text(board.cuts.map(cutWords).join('  ·  '), { wrap: true }),
    number(inchesOf(board.length), 'inches'),
    number(inchesOf(used(board)), 'inches'),
    number(inchesOf(sawn(board)), 'inches'),
    formula(`D${row}-E${row}-F${row}`, inchesOf(board.offcut), 'inches'),
  ])
}

function used(board: Board): number {
  return board.cuts.reduce((sum, cut) => sum + cut.length, 0)
}

function sawn(board: Board): number {
  return board.length - used(board) - board.offcut
}
