import { type Cents, cents, fail, ok, type Result, shareOf, sumCents } from '../../units/index.ts'
import { auditPieces } from '../audit/audit-pieces.ts'
import type { LpEngine } from '../lp-port.ts'
import type { PlanOptions } from '../plan-cuts.ts'
import type { Board, CutJob, CutPlan } from '../types.ts'
import { type BoardState, boardStates } from './board-state.ts'
import { dayFaults } from './day-faults.ts'
import { type Begun, boardsThatCanStay, type Finish, finish } from './finish.ts'
import { sparesLying } from './stock-now.ts'
import type { BoardCount, BoardsToBuy, DayState, NoReplan, Replan } from './types.ts'

/**
 * Work for the plan that leaves no board as planned. Boards that lie there cost nothing, so that very many plans cost
 * the same and a proof would take minutes; a crew waits for the answer.
 */
const FREE_LIMITS = { columns: 3_000, nodes: 12, patterns: 1_500 }

/**
 * Plans the rest of a job that is begun: sawn pieces are kept where they were meant to go, boards lying there and
 * what is left of others cost nothing, and the cheapest purchase makes up for what is lacking. Of two ways that cost
 * the same, the one that leaves more boards as planned. Every plan in it is audited; a fault there is a bug and throws.
 */
export function replan(
  job: CutJob,
  plan: CutPlan,
  day: DayState,
  engine: LpEngine,
  options: PlanOptions = {},
): Result<Replan, NoReplan> {
  const wrong = dayFaults(job, plan, day)
  if (wrong.length > 0) return fail({ kind: 'day', faults: wrong })
  const { states, faults } = boardStates(job, plan, day)
  if (faults.length > 0) return fail({ kind: 'day', faults })
  const begun: Begun = { job, plan, day, states }
  if (nothingHappened(begun)) {
    const all = states.filter((state) => state.lacking.length > 0).map((state) => state.board.number)
    const asPlanned = finish(begun, new Set(all), engine, options)
    if (asPlanned.ok) return ok(made(begun, asPlanned.value, plan.status === 'proven optimal'))
  }
  const few = finish(begun, boardsThatCanStay(begun), engine, options)
  const free = finish(begun, new Set(), engine, { ...options, limits: { ...FREE_LIMITS, ...options.limits } })
  if (!free.ok && !few.ok) return fail({ kind: 'infeasible', infeasible: free.error })
  const chosen = few.ok && (!free.ok || few.value.total <= free.value.total) ? few : free
  if (!chosen.ok) return fail({ kind: 'infeasible', infeasible: chosen.error })
  const fewer = few.ok && chosen !== few ? made(begun, few.value, false) : null
  return ok({
    ...made(
      begun,
      chosen.value,
      free.ok && free.value.atLeast !== null && chosen.value.total <= free.value.atLeast,
    ),
    fewerChanges: fewer,
  })
}

/**
 * No board has a fault, and nothing can be had that the plan did not reckon with: no board beyond it lies there, and
 * the yard asks for none less than it did. A board more, or one for less, may save a joint of boards that are paid for.
 */
function nothingHappened({ job, plan, day, states }: Begun): boolean {
  if (states.some((state) => !state.asPlanned)) return false
  const valued = new Set(job.stock.filter((option) => option.offcut && option.price > 0).map(({ id }) => id))
  const given = day.spares.some(({ count }) => count > 0) || day.yard.some((entry) => cheaper(job, entry))
  // what is bought is paid for; an offcut with a value may still give way to a board that the yard now has for less
  const givesWay = (state: BoardState): boolean => day.yard.length > 0 && valued.has(state.board.stockId)
  if (!given && states.every((state) => state.bought && !givesWay(state))) return true
  return day.yard.length === 0 && job.stock.every((option) => sparesLying(plan, day, option.id) === 0)
}

/** The yard asks less for a board than for the cheapest count of it before. */
function cheaper(job: CutJob, { stockId, price }: DayState['yard'][number]): boolean {
  const option = job.stock.find((candidate) => candidate.id === stockId)
  if (option === undefined || price === null) return false
  return [option.price, ...(option.breaks ?? []).map((step) => step.price)].some((before) => price < before)
}

