import { type Cents, cents } from '../../units/index.ts'
import type { DualBound } from '../bound/dual-bound.ts'
import { stretchOf } from '../mitres/edges.ts'
import { mitresBetween } from '../mitres/run-mitres.ts'
import { savingOf, trimOf } from '../model/board-cost.ts'
import { costsInCents } from '../model/costs.ts'
import { priceOfCount } from '../model/count-choices.ts'
import type { Problem } from '../model/problem.ts'
import type { Board, Certificate, CutPlan, PlannedJoint, PlanStatus, RunPiece } from '../types.ts'
import type { MemberPath } from './arrange.ts'
import { layOut, type ToCut } from './plan-boards.ts'
import { boardsUsed, choiceFor, jointedAt, type Solution } from './solution.ts'

export interface Verdict {
  readonly status: PlanStatus
  readonly bound: number
  readonly why: string
  readonly searched: Certificate['search']
  readonly work: CutPlan['work']
}

/** Turns a whole-numbered solution into boards, run pieces, joints, order and money. */
export function assemble(
  problem: Problem,
  solution: Solution,
  paths: readonly (readonly MemberPath[])[],
  dual: DualBound,
  verdict: Verdict,
): CutPlan {
  const { job } = problem
  const runPieces = runPiecesOf(problem, paths)
  const pieces: ToCut[] = [
    ...job.pieces.map(({ id, mark, length, mitres }) => ({ id, mark, length, mitres })),
    ...runPieces.map(({ id, mark, length, mitres }) => ({ id, mark, length, mitres })),
  ]
  const boards = layOut(problem, solution.boards, pieces)
  const joints = jointsOf(problem, paths)
  const order = orderOf(problem, solution, boards)
  const stockCost = sum(order.map((line) => line.amount))
  const jointCost = sum(joints.map((joint) => joint.cost))
  const cost = stockCost + jointCost
  const preference = preferenceOf(problem, solution, boards)
  return {
    jobId: job.id,
    status: verdict.status,
    boards,
    runPieces,
    joints,
    memberOrder: problem.runs.flatMap((run) =>
      run.group.neighboursApart
        ? [{ runId: run.group.id, memberIds: run.group.members.map((member) => member.id) }]
        : [],
    ),
    order,
    stockCost: cents(stockCost),
    jointCost: cents(jointCost),
    cost: cents(cost),
    preference: cents(preference),
    bound: cents(verdict.bound),
    gap: cents(Math.max(0, cost + preference - verdict.bound)),
    why: verdict.why,
    certificate: certificateOf(problem, dual, verdict.searched),
    waste: wasteOf(problem, boards),
    work: verdict.work,
  }
}

function sum(amounts: readonly number[]): number {
  return amounts.reduce((total, amount) => total + amount, 0)
}

function runPiecesOf(problem: Problem, paths: readonly (readonly MemberPath[])[]): RunPiece[] {
  return problem.runs.flatMap((run, r) =>
    run.group.members.flatMap((member, m) => {
      const arcs = paths[r]?.[m]?.arcs ?? []
      return arcs.map((arc, k) => {
        const mitres = mitresBetween(run.group, arc.start, arc.end)
        return {
          id: arcs.length === 1 ? member.id : `${member.id}/${k + 1}`,
          mark: arcs.length === 1 ? member.mark : `${member.mark}-${k + 1}`,
          memberId: member.id,
          runId: run.group.id,
          from: arc.start,
          to: arc.end,
          length: arc.length,
          ...(run.group.wild === undefined || arc.end !== run.group.length ? {} : { wild: run.group.wild }),
          ...(mitres === undefined ? {} : { mitres }),
        }
      })
    }),
  )
}

function jointsOf(problem: Problem, paths: readonly (readonly MemberPath[])[]): PlannedJoint[] {
  return problem.runs.flatMap((run, r) =>
    run.group.members.flatMap((member, m) =>
      (paths[r]?.[m]?.arcs ?? []).flatMap((arc) => {
        const point = run.group.points[arc.point]
        if (point === undefined) return []
        return [
          { runId: run.group.id, memberId: member.id, at: point.at, label: point.label, cost: point.cost },
        ]
      }),
    ),
  )
}

