import type { LpEngine } from '../lp-port.ts'
import type { Costs } from '../model/costs.ts'
import type { Problem } from '../model/problem.ts'
import type { Objective } from '../types.ts'
import { fewestJoints, onFewestJoints } from './fewest-joints.ts'
import { type Counted, costsOf, measure, weighed } from './objectives.ts'
import type { SearchOptions } from './search.ts'
import { type RuledOutcome, searchRules } from './search-rules.ts'
import { type Solution, solutionOf } from './solution.ts'
import { searchWithin } from './within-lengths.ts'
import { woodNeeded } from './wood-needed.ts'
import { Work } from './work.ts'

/** What an objective has come to. No plan as good by the objectives before it has less than `bound`. */
export interface Reached {
  readonly objective: Objective
  readonly value: number
  readonly bound: number
}

export interface Ranked {
  /** least cost, its bound and proof */
  readonly least: RuledOutcome
  /** the plan that the objectives choose, costed in cents */
  readonly chosen: RuledOutcome
  /** in their order, least cost last; none where the least cost alone is wanted */
  readonly reached: readonly Reached[]
}

/** Finds the plan that is best by the job's objectives in their order, and the least cost beside it. */
export function rank(
  problem: Problem,
  cents: Costs,
  engine: LpEngine,
  work: Work,
  options: SearchOptions,
): Ranked {
  const limit = problem.job.maxLengths ?? Number.POSITIVE_INFINITY
  const least = searchRules(problem, cents, engine, work, options, limit)
  const wanted = costLast(problem.job.objectives)
  if (least.best === null || (wanted[0] === 'least cost' && wanted.length === 1))
    return { least, chosen: least, reached: [] }
  const silent = { ...options, onProgress: () => undefined, onBest: undefined }
  return { least, ...new Ranking(problem, cents, engine, work, silent, least, limit).of(wanted) }
}

/** What a plan has of each objective, beside the least that the pieces and the stock lengths alone allow. */
export function reachedAtOnce(problem: Problem, plan: Solution, leastCost: number): readonly Reached[] {
  const wanted = costLast(problem.job.objectives)
  if (wanted.length === 1) return []
  return wanted.map((objective) => {
    const value = measure(problem, plan, objective)
    const floor = objective === 'fewest lengths' ? 0 : floorOf(problem, objective, leastCost)
    return { objective, value, bound: Math.min(value, floor) }
  })
}

/** No plan has less of it, whatever else it has. */
function floorOf(problem: Problem, objective: Counted, leastCost: number): number {
  switch (objective) {
    case 'least cost':
      return leastCost
    case 'fewest joints':
      return fewestJoints(problem)
    case 'least waste':
      return woodNeeded(problem)
  }
}

/** Whatever is wished, among plans as good by it the cheapest is taken. */
function costLast(objectives: readonly Objective[]): Objective[] {
  return objectives.includes('least cost') ? [...objectives] : [...objectives, 'least cost']
}

interface Held {
  readonly objective: Counted
  readonly value: number
}

/**
 * One objective after the other. Each is searched alone, with all before it held where they are by a price on every unit
 * more: just above what this objective could gain by it, so that the search stays sharp.
 */
class Ranking {
  readonly #cents: Costs
  readonly #engine: LpEngine
  readonly #work: Work
  readonly #options: SearchOptions
  /** the problem as the objectives so far leave it */
  #problem: Problem
  #chosen: RuledOutcome
  #lengths: number
  #reached: Reached[] = []
  /** objectives that are held by their price, in their order */
  #held: Held[] = []
  /** no plan of the problem as it is left costs less */
  #leastCost: number
  /** the least cost of the problem as it is left was sought already */
  #costSought = false

  constructor(
    problem: Problem,
    cents: Costs,
    engine: LpEngine,
    work: Work,
    options: SearchOptions,
    least: RuledOutcome,
    lengths: number,
  ) {
    this.#problem = problem
    this.#cents = cents
    this.#engine = engine
    this.#work = work
    this.#options = options
    this.#chosen = least
    this.#lengths = lengths
    this.#leastCost = least.bound
  }

