import { ok, type Result, shareOf } from '../../units/index.ts'
import { auditPlan } from '../audit/audit-plan.ts'
import { boughtByCount, offcutWorth } from '../audit/stock-rules.ts'
import type { LpEngine } from '../lp-port.ts'
import { type PlanOptions, planCuts } from '../plan-cuts.ts'
import type { Board, CutJob, CutPlan, Infeasible, PlannedJoint, RunPiece } from '../types.ts'
import type { BoardState } from './board-state.ts'
import { keepNames } from './keep-names.ts'
import { inItsMember, remainderOf } from './remainder.ts'
import { atTheYard, leftAtTheYard, shortestWanted, stockNow } from './stock-now.ts'
import type { DayState, Lying } from './types.ts'
import { staggerExcess, wholeRuns } from './whole-runs.ts'

/** One way to finish: the boards that are sawn as planned, and a plan of the rest. */
export interface Finish {
  readonly staying: ReadonlySet<number>
  readonly rest: { readonly job: CutJob; readonly plan: CutPlan } | null
  readonly lying: readonly Lying[]
  readonly runPieces: readonly RunPiece[]
  readonly joints: readonly PlannedJoint[]
  readonly memberOrder: CutPlan['memberOrder']
  /** what is paid from now on, joints of the whole job and preferences; boards lying there at what they would bring back */
  readonly total: number
  /** no finish with these boards staying has a total below this; null where nothing is proven of it */
  readonly atLeast: number | null
}

export interface Begun {
  readonly job: CutJob
  readonly plan: CutPlan
  readonly day: DayState
  readonly states: readonly BoardState[]
}

/** Boards that can still be sawn as planned: nothing went wrong on them, and they are there or can be had at their price. */
export function boardsThatCanStay({ job, plan, day, states }: Begun): Set<number> {
  const staying = new Set<number>()
  for (const option of job.stock) {
    const own = states.filter(
      (state) => state.board.stockId === option.id && state.asPlanned && state.lacking.length > 0,
    )
    for (const state of own) if (state.bought) staying.add(state.board.number)
    const bought = states.filter((state) => state.board.stockId === option.id && state.bought).length
    const left = leftAtTheYard(option, day, bought)
    const now = atTheYard(option, day)
    const orderedAt = plan.order.find((line) => line.stockId === option.id)?.price
    if (boughtByCount(option) || now.price !== orderedAt) continue
    const toBuy = own.filter((state) => !state.bought)
    for (const state of left === null ? toBuy : toBuy.slice(0, left)) staying.add(state.board.number)
  }
  return staying
}

/**
 * The least-cost way to finish with some boards sawn as planned. Sawn and new pieces of one run must keep its rules
 * together; where they do not, the joints of that run stay as planned. Throws where an audit finds a fault: a bug.
 */
export function finish(
  begun: Begun,
  staying: ReadonlySet<number>,
  engine: LpEngine,
  options: PlanOptions,
): Result<Finish, Infeasible> {
  const { job, plan, day, states } = begun
  const settled = new Set<string>()
  for (const { made, lacking, board } of states) {
    for (const cut of made) settled.add(cut.pieceId)
    if (staying.has(board.number)) for (const cut of lacking) settled.add(cut.pieceId)
  }
  const kept = plan.runPieces.filter((piece) => settled.has(piece.id))
  const begunRuns = new Set(kept.map((piece) => piece.runId))
  const frozen = new Set<string>()
  for (;;) {
    const left = remainderOf(job, plan, settled, frozen)
    const { stock, lying } = stockNow(job, plan, day, states, staying, shortestWanted(left.pieces, left.runs))
    const restJob = jobOfTheRest(job, left, stock, states)
    const nothingLeft = left.pieces.length === 0 && left.runs.length === 0
    const planned = nothingLeft ? null : planCuts(restJob, engine, options)
    if (planned !== null && !planned.ok) return planned
    const rest = planned === null ? null : { job: restJob, plan: keepNames(restJob, plan, planned.value) }
    if (rest !== null) mustBeSound(rest.job, rest.plan)
    const runPieces = [
      ...kept,
      ...left.planned.values(),
      ...(rest?.plan.runPieces ?? []).map((piece) => inItsMember(piece, left.places)),
    ]
    const orders = new Map(
      [
        ...plan.memberOrder.filter((order) => frozen.has(order.runId)),
        ...(rest?.plan.memberOrder ?? []).filter((order) => !begunRuns.has(order.runId)),
      ].map((order) => [order.runId, order.memberIds]),
    )
    const whole = wholeRuns(job, plan, runPieces, orders)
    if (whole.kind === 'at odds') {
      const next = whole.runs.filter((id) => begunRuns.has(id) && !frozen.has(id))
      if (next.length < whole.runs.length)
        throw new Error(`runs ${whole.runs.join(', ')} of the rest break their rules`)
      for (const id of next) frozen.add(id)
      continue
    }
    const { joints, memberOrder } = whole
    const excess = staggerExcess(job.runs, joints)
    const decided = settledJoints(job, kept)
    const apart = staggerExcess(job.runs, decided) + staggerExcess(restJob.runs, rest?.plan.joints ?? [])
    const total = moneyFromNow(begun, staying, rest) + sum(joints.map((joint) => joint.cost)) + excess
    const gap = rest === null ? 0 : rest.plan.cost + rest.plan.preference - rest.plan.bound
    return ok({
      staying,
      rest,
      lying,
      runPieces,
      joints,
      memberOrder,
      total,
      atLeast: frozen.size === 0 && excess === apart ? total - gap : null,
    })
  }
}