function orderOf(problem: Problem, solution: Solution, boards: readonly Board[]): CutPlan['order'] {
  const cut = new Map<string, number>()
  for (const board of boards) cut.set(board.stockId, (cut.get(board.stockId) ?? 0) + 1)
  const used = boardsUsed(problem, solution.boards)
  const costs = costsInCents(problem)
  return problem.stocks.flatMap((stock, s) => {
    const { option } = stock
    const needed = cut.get(option.id) ?? 0
    if (needed === 0) return []
    const choice = stock.counts?.[choiceFor(problem, costs, s, Math.min(needed, used[s] ?? needed))]
    const count = choice?.count ?? needed
    const amount = choice?.cost ?? option.price * count
    const price = choice === undefined ? option.price : cents(priceOfCount(option, count) / count)
    return [{ stockId: option.id, length: option.length, count, price, amount: cents(amount) }]
  })
}

/** What the user's preferences weigh: stagger, handling and cuts, less the offcuts worth keeping. */
function preferenceOf(problem: Problem, solution: Solution, boards: readonly Board[]): number {
  let total = 0
  problem.runs.forEach((run, r) => {
    run.caps.forEach((cap, c) => {
      if (cap.excess !== null) {
        total += cap.excess * Math.max(0, jointedAt(problem, r, c, solution.flows[r] ?? []) - cap.cap)
      }
    })
  })
  const { job } = problem
  const indexOf = new Map(problem.stocks.map((stock, s) => [stock.option.id, s]))
  for (const board of boards) {
    const s = indexOf.get(board.stockId) ?? 0
    const stock = problem.stocks[s]
    if (stock === undefined) continue
    const used = sum(board.cuts.map((cut) => (cut.length + job.kerf) / problem.unit))
    const trimCut = trimOf(problem, s) > 0 ? job.perCut : 0
    total += job.handling + trimCut + board.cuts.length * job.perCut - savingOf(problem, s, used)
  }
  return total
}

function certificateOf(problem: Problem, dual: DualBound, search: Certificate['search']): Certificate {
  const { prices } = dual
  const { measure } = problem
  return {
    scale: prices.scale,
    ...(measure.isRelaxed === true && measure.mix !== null ? { shared: measure.mix.classes } : {}),
    prices: problem.items.map((item, i) => ({
      length: item.size,
      ...(item.kind === 0 ? {} : { ends: measure.mix?.kinds[item.kind] ?? '' }),
      price: prices.items[i] ?? 0,
    })),
    capPrices: problem.runs.flatMap((run, r) =>
      run.caps.flatMap((cap, c) => {
        const price = prices.caps[r]?.[c] ?? 0
        const [point] = cap.points
        if (price === 0 || point === undefined) return []
        const shared = { runId: run.group.id, point, price, cap: cap.cap }
        return [cap.points.length === 1 ? shared : { ...shared, points: cap.points }]
      }),
    ),
    search,
    dualBound: cents(Math.max(dual.cents, Number.MIN_SAFE_INTEGER)) as Cents,
  }
}

function wasteOf(problem: Problem, boards: readonly Board[]): CutPlan['waste'] {
  const { job } = problem
  const indexOf = new Map(problem.stocks.map((stock, s) => [stock.option.id, s]))
  const waste = { used: 0, kerf: 0, trim: 0, kept: 0, thrown: 0 }
  for (const board of boards) {
    const trim = 2 * trimOf(problem, indexOf.get(board.stockId) ?? 0)
    const used = stretchOf(board)
    waste.used += used
    waste.trim += trim
    waste.kerf += board.length - trim - used - board.offcut
    if (job.keep !== null && board.offcut >= job.keep.from) waste.kept += board.offcut
    else waste.thrown += board.offcut
  }
  return waste as CutPlan['waste']
}
