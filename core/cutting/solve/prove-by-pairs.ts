import type { DualBound } from '../bound/dual-bound.ts'
import type { LpEngine } from '../lp-port.ts'
import { patternFrom } from '../model/board-cost.ts'
import type { Costs } from '../model/costs.ts'
import type { Pattern, Problem } from '../model/problem.ts'
import type { Fill, PairNode } from './pair-node.ts'
import { PairTree } from './pairs.ts'
import { type Solution, solutionOf } from './solution.ts'
import type { Work } from './work.ts'

/** Columns that a tree starts with, per length: the nearest to being used. */
const FIRST_COLUMNS = 8

export interface PairProof {
  readonly best: Solution
  readonly bound: number
}

/** Closes what bands of patterns left open, by branching on pairs: is there a plan with one board less? */
export class PairProver {
  readonly #problem: Problem
  readonly #costs: Costs
  readonly #engine: LpEngine
  readonly #work: Work
  #tree: PairTree | null = null

  constructor(problem: Problem, costs: Costs, engine: LpEngine, work: Work) {
    this.#problem = problem
    this.#costs = costs
    this.#engine = engine
    this.#work = work
  }

  /** Goes on with the search for a plan cheaper than `start` for so many nodes of the tree. */
  ask(
    start: Solution,
    dual: DualBound,
    bound: number,
    patterns: () => readonly Pattern[],
    mostNodes: number,
  ): PairProof {
    const price = this.#costs.board[0] ?? 1
    let best = start
    while (best.cost > bound && !this.#work.stopped()) {
      const boards = Math.round((best.cost - this.#costs.constant) / price) - 1
      const answer = this.#treeFor(boards, dual, patterns).ask(Math.min(mostNodes, this.#work.limits.nodes))
      if (answer.refuted) return { best, bound: best.cost }
      if (answer.boards === null) break
      const plan = solutionOf(
        this.#problem,
        this.#costs,
        answer.boards.map((parts) => ({ pattern: patternFrom(this.#problem, parts), count: 1 })),
        [],
      )
      if (plan === null || plan.cost >= best.cost)
        throw new Error('the pair search returned a plan that is none')
      best = plan
    }
    return { best, bound }
  }

  dispose(): void {
    this.#tree?.dispose()
    this.#tree = null
  }

  #treeFor(boards: number, dual: DualBound, patterns: () => readonly Pattern[]): PairTree {
    if (this.#tree?.target === boards) return this.#tree
    this.dispose()
    const problem = this.#problem
    const root: PairNode = {
      pieces: problem.items.map((item, i) => ({
        id: i,
        width: item.width,
        demand: item.demand,
        parts: [i],
        rows: [[i, 1]],
      })),
      apart: problem.items.map(() => new Set<number>()),
      merges: [],
    }
    const fills = nearest(patterns(), dual, FIRST_COLUMNS * problem.items.length)
    this.#tree = new PairTree(root, fills, problem.capacity, boards, this.#engine, this.#work)
    return this.#tree
  }
}

/** The patterns that are worth most under the bound's prices, as fills. */
function nearest(patterns: readonly Pattern[], dual: DualBound, most: number): Fill[] {
  const worth = (pattern: Pattern): number =>
    pattern.items.reduce((sum, item, k) => sum + (dual.prices.items[item] ?? 0) * (pattern.counts[k] ?? 0), 0)
  return patterns
    .map((pattern, at) => ({ pattern, at, worth: worth(pattern) }))
    .sort((a, b) => b.worth - a.worth || a.at - b.at)
    .slice(0, most)
    .map(({ pattern }) => ({ pieces: pattern.items, counts: pattern.counts }))
}