function jobOfTheRest(
  job: CutJob,
  left: Pick<CutJob, 'pieces' | 'runs'>,
  stock: CutJob['stock'],
  states: readonly BoardState[],
): CutJob {
  const { onlyStock, atMost, maxLengths: _aRuleForOneOrder, ...rest } = job
  const own = new Set(job.stock.map((option) => option.id))
  const made = stock.filter((option) => !own.has(option.id)).map((option) => option.id)
  const boughtOf = (stockId: string): number =>
    states.filter((state) => state.board.stockId === stockId && state.bought).length
  return {
    ...rest,
    stock,
    pieces: left.pieces,
    runs: left.runs,
    objectives: ['least cost'],
    ...(onlyStock === undefined ? {} : { onlyStock: [...onlyStock, ...made] }),
    ...(atMost === undefined
      ? {}
      : {
          atMost: atMost.map(({ stockId, count }) => ({
            stockId,
            count: Math.max(0, count - boughtOf(stockId)),
          })),
        }),
  }
}

function mustBeSound(job: CutJob, plan: CutPlan): void {
  const faults = auditPlan(job, plan)
  if (faults.length > 0) throw new Error(`rest of ${job.label}: ${JSON.stringify(faults)}`)
}

/** Joints at the ends of settled pieces, each once. */
function settledJoints(job: CutJob, kept: readonly RunPiece[]): { runId: string; at: number }[] {
  const found = new Map<string, { runId: string; at: number }>()
  for (const { runId, memberId, from, to } of kept) {
    const length = job.runs.find((run) => run.id === runId)?.length
    for (const at of [from, to])
      if (at > 0 && at !== length) found.set(`${runId}|${memberId}|${at}`, { runId, at })
  }
  return [...found.values()]
}

/** Boards from now on, handling and cuts weighed as in a plan. */
function moneyFromNow(
  { job, day, states }: Begun,
  staying: ReadonlySet<number>,
  rest: Finish['rest'],
): number {
  const preferenceOf = (board: Board, of: CutJob): number => {
    const option = of.stock.find((candidate) => candidate.id === board.stockId)
    const worth = option === undefined ? 0 : offcutWorth(of, option, board.offcut)
    return job.handling + board.cuts.length * job.perCut - worth
  }
  let total = rest === null ? 0 : rest.plan.stockCost
  for (const board of rest?.plan.boards ?? []) total += preferenceOf(board, rest?.job ?? job)
  for (const { board, bought, whole } of states) {
    if (!staying.has(board.number)) continue
    const option = job.stock.find((candidate) => candidate.id === board.stockId)
    if (option !== undefined) {
      // an offcut on hand that is begun or culled has lost its value already
      if (!bought || (option.offcut && whole)) total += option.price
      else if (whole) total += shareOf(option.price, day.refund)
    }
    total += preferenceOf(board, job)
  }
  return total
}

function sum(amounts: readonly number[]): number {
  return amounts.reduce((total, amount) => total + amount, 0)
}