function made(begun: Begun, chosen: Finish, proven: boolean): Replan {
  const { job, plan, states } = begun
  const { staying, rest, lying, runPieces, joints, memberOrder } = chosen
  const sawn = states.filter((state) => state.made.length > 0).map((state) => boardAsSawn(state))
  const stays = states
    .filter((state) => staying.has(state.board.number))
    .map(({ board, lacking }) => ({ ...board, cuts: lacking }))
  mustMeetDemand(job, { ...plan, boards: [...sawn, ...stays, ...(rest?.plan.boards ?? [])], runPieces })
  const changed = states.filter((state) => !staying.has(state.board.number) && state.lacking.length > 0)
  const planned = plannedPurchase(begun)
  const buy = purchase(begun, chosen)
  const over = notUsed(begun, chosen)
  const jointCost = sumCents(joints.map((joint) => joint.cost))
  const now = sumCents(buy.map((line) => line.amount))
  const before = sumCents(planned.map((line) => line.amount))
  const jointsMore = cents(jointCost - plan.jointCost)
  return {
    sawn,
    stays,
    rest,
    lying,
    changed: changed.map((state) => state.board.number),
    again: changed.flatMap((state) =>
      state.lacking.map(({ pieceId, mark, length }) => ({ id: pieceId, mark, length })),
    ),
    buy,
    more: beyond(buy, planned),
    notToBuy: beyond(planned, buy),
    over,
    runPieces,
    joints,
    memberOrder,
    money: {
      planned: before,
      now,
      joints: jointsMore,
      extra: cents(now - before + jointsMore),
      refund: sumCents(over.map((line) => line.refund)),
    },
    fewerChanges: null,
    proven,
    why: whyOf(changed.length, rest !== null, proven),
  }
}

function boardAsSawn({ board, made: cuts }: BoardState): Board {
  return { ...board, cuts, offcut: 0 as Board['offcut'] }
}

function mustMeetDemand(job: CutJob, whole: CutPlan): void {
  const faults = auditPieces(job, whole)
  if (faults.length > 0) throw new Error(`rest of ${job.label}: ${JSON.stringify(faults)}`)
}

/** What the old plan still asked to be bought, at its prices. */
function plannedPurchase({ plan, states }: Begun): BoardsToBuy[] {
  return plan.order.flatMap(({ stockId, length, count, price, amount }) => {
    const own = states.filter((state) => state.board.stockId === stockId)
    const toBuy = own.filter((state) => !state.bought).length
    if (toBuy === 0) return []
    if (toBuy === own.length) return [{ stockId, length, count, price, amount }]
    return [{ stockId, length, count: toBuy, price, amount: cents(price * toBuy) }]
  })
}

function purchase({ job, plan, states }: Begun, { staying, rest }: Finish): BoardsToBuy[] {
  return job.stock.flatMap((option) => {
    if (option.offcut) return []
    const toBuy = states.filter(
      (state) => state.board.stockId === option.id && !state.bought && staying.has(state.board.number),
    ).length
    const again = rest?.plan.order.find((line) => line.stockId === option.id)
    const count = toBuy + (again?.count ?? 0)
    if (count === 0) return []
    const planned = plan.order.find((line) => line.stockId === option.id)
    const whole = plan.boards.filter((board) => board.stockId === option.id).length === toBuy
    if (again === undefined && whole && planned !== undefined) return [planned]
    const price = again?.price ?? planned?.price ?? option.price
    const amount = cents(toBuy * price + (again?.amount ?? 0))
    return [{ stockId: option.id, length: option.length, count, price, amount }]
  })
}

function beyond(some: readonly BoardCount[], others: readonly BoardCount[]): BoardCount[] {
  return some.flatMap(({ stockId, length, count }) => {
    const more = count - (others.find((line) => line.stockId === stockId)?.count ?? 0)
    return more > 0 ? [{ stockId, length, count: more }] : []
  })
}

/** Whole boards lying there that nothing is cut from. */
function notUsed({ job, day }: Begun, { lying, rest }: Finish): (BoardCount & { readonly refund: Cents })[] {
  return lying.flatMap(({ id, of, length, boards, spares }) => {
    if (of === null) return []
    const used = rest?.plan.boards.filter((board) => board.stockId === id).length ?? 0
    const count = boards.length + spares - used
    const price = job.stock.find((option) => option.id === of)?.price ?? cents(0)
    return count === 0
      ? []
      : [{ stockId: of, length, count, refund: cents(shareOf(price, day.refund) * count) }]
  })
}

function whyOf(changed: number, replanned: boolean, proven: boolean): string {
  if (changed === 0 && !replanned) return 'Everything is still sawn as planned.'
  return proven
    ? 'No other way to finish costs less, the sawn pieces kept where they were meant to go.'
    : 'No proof was made that this is the cheapest way to finish.'
}
