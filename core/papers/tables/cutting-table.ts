import type { Estimate } from '../../estimate-types.ts'
import { printLength, toFeet } from '../../units/index.ts'
import { cutWords } from '../cutting/cut-words.ts'
import type { PaperTable } from '../types.ts'
import { tableOf } from './table.ts'

/** Every board with its pieces in the order in which they are cut, and what is left of it. */
export function cuttingTable({ plans }: Pick<Estimate, 'plans'>): PaperTable {
  return tableOf(
    'cutting',
    'Cutting plan',
    [
      ['size', 'Size', 'left'],
      ['board', 'Board', 'right'],
      ['stock', 'Stock', 'right'],
      ['pieces', 'Pieces', 'left'],
      ['offcut', 'Left over', 'right'],
    ],
    plans.flatMap(({ product, plan }) =>
      plan.boards.map((board) => ({
        size: product.size,
        board: `${board.number}`,
        stock: `${toFeet(board.length)} ft`,
        pieces: board.cuts.map(cutWords).join(' + '),
        offcut: board.offcut === 0 ? '' : printLength(board.offcut),
      })),
    ),
  )
}