  of(wanted: readonly Objective[]): Pick<Ranked, 'chosen' | 'reached'> {
    for (const objective of wanted) {
      if (objective === 'fewest lengths') this.#chooseLengths()
      else if (objective !== 'fewest joints' || this.#held.length > 0 || !this.#keepToFewestJoints())
        this.#choose(objective)
    }
    return { chosen: this.#chosen, reached: this.#reached }
  }

  #choose(objective: Counted): void {
    const floor = this.#floor(objective)
    let bound = floor
    const sought = objective === 'least cost' && this.#costSought && this.#held.length === 0
    if (this.#value(objective) > floor && !sought) {
      const outcome = this.#search(objective, this.#held, this.#lengths)
      bound = Math.max(floor, outcome.bound)
      const plan = this.#inCents(outcome)
      if (plan !== null && this.#isBetter(plan, objective)) this.#chosen = { ...outcome, best: plan }
    }
    this.#held.push({ objective, value: this.#value(objective) })
    this.#reached.push({ objective, value: 0, bound })
    this.#measureAgain()
  }

  /** What is reached, by the plan that is now the best. */
  #measureAgain(): void {
    this.#held = this.#held.map((each) => ({ ...each, value: this.#value(each.objective) }))
    this.#reached = this.#reached.map(({ objective, bound }) => {
      const value = this.#value(objective)
      return { objective, value, bound: Math.min(bound, value) }
    })
  }

  /**
   * Where every member can have the fewest joints of its own, pieces that lie on no such way are left out for good.
   * @returns false where they cannot together
   */
  #keepToFewestJoints(): boolean {
    const objective = 'fewest joints'
    const smaller = onFewestJoints(this.#problem)
    const outcome = this.#run(smaller, this.#cents, this.#lengths)
    if (outcome.best === null) return false
    this.#leave(smaller, outcome)
    this.#reached.push({ objective, value: 0, bound: this.#floor(objective) })
    this.#measureAgain()
    return true
  }

  /** As few different lengths as any plan buys that is as good by what was before. */
  #chooseLengths(): void {
    const objective = 'fewest lengths'
    const last = this.#held.at(-1)
    let bound = 0
    for (let lengths = 0; lengths < this.#value(objective); lengths++) {
      const outcome = this.#search(last?.objective ?? 'least cost', this.#held.slice(0, -1), lengths)
      const plan = this.#inCents(outcome)
      if (
        plan !== null &&
        this.#held.every((each) => measure(this.#problem, plan, each.objective) <= each.value)
      ) {
        if (last === undefined) this.#leave(this.#problem, outcome)
        else this.#chosen = { ...outcome, best: plan }
        break
      }
      if (bound === lengths && outcome.bound > (last?.value ?? Number.MAX_SAFE_INTEGER)) bound = lengths + 1
    }
    this.#lengths = this.#value(objective)
    this.#reached.push({ objective, value: 0, bound })
    this.#measureAgain()
  }

  /** Goes on with a smaller problem, whose cheapest plan was sought. */
  #leave(problem: Problem, outcome: RuledOutcome): void {
    this.#problem = problem
    this.#chosen = outcome
    this.#leastCost = Math.max(this.#leastCost, outcome.bound)
    this.#costSought = true
  }

  /** The least of an objective with others held where they are. Its bound is of that objective. */
  #search(objective: Counted, held: readonly Held[], lengths: number): RuledOutcome {
    let weight = Math.max(0, this.#value(objective) - this.#floor(objective)) + 1
    let constant = 0
    const parts = [{ costs: costsOf(this.#problem, objective), weight: 1 }]
    for (const each of held.toReversed()) {
      parts.push({ costs: costsOf(this.#problem, each.objective), weight })
      constant -= weight * each.value
      weight += weight * Math.max(0, each.value - this.#floor(each.objective))
    }
    return this.#run(this.#problem, weighed(this.#problem, parts, constant), lengths)
  }

  /** Each search may do as much as the first one. */
  #run(problem: Problem, costs: Costs, lengths: number): RuledOutcome {
    const works: Work[] = []
    const next = (): Work => {
      const work = new Work(this.#work.limits, () => this.#work.stopped(), this.#work.cells)
      works.push(work)
      return work
    }
    const outcome = searchWithin(problem, costs, this.#engine, next, this.#options, lengths)
    if (works.some((one) => one.stopped())) this.#work.end()
    for (const { columns, nodes, patterns } of works) {
      this.#work.columns += columns
      this.#work.nodes += nodes
      this.#work.patterns += patterns
    }
    return outcome
  }

  #floor(objective: Counted): number {
    return floorOf(this.#problem, objective, this.#leastCost)
  }

  #value(objective: Objective): number {
    return measure(this.#problem, this.#best(), objective)
  }

  #isBetter(plan: Solution, objective: Counted): boolean {
    for (const each of [...this.#held.map((one) => one.objective), objective]) {
      const difference = measure(this.#problem, plan, each) - this.#value(each)
      if (difference !== 0) return difference < 0
    }
    return false
  }

  #best(): Solution {
    const { best } = this.#chosen
    if (best === null) throw new Error('the ranking begins with a plan')
    return best
  }

  #inCents({ best }: RuledOutcome): Solution | null {
    return best === null ? null : solutionOf(this.#problem, this.#cents, best.boards, best.flows)
  }
}
