import type { CutListResult, ListPlan } from '../../cut-list/index.ts'
import type { Board } from '../../cutting/index.ts'
import { cents, printLength, printMoney, type Ticks, ticks, toFeet } from '../../units/index.ts'
import { cutWords, inPlace } from '../cutting/cut-words.ts'
import type { PaperTable } from '../types.ts'
import { tableOf } from './table.ts'

/** What to buy for a cut list, and what is taken from what is on hand. */
export function cutListOrderTable({ plans }: Pick<CutListResult, 'plans'>): PaperTable {
  return tableOf(
    'cut-list-order',
    'Order',
    [
      ['product', 'Product', 'left'],
      ['code', 'Code', 'left'],
      ['length', 'Length', 'right'],
      ['count', 'Count', 'right'],
      ['price', 'Each', 'right'],
      ['amount', 'Amount', 'right'],
      ['from', '', 'left'],
    ],
    plans.flatMap(({ product, stock, lengthUnit, plan }) =>
      plan.order.map((ordered) => {
        const named = stock.find(({ id }) => id === ordered.stockId)
        const priced = lengthUnit === null && !(named?.offcut === true && ordered.price === 0)
        return {
          product,
          code: named?.code ?? '',
          length: stockLength(ordered.length),
          count: `${ordered.count}`,
          price: priced ? printMoney(ordered.price) : '',
          amount: priced ? printMoney(ordered.amount) : '',
          from: named?.offcut === true ? 'on hand' : '',
        }
      }),
    ),
  )
}

/** The boards of a cut list with their pieces in the order in which they are cut; boards cut alike share a row. */
export function cutListSheetTable({ plans }: Pick<CutListResult, 'plans'>): PaperTable {
  return tableOf(
    'cut-list-sheet',
    'Cutting sheet',
    [
      ['product', 'Product', 'left'],
      ['boards', 'Boards', 'right'],
      ['count', 'Count', 'right'],
      ['stock', 'Stock', 'right'],
      ['pieces', 'Pieces of each', 'left'],
      ['offcut', 'Left over', 'right'],
    ],
    plans.flatMap(({ product, plan }) =>
      [...Map.groupBy(plan.boards, cutLike).values()].map((boards) => ({
        product,
        boards: ranges(boards.map(({ number }) => number)),
        count: `${boards.length}`,
        stock: stockLength(boards[0]?.length ?? ticks(0)),
        pieces: piecesOf(boards[0]),
        offcut: boards[0] === undefined || boards[0].offcut === 0 ? '' : printLength(boards[0].offcut),
      })),
    ),
  )
}

function cutLike(board: Board): string {
  return `${board.stockId} ${piecesOf(board)}`
}

function piecesOf(board: Board | undefined): string {
  return (board?.cuts ?? []).map(cutWords).join(' + ')
}

/** Numbers that rise, with those that follow each other drawn together: 1–3, 7. */
function ranges(numbers: readonly number[]): string {
  const runs: { from: number; to: number }[] = []
  for (const number of numbers) {
    const last = runs.at(-1)
    if (last !== undefined && last.to === number - 1) last.to = number
    else runs.push({ from: number, to: number })
  }
  return runs.map(({ from, to }) => (from === to ? `${from}` : `${from}–${to}`)).join(', ')
}

/** One row a piece, for a spreadsheet: where on its board it is cut, in feet and inches. */
export function cutListPiecesTable({ plans }: Pick<CutListResult, 'plans'>): PaperTable {
  const wild = someRunsWild(plans)
  return tableOf<string>(
    'cut-list-pieces',
    'Pieces by board',
    [
      ['product', 'Product', 'left'],
      ['board', 'Board', 'right'],
      ['stock', 'Stock', 'right'],
      ['mark', 'Mark', 'left'],
      ['length', 'Length', 'right'],
      ['from', 'From', 'right'],
      ['to', 'To', 'right'],
      ...(wild ? [['inPlace', 'Cut in place to', 'right'] as const] : []),
    ],
    plans.flatMap(({ product, plan }) =>
      plan.boards.flatMap((board) =>
        board.cuts.map((cut) => {
          const row: { readonly [column: string]: string } = {
            product,
            board: `${board.number}`,
            stock: printLength(board.length),
            mark: cut.mark,
            length: printLength(cut.length),
            from: printLength(cut.from),
            to: printLength(cut.to),
            ...(wild ? { inPlace: inPlace(cut) } : {}),
          }
          return row
        }),
      ),
    ),
  )
}

function someRunsWild(plans: CutListResult['plans']): boolean {
  return plans.some(({ plan }) => plan.boards.some(({ cuts }) => cuts.some((cut) => cut.wild !== undefined)))
}

/** What the plan of each product costs, what none can go below, and whether that is proven. */
export function cutListBoundTable({ plans }: Pick<CutListResult, 'plans'>): PaperTable {
  return tableOf(
    'cut-list-bound',
    'How good the plan is',
    [
      ['product', 'Product', 'left'],
      ['boards', 'Boards', 'right'],
      ['cost', 'Cost', 'right'],
      ['bound', 'No less than', 'right'],
      ['used', 'Used', 'right'],
      ['why', '', 'left'],
    ],
    plans.map((each) => {
      const { product, plan } = each
      const { used, kerf, trim, kept, thrown } = plan.waste
      const whole = used + kerf + trim + kept + thrown
      return {
        product,
        boards: `${plan.boards.length}`,
        cost: listCost(each, plan.cost),
        bound: listCost(each, plan.bound),
        used: whole === 0 ? '' : `${Math.floor((used * 100) / whole)} %`,
        why:
          plan.status === 'proven optimal'
            ? `Proven. ${plan.why}`
            : `Within ${listCost(each, plan.gap)}. ${plan.why}`,
      }
    }),
  )
}

/** A cost of a list's plan: money, or the length bought where its stock has no prices. */
export function listCost({ lengthUnit }: Pick<ListPlan, 'lengthUnit'>, amount: number): string {
  return lengthUnit === null ? printMoney(cents(amount)) : printFeet(amount * lengthUnit)
}

/** A long sum of lengths may go beyond the longest single one. */
function printFeet(length: number): string {
  return `${Math.round((toFeet(length) + Number.EPSILON) * 100) / 100} ft`
}

function stockLength(length: Ticks): string {
  return length % ticks(384) === 0 ? `${toFeet(length)} ft` : printLength(length)
}

/** Order, then pieces by board, each under its title and headings: rows for one sheet. */
export function cutListRows(result: Pick<CutListResult, 'plans'>): readonly (readonly string[])[] {
  const rowsOf = ({ title, columns, rows }: PaperTable) => [
    [title],
    columns.map(({ label }) => label),
    ...rows.map((row) => columns.map(({ key }) => row[key] ?? '')),
  ]
  return [...rowsOf(cutListOrderTable(result)), [], ...rowsOf(cutListPiecesTable(result))]
}
