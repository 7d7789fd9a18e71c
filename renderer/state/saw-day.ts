import type { CutPlan, DayState } from '../../core/cutting/index.ts'
import type { RestAnswer } from '../../core/plan-the-rest.ts'
import { share, type Ticks } from '../../core/units/index.ts'

/** How the day goes with the boards of one product. It is kept with the job in the store, not in the job's file. */
export interface ProductDay {
  /** the boards it speaks of, by what is cut from them; see `boardsOf` */
  readonly boards: string
  readonly day: DayState
  /** how it was before each mark, the oldest first */
  readonly earlier: readonly DayState[]
  /** the newest answer, and the day that it answers */
  readonly answer: RestAnswer | null
  readonly answered: DayState | null
  readonly running: boolean
  readonly failure: string | null
}

/** By the id of the product's cutting plan. */
export interface SawDays {
  readonly [planId: string]: ProductDay
}

/** Marks that can be taken back. */
const MOST_EARLIER = 60

const NOTHING_YET: DayState = {
  bought: 'all',
  sawn: [],
  miscuts: [],
  culls: [],
  yard: [],
  spares: [],
  refund: share(0),
}

/** The boards of a plan and their cuts as one text: a day of other boards is not a day of this plan. */
export function boardsOf(plan: CutPlan): string {
  return JSON.stringify(
    plan.boards.map(({ number, stockId, cuts }) => [
      number,
      stockId,
      cuts.map(({ pieceId, length }) => [pieceId, length]),
    ]),
  )
}

/** A day on which nothing has happened: everything that was ordered has come, spares with it. */
export function newDay(plan: CutPlan, spares: DayState['spares']): ProductDay {
  return {
    boards: boardsOf(plan),
    day: { ...NOTHING_YET, spares },
    earlier: [],
    answer: null,
    answered: null,
    running: false,
    failure: null,
  }
}

export function isSawn(day: DayState, board: number): boolean {
  return day.sawn.some((entry) => entry.board === board)
}

/** Marks a board as sawn, all its pieces but those that came out wrong; or as not sawn. */
export function markSawn(day: DayState, board: number, sawn: boolean): DayState {
  const others = day.sawn.filter((entry) => entry.board !== board)
  if (sawn) return { ...day, sawn: [...others, { board, pieces: 'all' }] }
  return { ...day, sawn: others, miscuts: day.miscuts.filter((miscut) => miscut.board !== board) }
}

export function cull(day: DayState, board: number, from: Ticks, to: Ticks): DayState {
  return { ...day, culls: [...day.culls, { board, from, to }] }
}

/** A piece came out at another length, or is lost (null); its board is sawn then. */
export function spoil(day: DayState, board: number, pieceId: string, length: Ticks | null): DayState {
  const miscuts = day.miscuts.filter((miscut) => miscut.pieceId !== pieceId)
  return { ...markSawn(day, board, true), miscuts: [...miscuts, { board, pieceId, length }] }
}

/** Takes back everything that was said to be wrong with a board. */
export function forgive(day: DayState, board: number): DayState {
  return {
    ...day,
    culls: day.culls.filter((entry) => entry.board !== board),
    miscuts: day.miscuts.filter((miscut) => miscut.board !== board),
  }
}

/** What the yard has left of a length and asks for it; an entry that says nothing is dropped. */
export function atYard(day: DayState, entry: DayState['yard'][number]): DayState {
  const others = day.yard.filter(({ stockId }) => stockId !== entry.stockId)
  return { ...day, yard: entry.left === null && entry.price === null ? others : [...others, entry] }
}

/** Whether anything was said that would be lost. */
export function hasBegun({ day }: ProductDay): boolean {
  return day.sawn.length + day.culls.length + day.miscuts.length + day.yard.length > 0 || day.bought !== 'all'
}

/** The day with something marked; how it was can be had again. */
export function marked(state: ProductDay, day: DayState): ProductDay {
  return { ...state, day, earlier: [...state.earlier, state.day].slice(-MOST_EARLIER), running: false }
}

/** The day without its last mark; the same day where there is none. */
export function takenBack(state: ProductDay): ProductDay {
  const day = state.earlier.at(-1)
  return day === undefined ? state : { ...state, day, earlier: state.earlier.slice(0, -1), running: false }
}

/** A day as it was kept in the store; its plan of the rest is asked for anew. */
export function recalled({
  boards,
  day,
  earlier,
}: Pick<ProductDay, 'boards' | 'day' | 'earlier'>): ProductDay {
  return { boards, day, earlier, answer: null, answered: null, running: false, failure: null }
}
