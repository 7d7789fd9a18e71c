import { fail, ok, type Result, type Ticks } from '../../units/index.ts'
import type { CutJob, Infeasible, RunGroup, StockOption } from '../types.ts'
import { countChoices } from './count-choices.ts'
import { noStock, pieceTooLong, runNeedsStock } from './infeasible.ts'
import type { Item, Problem, RunArc, RunCap, RunModel, StockType } from './problem.ts'
import { admissibleLengths, type RunGraph, runGraph } from './run-graph.ts'

/** Usable length of a stock option: trims are taken off bought boards only. */
export function usableLength(job: CutJob, option: StockOption): number {
  return option.length - (option.offcut ? 0 : 2 * job.endTrim)
}

function stockToUse(job: CutJob): StockOption[] {
  const only = job.onlyStock === undefined ? null : new Set(job.onlyStock)
  return job.stock.filter(
    (option) =>
      (only === null || only.has(option.id)) && usableLength(job, option) > 0 && supplyOf(job, option) > 0,
  )
}

function supplyOf(job: CutJob, option: StockOption): number {
  let supply = option.supply ?? Number.POSITIVE_INFINITY
  for (const limit of job.atMost ?? [])
    if (limit.stockId === option.id) supply = Math.min(supply, limit.count)
  return supply
}

function capsOf(run: RunGroup): RunCap[] {
  const members = run.members.length
  const apart = run.neighboursApart ? Math.ceil(members / 2) : members
  const caps: RunCap[] = []
  run.points.forEach((point, index) => {
    const asked = point.cap ?? members
    if (point.excess !== null && asked < apart)
      caps.push({ points: [index], cap: asked, excess: point.excess })
    const hard = point.excess === null ? Math.min(asked, apart) : apart
    if (hard < members) caps.push({ points: [index], cap: hard, excess: null })
  })
  for (const window of run.windows ?? []) caps.push({ points: window.points, cap: window.cap, excess: null })
  return caps
}

/** Most pieces of each length that one member of the run can be made of: as many as fit it with both laps taken off. */
function mostOfEach(run: RunGroup, longest: Ticks): Map<Ticks, number> {
  const most = new Map<Ticks, number>()
  const laps = maxLaps(run)
  for (const length of admissibleLengths(run, longest)) {
    most.set(length, Math.max(1, Math.floor(run.length / Math.max(1, length - laps))))
  }
  return most
}

function maxLaps(group: RunGroup): number {
  return 2 * group.points.reduce((most, point) => Math.max(most, point.lap), 0)
}

function greatestDivisor(a: number, b: number): number {
  let [x, y] = [a, b]
  while (y > 0) [x, y] = [y, x % y]
  return x
}

/**
 * Turns a job into items, stock types and run graphs; says which piece or run cannot be had from any stock.
 * Widths are divided by their greatest common divisor, which shortens every knapsack table.
 */
export function buildProblem(job: CutJob): Result<Problem, Infeasible> {
  const options = stockToUse(job)
  if (options.length === 0) {
    if (job.pieces.length > 0 || job.runs.some((run) => run.members.length > 0)) return fail(noStock(job))
  }
  const longest = options.reduce((most, option) => Math.max(most, usableLength(job, option)), 0) as Ticks
  for (const piece of job.pieces) {
    if (piece.length > longest) return fail(pieceTooLong(job, piece, longest))
  }
  const graphs: { group: RunGroup; graph: RunGraph }[] = []
  for (const group of job.runs) {
    if (group.members.length === 0) continue
    const graph = runGraph(group, longest)
    if (graph.arcs.length === 0) return fail(runNeedsStock(job, group, longest))
    graphs.push({ group, graph })
  }

  const demand = new Map<Ticks, number>()
  for (const piece of job.pieces) demand.set(piece.length, (demand.get(piece.length) ?? 0) + 1)
  const limit = new Map(demand)
  const needed = new Set(demand.keys())
  for (const { group, graph } of graphs) {
    for (const arc of graph.arcs) needed.add(arc.length)
    for (const [length, most] of mostOfEach(group, longest)) {
      limit.set(length, (limit.get(length) ?? 0) + most * group.members.length)
    }
  }
  const lengths = [...needed].sort((a, b) => b - a)
  const unit = Math.max(
    1,
    lengths.reduce((g, length) => greatestDivisor(g, length + job.kerf), 0),
  )
  const items: Item[] = lengths.map((length) => ({
    length,
    width: (length + job.kerf) / unit,
    demand: demand.get(length) ?? 0,
    limit: limit.get(length) ?? 0,
  }))
  const itemOf = new Map(lengths.map((length, index) => [length, index]))
  const pieces = [...limit.values()].reduce((sum, count) => sum + count, 0)
  const stocks: StockType[] = options.map((option) => {
    const counts = countChoices(option, supplyOf(job, option), pieces)
    const trimCut = !option.offcut && job.endTrim > 0 ? job.perCut : 0
    const base = (counts === null ? option.price : 0) + job.handling + trimCut
    const supply = supplyOf(job, option)
    const capacity = Math.floor((usableLength(job, option) + job.kerf) / unit)
    return {
      option,
      usable: usableLength(job, option),
      capacity,
      base,
      supply: base === 0 ? Math.min(supply, pieces) : supply,
      counts,
    }
  })
  const runs: RunModel[] = graphs.map(({ group, graph }) => {
    const arcs: RunArc[] = graph.arcs.map((arc) => ({
      from: arc.from,
      to: arc.to,
      start: arc.start,
      end: arc.end,
      item: itemOf.get(arc.length) ?? 0,
      cost: arc.jointCost,
      point: arc.point,
      most: group.members.length,
    }))
    return { group, members: group.members.length, nodes: graph.nodes, arcs, caps: capsOf(group) }
  })
  const capacity = stocks.reduce((most, stock) => Math.max(most, stock.capacity), 0)
  const savings = (job.keep?.centsPerFoot ?? 0) > 0 || job.perCut > 0
  return ok({ job, unit, items, stocks, runs, capacity, perPiece: job.perCut, savings })
}
