import type { BoardTable } from '../bound/board-table.ts'
import { type DualBound, dualBound } from '../bound/dual-bound.ts'
import { readyBound } from '../bound/ready-prices.ts'
import type { LpEngine } from '../lp-port.ts'
import { mayFit } from '../mitres/may-fit.ts'
import type { Costs } from '../model/costs.ts'
import type { Pattern, Problem } from '../model/problem.ts'
import { countsBoardsOnly } from './boards-only.ts'
import { branch } from './branch.ts'
import { deepen } from './deepen.ts'
import { dive } from './dive.ts'
import { usefulBelow } from './enumerate.ts'
import { fillBoards } from './fill-boards.ts'
import { generate, tableFor } from './generate.ts'
import { bestOf, type IntegerAnswer } from './integer.ts'
import { Master } from './master.ts'
import { firstPatterns } from './pool.ts'
import { PairProver } from './prove-by-pairs.ts'
import { roundPlan } from './round-plan.ts'
import type { Boards, Solution } from './solution.ts'
import { bestRate, startingPlans } from './start.ts'
import type { Work } from './work.ts'

/** Nodes of the first dive over the columns at hand; where runs are to be jointed a person waits for its first plan. */
const FIRST_NODES = 12
const FIRST_NODES_OF_RUNS = 6

/** Prices per width at first are at most so much above those of a full board. */
const CEILING = 1.005

/** From so many lengths on, dives with new patterns come first; where runs are to be jointed they find little. */
const DIVING = 25
const FIRST_DIVES = 1
const MOST_DIVES = 6

/** Nodes of the pair tree before bands of patterns are tried, and after. */
const FIRST_PAIRS = 100
const MOST_PAIRS = 400

export interface Outcome {
  /** null: nothing does the job */
  readonly best: Solution | null
  readonly dual: DualBound
  /** proven: in whole units of the costs */
  readonly bound: number
  /** set where the search, not the dual bound alone, proves it */
  readonly searched: { readonly nodes: number; readonly patterns: number } | null
  readonly lacking: { readonly items: readonly number[]; readonly runs: readonly number[] } | null
}

export interface SearchOptions {
  readonly quick: boolean
  readonly onProgress: (bound: number, best: number) => void
  /** told of each plan better than those before, with a bound and its prices; it may break the rules of `search-rules.ts` */
  readonly onBest?: ((plan: Solution, dual: DualBound, bound: number) => void) | undefined
}

