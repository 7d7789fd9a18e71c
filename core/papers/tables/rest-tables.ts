import type { Board, Replan } from '../../cutting/index.ts'
import type { ProductRest } from '../../plan-the-rest.ts'
import { printLength, printMoney, toFeet } from '../../units/index.ts'
import type { PaperTable } from '../types.ts'
import { tableOf } from './table.ts'

/** What is still to be bought, beside what the plan still asked for, and what can go back. */
export function restPurchaseTable({ label, replan }: ProductRest): PaperTable {
  const { buy, more, notToBuy, over } = replan
  const stocks = new Map([...buy, ...notToBuy, ...over].map((line) => [line.stockId, line.length]))
  const countOf = (
    lines: readonly { readonly stockId: string; readonly count: number }[],
    id: string,
  ): string => {
    const count = lines.find((line) => line.stockId === id)?.count ?? 0
    return count === 0 ? '' : `${count}`
  }
  return tableOf(
    'rest-purchase',
    `To buy: ${label}`,
    [
      ['code', 'Code', 'left'],
      ['length', 'Length', 'right'],
      ['buy', 'Buy', 'right'],
      ['more', 'More than planned', 'right'],
      ['less', 'No longer needed', 'right'],
      ['over', 'Lying there, over', 'right'],
      ['amount', 'Amount', 'right'],
    ],
    [...stocks].map(([id, length]) => {
      const amount = buy.find((line) => line.stockId === id)?.amount
      return {
        code: id,
        length: `${toFeet(length)} ft`,
        buy: countOf(buy, id),
        more: countOf(more, id),
        less: countOf(notToBuy, id),
        over: countOf(over, id),
        amount: amount === undefined ? '' : printMoney(amount),
      }
    }),
  )
}

/** Boards that are sawn otherwise from now on: what each is cut from, and its pieces in order. */
export function restCuttingTable({ label, replan }: ProductRest): PaperTable {
  return tableOf(
    'rest-cutting',
    `Cut otherwise: ${label}`,
    [
      ['from', 'From', 'left'],
      ['pieces', 'Pieces', 'left'],
      ['offcut', 'Left over', 'right'],
    ],
    restBoards(replan).map(({ from, board }) => ({
      from,
      pieces: board.cuts.map((cut) => `${cut.mark} ${printLength(cut.length)}`).join(' + '),
      offcut: board.offcut === 0 ? '' : printLength(board.offcut),
    })),
  )
}

/** Each board of the rest with where it comes from, in words. Boards lying there go by their numbers in the plan. */
export function restBoards({
  rest,
  lying,
}: Replan): readonly { readonly from: string; readonly board: Board }[] {
  const taken = new Map<string, number>()
  return (rest?.plan.boards ?? []).map((board) => {
    const source = lying.find((one) => one.id === board.stockId)
    const option = rest?.job.stock.find((one) => one.id === board.stockId)
    if (source === undefined) {
      const long = option?.offcut === true ? printLength(board.length) : `${toFeet(board.length)} ft`
      return { from: option?.offcut === true ? `offcut on hand, ${long}` : `a new ${long}`, board }
    }
    const turn = taken.get(source.id) ?? 0
    taken.set(source.id, turn + 1)
    const number = source.boards[turn]
    if (number === undefined) return { from: `a spare ${toFeet(board.length)} ft`, board }
    if (source.of !== null) return { from: `board ${number}, ${toFeet(board.length)} ft`, board }
    return { from: `what is left of board ${number}, ${printLength(board.length)}`, board }
  })
}
