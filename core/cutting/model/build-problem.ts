import { fail, ok, type Result, type Ticks } from '../../units/index.ts'
import { longPoints, type Measure } from '../mitres/measure.ts'
import type { KindKey } from '../mitres/mix.ts'
import { shapeOf } from '../mitres/shape.ts'
import type { CutJob, FixedPiece, Infeasible, Mitres, RunGroup, StockOption } from '../types.ts'
import { countChoices } from './count-choices.ts'
import { noStock, pieceTooLong, runNeedsStock } from './infeasible.ts'
import type { Item, Problem, RunArc, RunCap, RunModel, StockType } from './problem.ts'
import { admissibleArcs, type RunGraph, runGraph } from './run-graph.ts'

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

/** Pieces that count alike on a board. */
interface Sort {
  readonly size: Ticks
  readonly kind: KindKey
}

function keyOf({ size, kind }: Sort): string {
  return `${size} ${kind}`
}

function sortOf(
  { length, mitres }: Pick<FixedPiece, 'length'> & { mitres?: Mitres | undefined },
  measure: Measure,
): Sort {
  return { size: (length - measure.less(length, mitres)) as Ticks, kind: measure.kindOf(length, mitres) }
}

interface Shape {
  readonly length: Ticks
  readonly mitres?: Mitres | undefined
}

/** Every piece that may be cut, by what it counts as; each shape once. */
function shapesOf(job: CutJob, measure: Measure): Map<string, readonly Shape[]> {
  const shapes = new Map<string, Map<string, Shape>>()
  for (const shape of [...job.pieces, ...job.runs.flatMap(admissibleArcs)]) {
    const key = keyOf(sortOf(shape, measure))
    const own = shapes.get(key) ?? new Map<string, Shape>()
    shapes.set(key, own.set(shapeOf(shape.length, shape.mitres), shape))
  }
  return new Map([...shapes].map(([key, own]) => [key, [...own.values()]]))
}

/** Most pieces of each sort that one member of the run can be made of: as many as fit it with both laps taken off. */
function mostOfEach(run: RunGroup, longest: Ticks, measure: Measure): Map<string, number> {
  const most = new Map<string, number>()
  const laps = maxLaps(run)
  for (const arc of admissibleArcs(run)) {
    if (arc.length > longest) continue
    const key = keyOf(sortOf(arc, measure))
    const many = Math.max(1, Math.floor(run.length / Math.max(1, arc.length - laps)))
    most.set(key, Math.max(many, most.get(key) ?? 0))
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
export function buildProblem(job: CutJob, measure: Measure = longPoints(job)): Result<Problem, Infeasible> {
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
    const graph = runGraph(group, longest, measure)
    if (graph.arcs.length === 0) return fail(runNeedsStock(job, group, longest))
    graphs.push({ group, graph })
  }

  const demand = new Map<string, number>()
  const needed = new Map<string, Sort>()
  for (const piece of job.pieces) {
    const sort = sortOf(piece, measure)
    demand.set(keyOf(sort), (demand.get(keyOf(sort)) ?? 0) + 1)
    needed.set(keyOf(sort), sort)
  }
  const limit = new Map(demand)
  for (const { group, graph } of graphs) {
    for (const arc of graph.arcs) needed.set(keyOf(arc), arc)
    for (const [key, most] of mostOfEach(group, longest, measure)) {
      limit.set(key, (limit.get(key) ?? 0) + most * group.members.length)
    }
  }
  const { mix } = measure
  const shapes = measure.isRelaxed === true ? shapesOf(job, measure) : null
  const sorts = [...needed].sort(([, a], [, b]) => b.size - a.size)
  const divisor = sorts.reduce((g, [, { size }]) => greatestDivisor(g, size + measure.kerf), 0)
  const unit = mix === null ? Math.max(1, divisor) : 1
  const items: Item[] = sorts.map(([key, { size, kind }]) => ({
    size,
    shapes: shapes?.get(key) ?? [],
    kind: mix?.kinds.indexOf(kind) ?? 0,
    width: (size + measure.kerf) / unit,
    demand: demand.get(key) ?? 0,
    limit: limit.get(key) ?? 0,
  }))
  const itemOf = new Map(sorts.map(([key], index) => [key, index]))
  const pieces = [...limit.values()].reduce((sum, count) => sum + count, 0)
  const stocks: StockType[] = options.map((option) => {
    const counts = countChoices(option, supplyOf(job, option), pieces)
    const trimCut = !option.offcut && job.endTrim > 0 ? job.perCut : 0
    const base = (counts === null ? option.price : 0) + job.handling + trimCut
    const supply = supplyOf(job, option)
    const capacity = Math.floor((usableLength(job, option) + measure.kerf) / unit)
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
      length: arc.length,
      item: itemOf.get(keyOf(arc)) ?? 0,
      cost: arc.jointCost,
      point: arc.point,
      most: group.members.length,
    }))
    return { group, members: group.members.length, nodes: graph.nodes, arcs, caps: capsOf(group) }
  })
  const capacity = stocks.reduce((most, stock) => Math.max(most, stock.capacity), 0)
  const savings = (job.keep?.centsPerFoot ?? 0) > 0 || job.perCut > 0
  return ok({ job, measure, unit, items, stocks, runs, capacity, perPiece: job.perCut, savings })
}