/** Least cost of a problem: start, column generation, dives, integer program over the columns, proof by enumeration. */
export function search(
  problem: Problem,
  costs: Costs,
  engine: LpEngine,
  work: Work,
  options: SearchOptions,
): Outcome {
  const table = tableFor(problem)
  if (problem.items.length === 0) return nothingToDo(problem, costs, table)
  const fitting = (patterns: readonly Pattern[]) => patterns.filter((pattern) => mayFit(problem, pattern))
  const plans = startingPlans(problem, costs).filter(({ boards }) => fits(problem, boards))
  let best = plans.reduce<Solution | null>(
    (least, plan) => (least === null || plan.cost < least.cost ? plan : least),
    null,
  )
  if (best !== null) options.onBest?.(best, unpriced(problem, costs, table), Number.MIN_SAFE_INTEGER)
  if (best !== null && work.stopped()) {
    // stopped before it began: the first program alone may take longer than a person waits
    const dual = unpriced(problem, costs, table)
    return { best, dual, bound: dual.cents, searched: null, lacking: null }
  }
  const boardsOnly = countsBoardsOnly(problem, costs)
  const ready = boardsOnly ? readyBound(problem, costs, table, best?.cost ?? Number.POSITIVE_INFINITY) : null
  if (ready !== null && best !== null) {
    if (best.cost > ready.cents) best = cheaper(problem, best, fillBoards(problem, costs))
    options.onProgress(ready.cents, best.cost)
    if (best.cost <= ready.cents) {
      options.onBest?.(best, ready, ready.cents)
      return { best, dual: ready, bound: ready.cents, searched: null, lacking: null }
    }
  }
  const master = new Master(
    problem,
    costs,
    engine,
    firstPatterns(problem, plans, table, roundsFor(problem)),
    boardsOnly ? ceilingsOf(problem) : [],
  )
  const prover = new PairProver(problem, costs, engine, work)
  try {
    let root = generate(master, table, best?.cost ?? Number.POSITIVE_INFINITY, work, ready, true)
    let dual = root.bound
    let bound = dual.cents
    let told: Solution | null = null
    const report = (): void => {
      options.onProgress(bound, upper())
      if (best !== null && best !== told) options.onBest?.(best, dual, bound)
      told = best
    }
    const upper = (): number => best?.cost ?? Number.POSITIVE_INFINITY
    report()
    const lacking = missing(master, root.solution.x)
    if (lacking !== null && best === null) return { best, dual, bound, searched: null, lacking }
    const done = (): boolean => best !== null && best.cost <= bound
    if (done()) return { best, dual, bound, searched: null, lacking: null }
    const improve = (answer: IntegerAnswer): boolean => {
      const { solution } = answer
      if (solution !== null && solution.cost < upper() && fits(problem, solution.boards)) best = solution
      report()
      return answer.proven
    }
    const dives = (from: number, to: number): void => {
      if (problem.items.length < DIVING || problem.runs.length > 0) return
      for (let k = from; k < to && !done() && !work.spent(); k++) {
        const plan = dive(master, table, upper(), bound, k, work)
        if (plan !== null) improve({ solution: plan, proven: false })
      }
    }
    dives(-1, options.quick ? 0 : FIRST_DIVES)
    const near = roundPlan(problem, costs, master.columns, root.solution.x)
    if (near !== null && near.cost < upper() && fits(problem, near.boards)) best = near
    report()
    const jointed = problem.runs.length > 0
    const nodes = jointed ? FIRST_NODES_OF_RUNS : FIRST_NODES
    const columns = jointed
      ? usefulBelow(problem, costs, fitting(master.patterns()), dual, upper())
      : { patterns: fitting(master.patterns()), below: upper() }
    if (!done() && !(boardsOnly && problem.items.length >= DIVING))
      improve(branch(problem, costs, engine, { ...columns, enough: bound, nodes }, work))
    if (best === null)
      improve(
        bestOf(
          problem,
          costs,
          engine,
          { patterns: fitting(master.patterns()), below: upper(), enough: bound, nodes: 200 },
          work,
        ),
      )
    if (done() || (options.quick && best !== null) || work.spent())
      return { best, dual, bound, searched: null, lacking: null }
    if (!root.converged) {
      root = generate(master, table, upper(), work, dual)
      dual = root.bound
      bound = Math.max(bound, dual.cents)
      dives(-1, 0)
      if (done()) return { best, dual, bound, searched: null, lacking: null }
    }
    const askPairs = (nodes: number): void => {
      if (best === null || done() || !boardsOnly) return
      const pairs = prover.ask(best, dual, bound, () => master.patterns(), nodes)
      if (pairs.best !== null && fits(problem, pairs.best.boards)) best = pairs.best
      bound = Math.max(bound, pairs.bound)
      report()
    }
    askPairs(FIRST_PAIRS)
    dives(FIRST_DIVES, MOST_DIVES)
    if (!done()) {
      const proof = deepen(problem, costs, engine, table, dual, best, work, (upTo) => {
        bound = Math.max(bound, upTo)
        report()
      })
      best = proof.best
      bound = Math.max(bound, proof.bound)
    }
    askPairs(MOST_PAIRS)
    report()
    const searched = bound > dual.cents ? { nodes: work.nodes, patterns: work.patterns } : null
    return { best, dual, bound, searched, lacking: null }
  } finally {
    prover.dispose()
    master.dispose()
  }
}

/**
 * Large masters start from a rich pool, which saves most of their iterations. Where runs are to be jointed most
 * lengths are never cut, and a rich pool costs more than it saves.
 */
function roundsFor(problem: Problem): number {
  const rows = problem.items.filter((item) => item.demand > 0).length
  return rows < 30 ? 1 : rows < 100 ? 6 : 8
}

/** No board is known to be too long, as one by a relaxed measure can be. */
export function fits(problem: Problem, boards: readonly Boards[]): boolean {
  return boards.every(({ pattern }) => mayFit(problem, pattern))
}

function cheaper(problem: Problem, plan: Solution, other: Solution | null): Solution {
  return other !== null && other.cost < plan.cost && fits(problem, other.boards) ? other : plan
}

/** A little above a piece's share of a full board: its price in most relaxations. */
function ceilingsOf(problem: Problem): number[] {
  const rate = bestRate(problem) * CEILING
  return problem.items.map((item) => rate * item.width)
}

function nothingToDo(problem: Problem, costs: Costs, table: BoardTable): Outcome {
  const dual = unpriced(problem, costs, table)
  return {
    best: { boards: [], flows: [], cost: costs.constant },
    dual,
    bound: dual.cents,
    searched: null,
    lacking: null,
  }
}

/** The bound that no prices prove: there is one before any program is solved. */
function unpriced(problem: Problem, costs: Costs, table: BoardTable): DualBound {
  return dualBound(problem, costs, table, {
    scale: 1,
    items: new Float64Array(problem.items.length),
    caps: [],
  })
}

function missing(master: Master, x: ArrayLike<number>): Outcome['lacking'] {
  const items: number[] = []
  const runs: number[] = []
  master.columns.forEach((column, c) => {
    if ((x[c] ?? 0) < 1e-6) return
    if (column.kind === 'missing item') items.push(column.item)
    if (column.kind === 'missing run') runs.push(column.run)
  })
  return items.length + runs.length === 0 ? null : { items, runs }
}
