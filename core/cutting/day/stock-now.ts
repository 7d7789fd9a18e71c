import { shareOf, type Ticks } from '../../units/index.ts'
import type { CutJob, CutPlan, RunGroup, StockOption } from '../types.ts'
import type { BoardState } from './board-state.ts'
import type { DayState, Lying } from './types.ts'

/** What the rest may be cut from. */
export interface StockNow {
  readonly stock: readonly StockOption[]
  readonly lying: readonly Lying[]
}

/** The stock option as the yard has it now. */
export function atTheYard(option: StockOption, day: DayState): StockOption {
  const said = day.yard.find((entry) => entry.stockId === option.id)
  if (said === undefined) return option
  return {
    ...option,
    price: said.price ?? option.price,
    // a new price is the yard's word for any count
    ...(said.price === null ? {} : { breaks: [] }),
  }
}

/** How many more of a stock the yard can give: what it says it has left, else its supply less what was bought. */
export function leftAtTheYard(option: StockOption, day: DayState, bought: number): number | null {
  const said = day.yard.find((entry) => entry.stockId === option.id)
  if (said !== undefined) return said.left
  return option.supply === null ? null : Math.max(0, option.supply - bought)
}

/** Whole boards lying there beyond the boards of the plan: remainders of packs, and spares. */
export function sparesLying(plan: CutPlan, day: DayState, stockId: string): number {
  const ordered = plan.order.find((line) => line.stockId === stockId)?.count ?? 0
  const planned = plan.boards.filter((board) => board.stockId === stockId).length
  const remainder = day.bought === 'all' ? Math.max(0, ordered - planned) : 0
  return (
    remainder +
    day.spares.filter((entry) => entry.stockId === stockId).reduce((sum, entry) => sum + entry.count, 0)
  )
}

/**
 * Stock of the rest: whole boards lying there at what the yard would pay back for them, what is left of others and
 * offcuts on hand for nothing, and the yard at its price of now.
 * @param staying numbers of the boards that are sawn as planned
 */
export function stockNow(
  job: CutJob,
  plan: CutPlan,
  day: DayState,
  states: readonly BoardState[],
  staying: ReadonlySet<number>,
  shortest: number,
): StockNow {
  const lying: Lying[] = []
  const stock: StockOption[] = []
  for (const option of job.stock) {
    const own = states.filter((state) => state.board.stockId === option.id)
    const free = own.filter((state) => state.whole && state.bought && !staying.has(state.board.number))
    if (option.offcut) {
      const gone = own.length - free.length
      stock.push({ ...option, supply: option.supply === null ? null : Math.max(0, option.supply - gone) })
      continue
    }
    const spares = sparesLying(plan, day, option.id)
    if (free.length + spares > 0) {
      const id = `${option.id}, lying there`
      const boards = free.map((state) => state.board.number)
      lying.push({ id, of: option.id, length: option.length, boards, spares })
      const price = shareOf(option.price, day.refund)
      stock.push({ id, length: option.length, price, supply: free.length + spares, offcut: false })
    }
  }
  for (const [length, boards] of leftOver(states, staying)) {
    if (length < shortest) continue
    const id = `left over, ${length}/32 in`
    lying.push({ id, of: null, length, boards, spares: 0 })
    stock.push({ id, length, price: 0 as StockOption['price'], supply: boards.length, offcut: true })
  }
  for (const option of job.stock) {
    if (option.offcut) continue
    const bought = states.filter(
      (state) => state.board.stockId === option.id && (state.bought || staying.has(state.board.number)),
    )
    const toBuy = states.filter(
      (state) => state.board.stockId === option.id && !state.bought && staying.has(state.board.number),
    )
    const gone = bought.length - toBuy.length
    const left = leftAtTheYard(option, day, gone)
    stock.push({ ...atTheYard(option, day), supply: left === null ? null : Math.max(0, left - toBuy.length) })
  }
  return { stock, lying }
}

/** Good lengths left of boards, each with the boards it is left of; longest first. */
function leftOver(states: readonly BoardState[], staying: ReadonlySet<number>): [Ticks, number[]][] {
  const found = new Map<Ticks, number[]>()
  for (const state of states) {
    const { board } = state
    const lengths = staying.has(board.number) ? state.leftAsPlanned : state.usable
    for (const length of lengths) {
      if (length > 0) found.set(length, [...(found.get(length) ?? []), board.number])
    }
  }
  return [...found].sort((a, b) => b[0] - a[0])
}

/** No piece that may be wanted is shorter than this. */
export function shortestWanted(
  pieces: readonly { readonly length: Ticks }[],
  runs: readonly RunGroup[],
): number {
  const lengths: number[] = pieces.map((piece) => piece.length)
  for (const run of runs) {
    const places = [0, ...run.points.map((point) => point.at), run.length]
    const gaps = places.slice(1).map((at, index) => at - (places[index] ?? 0))
    lengths.push(Math.min(run.length, Math.max(run.minPiece, Math.min(...gaps))))
  }
  return Math.min(...lengths)
}
