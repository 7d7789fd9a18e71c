import type { BoardTable } from '../bound/board-table.ts'
import type { DualBound } from '../bound/dual-bound.ts'
import type { LpEngine } from '../lp-port.ts'
import type { Costs } from '../model/costs.ts'
import type { Pattern, Problem } from '../model/problem.ts'
import { branch } from './branch.ts'
import { byCounts } from './by-counts.ts'
import { type Completion, completionOf } from './completion.ts'
import { arcsWithin, patternsWithin } from './enumerate.ts'
import { bestOf } from './integer.ts'
import type { Solution } from './solution.ts'
import { usableWithin } from './usable.ts'
import type { Work } from './work.ts'

/** First step above the bound, as a share of it. */
const FIRST_STEP = 0.001
/** How much wider a further step is: the first of these that brings no flood of patterns. */
const WIDENINGS = [2.5, 1.6, 1.3]
const FLOOD = 3
const FEW = 400
/** So many patterns are asked about at once, whatever the band. */
const WHOLE = 1_800
/** A band so much wider, with no more patterns, is asked about instead. */
const WIDER = 2
/**
 * Nodes of the own branch and bound before the engine's integer solver is asked, where the program is small: at most so
 * many, and so many for each node that the engine may use, for they take far less time.
 */
const BRANCHES = 1_500
const BRANCHES_A_NODE = 15
const SMALL_ROWS = 45
/**
 * A run of so many equal members is asked of the own branch and bound first whatever the size: it branches on boards
 * and joints, which many equal members share. The decking of a deck took 45 ms so, and 160 in the engine's.
 */
const MANY_MEMBERS = 4

export interface Deepened {
  readonly best: Solution | null
  readonly bound: number
}

/**
 * Is there a plan within a few cents of the bound? If not, the bound rises by those cents and the question is asked
 * of a wider band, until a plan is found or the band reaches the best one known. Each question is about few patterns:
 * a plan of cost c uses none whose reduced cost is over c less the bound.
 */
export function deepen(
  problem: Problem,
  costs: Costs,
  engine: LpEngine,
  table: BoardTable,
  dual: DualBound,
  start: Solution | null,
  work: Work,
  raised: (bound: number) => void,
): Deepened {
  let best = start
  let bound = dual.cents
  let step = Math.max(1, Math.round(bound * FIRST_STEP))
  let asked = 0
  /** the cost below which there are more patterns than can be asked about at once */
  let tooMany = Number.NaN
  const most = costliest(problem, costs)
  const branches = Math.min(BRANCHES, BRANCHES_A_NODE * work.limits.nodes)
  const rows = problem.items.length + problem.runs.reduce((sum, run) => sum + run.nodes, 0)
  const { patterns, program = Number.POSITIVE_INFINITY } = work.limits
  const mostPatterns = Math.min(patterns, Math.floor(program / Math.max(1, rows)))
  const shared = problem.runs.some((run) => run.members >= MANY_MEMBERS)
  let completion: Completion | null = null
  const upper = (): number => best?.cost ?? most + 1
  while (bound < upper()) {
    const patternsAt = (at: number, most: number): Pattern[] | null => {
      const below = Math.min(upper(), dual.cents + at)
      const usable = costs.savings > 0 ? null : usableWithin(problem, costs, dual, below)
      const limits = usable?.limits ?? problem.items.map(({ limit }) => limit)
      if (completion === null || limits.some((limit, item) => limit > (completion?.limits[item] ?? 0))) {
        // one table of the whole and one of what is usable, kept for each item
        if (!work.mayWeigh(2 * table.cells + problem.items.length * table.value.length)) return null
        completion = completionOf(problem, costs, table, dual.prices, limits)
      }
      if (completion === null) return null
      return patternsWithin(problem, costs, completion, dual, below, most, usable)
    }
    const room = { step, asked, whole: upper() - dual.cents, most: mostPatterns }
    const band = (upper() === tooMany ? null : wholeBand(room, patternsAt)) ?? nextBand(room, patternsAt)
    tooMany = upper()
    if (band === null || work.stopped()) break
    step = band.step
    const within = band.patterns
    const below = Math.min(upper(), dual.cents + step)
    asked = within.length
    work.patterns += within.length
    const kept = arcsWithin(problem, costs, dual, below)
    const question = {
      patterns: within,
      enough: bound,
      below,
      nodes: work.limits.nodes,
      arcs: (run: number, arc: number): boolean => kept[run]?.[arc] === true,
    }
    const orders = byCounts(problem, costs, engine, question, work)
    if (orders.solution !== null) best = orders.solution
    if (orders.least > bound) {
      bound = Math.min(upper(), orders.least)
      raised(bound)
    }
    if (bound >= Math.min(below, upper())) continue
    const left = { ...question, enough: bound, below: Math.min(below, upper()) }
    let answer =
      rows > SMALL_ROWS && !shared ? null : branch(problem, costs, engine, { ...left, nodes: branches }, work)
    if (answer === null || (!answer.proven && !work.stopped())) {
      if (answer?.solution != null) best = answer.solution
      answer = bestOf(problem, costs, engine, { ...left, below: Math.min(left.below, upper()) }, work)
    }
    if (answer.solution !== null) best = answer.solution
    if (!answer.proven) break
    bound = Math.min(upper(), Math.max(bound, answer.solution?.cost ?? below))
    raised(bound)
  }
  return { best, bound }
}

/** More than any sensible plan costs: every piece that may be wanted on a board of its own, every joint at its dearest. */
function costliest(problem: Problem, costs: Costs): number {
  const pieces = problem.items.reduce((sum, item) => sum + item.limit, 0)
  const board = Math.max(0, ...costs.board) + Math.max(0, ...costs.counts.flat()) + costs.perPiece
  const arcs = costs.arcs.reduce(
    (sum, list, r) => sum + (problem.runs[r]?.members ?? 0) * list.reduce((all, cost) => all + cost, 0),
    0,
  )
  const excess = costs.excess.flat().reduce((sum: number, cost) => sum + (cost ?? 0), 0)
  return costs.constant + pieces * board + arcs + pieces * excess
}

interface Left {
  readonly step: number
  readonly asked: number
  /** from the bound to the best plan known */
  readonly whole: number
  readonly most: number
}
type PatternsAt = (step: number, most: number) => Pattern[] | null
type Band = { readonly step: number; readonly patterns: Pattern[] }

/** All that is left, where that is few patterns. */
function wholeBand({ whole, most }: Left, patternsAt: PatternsAt): Band | null {
  const patterns = patternsAt(whole, Math.min(WHOLE, most))
  return patterns === null ? null : { step: whole, patterns }
}

/**
 * The widest next band whose patterns are not too many to ask about at once; one that is wider still and has no more
 * is no more work and raises the bound by more. Null where even the narrowest has more than may be.
 */
function nextBand({ step, asked, whole, most }: Left, patternsAt: PatternsAt): Band | null {
  const widths =
    asked === 0 ? [step, Math.ceil(step / 4), 1] : WIDENINGS.map((wider) => Math.ceil(step * wider))
  for (const width of widths) {
    let patterns = patternsAt(width, most)
    if (patterns === null) continue
    if (patterns.length > Math.max(FEW, FLOOD * asked) && width !== widths.at(-1)) continue
    let band = { step: width, patterns }
    while (band.step < whole) {
      patterns = patternsAt(WIDER * band.step, band.patterns.length)
      if (patterns === null) break
      band = { step: WIDER * band.step, patterns }
    }
    return band
  }
  return null
}
