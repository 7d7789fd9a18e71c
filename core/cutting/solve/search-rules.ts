import type { LpEngine } from '../lp-port.ts'
import type { Costs } from '../model/costs.ts'
import type { Problem, RunModel } from '../model/problem.ts'
import { arrange, type MemberPath, pathsOf } from './arrange.ts'
import { type Outcome, type SearchOptions, search } from './search.ts'
import type { Solution } from './solution.ts'
import { startingPlans } from './start.ts'
import type { Work } from './work.ts'

/** Smaller problems searched at most, after plans that break a rule the master does not know. */
const MOST_SEARCHES = 2_000
/** So many where no proof is sought, or the work allowed is done, before a plan by hand's methods is enough. */
const HURRIED_SEARCHES = 6

export interface RuledOutcome extends Outcome {
  /** per run, per member */
  readonly paths: readonly (readonly MemberPath[])[]
}

/** Either members in order, or the smaller problems one of which holds every other plan that keeps the rules. */
type Judgement =
  | { readonly paths: MemberPath[][] }
  | {
      readonly children: Problem[]
      /** false where the search for an order ended early, so that this plan may keep the rules too */
      readonly breaks: boolean
    }

/** Different lengths bought; offcuts on hand do not count. */
export function lengthsBought(problem: Problem, solution: Solution): number[] {
  const bought = new Set<number>()
  for (const { pattern } of solution.boards) {
    const option = problem.stocks[pattern.stock]?.option
    if (option !== undefined && !option.offcut) bought.add(option.length)
  }
  return [...bought].sort((a, b) => a - b)
}

/**
 * Rules that the master does not know. Too many lengths: any plan within the limit does without one of those used.
 * Neighbours jointed at one point in every order: any other flow uses some piece of this one less often, since flows
 * of equal size in a graph without circles differ only if one arc carries less.
 */
export function judge(problem: Problem, solution: Solution, maxLengths: number): Judgement {
  const bought = lengthsBought(problem, solution)
  if (bought.length > maxLengths)
    return { children: bought.map((length) => withoutLength(problem, length)), breaks: true }
  const paths: MemberPath[][] = []
  for (let r = 0; r < problem.runs.length; r++) {
    const run = problem.runs[r] as RunModel
    const flow = solution.flows[r] ?? []
    if (!run.group.neighboursApart) {
      paths.push(pathsOf(run, flow))
      continue
    }
    const arrangement = arrange(run, flow)
    if (arrangement.kind === 'arranged') paths.push(arrangement.paths)
    else {
      return {
        children: flow.flatMap((carried, a) =>
          carried === 0 ? [] : [withArcLimit(problem, r, a, carried - 1)],
        ),
        breaks: arrangement.kind === 'none',
      }
    }
  }
  return { paths }
}

function withArcLimit(problem: Problem, run: number, arc: number, most: number): Problem {
  const runs = problem.runs.map((model, r) =>
    r === run
      ? { ...model, arcs: model.arcs.map((entry, a) => (a === arc ? { ...entry, most } : entry)) }
      : model,
  )
  return { ...problem, runs }
}

/** Different lengths that can be bought. */
export function lengthsOnSale(problem: Problem): number[] {
  const lengths = problem.stocks.flatMap(({ option, supply, counts }) =>
    option.offcut || supply === 0 || counts?.length === 0 ? [] : [option.length],
  )
  return [...new Set<number>(lengths)].sort((a, b) => a - b)
}

/** A length that is not bought: its stock stays in the list, with none to be had. */
export function withoutLength(problem: Problem, length: number): Problem {
  const stocks = problem.stocks.map((stock) =>
    stock.option.length === length && !stock.option.offcut
      ? { ...stock, supply: 0, counts: stock.counts === null ? null : [] }
      : stock,
  )
  return { ...problem, stocks }
}

function keyOf(problem: Problem): string {
  return JSON.stringify([
    problem.stocks.map((stock) => stock.supply),
    problem.runs.map((run) => run.arcs.map((arc) => arc.most)),
  ])
}

/** A smaller problem that is not searched yet. */
interface Open {
  readonly problem: Problem
  /** of the problem that it is a part of */
  readonly bound: number
  /** of the plan that it does without */
  readonly cost: number
}

interface Ruled {
  readonly solution: Solution
  readonly paths: MemberPath[][]
}

/**
 * Least cost under all rules: the search, and where its plan breaks a rule, the search of each smaller problem. Where no
 * proof is sought, or the work allowed is done, the first of them that keeps the rules is enough.
 */
export function searchRules(
  problem: Problem,
  costs: Costs,
  engine: LpEngine,
  work: Work,
  options: SearchOptions,
  maxLengths: number,
): RuledOutcome {
  const root = search(problem, costs, engine, work, options)
  if (root.best === null) return { ...root, paths: [] }
  const first = judge(problem, root.best, maxLengths)
  if ('paths' in first) return { ...root, paths: first.paths }
  // a bound of a smaller problem is none of this one
  const { onBest } = options
  const ofChild = { ...options, onBest: onBest && ((plan: Solution) => onBest(plan, root.dual, root.bound)) }
  const byHand = firstRuled(problem, costs, maxLengths)
  let best = byHand
  /** least bound of a problem that was left with a gap */
  let loose = Number.POSITIVE_INFINITY
  const seen = new Set<string>()
  const open: Open[] = []
  const part = (
    { children, breaks }: Exclude<Judgement, Pick<Ruled, 'paths'>>,
    bound: number,
    cost: number,
  ) => {
    if (!breaks) loose = Math.min(loose, bound)
    for (const child of children) {
      const key = keyOf(child)
      if (seen.has(key)) continue
      seen.add(key)
      open.push({ problem: child, bound, cost })
    }
  }
  part(first, root.bound, root.best.cost)
  for (let searches = 0; open.length > 0 && searches < MOST_SEARCHES; searches++) {
    const next = nextOf(open)
    if (best !== null && next.bound >= best.solution.cost) break
    const hurried = options.quick || work.spent()
    if (hurried && best !== null && (best !== byHand || searches >= HURRIED_SEARCHES)) break
    if (work.stopped()) break
    open.splice(open.indexOf(next), 1)
    const outcome = search(next.problem, costs, engine, work, ofChild)
    if (outcome.best === null) continue
    const bound = Math.max(next.bound, outcome.bound)
    const ruled = judge(next.problem, outcome.best, maxLengths)
    if ('children' in ruled) {
      part(ruled, bound, outcome.best.cost)
      continue
    }
    if (best === null || outcome.best.cost < best.solution.cost)
      best = { solution: outcome.best, paths: ruled.paths }
    if (outcome.best.cost > bound) loose = Math.min(loose, bound)
  }
  if (best === null) return { ...root, best: null, lacking: null, paths: [] }
  const least = open.reduce((bound, node) => Math.min(bound, node.bound), Math.min(loose, best.solution.cost))
  const bound = Math.max(root.bound, least)
  const searched = bound > root.dual.cents ? { nodes: work.nodes, patterns: work.patterns } : null
  options.onProgress(bound, best.solution.cost)
  return { ...root, best: best.solution, bound, searched, paths: best.paths }
}

/** The cheapest of the plans by hand's methods that keeps the rules. */
function firstRuled(problem: Problem, costs: Costs, maxLengths: number): Ruled | null {
  let best: Ruled | null = null
  for (const solution of startingPlans(problem, costs)) {
    if (best !== null && solution.cost >= best.solution.cost) continue
    const ruled = judge(problem, solution, maxLengths)
    if ('paths' in ruled) best = { solution, paths: ruled.paths }
  }
  return best
}

/** Of the least bound, and of those the one whose plan was cheapest; of equal ones the first. */
function nextOf(open: readonly Open[]): Open {
  return open.reduce((least, one) =>
    one.bound < least.bound || (one.bound === least.bound && one.cost < least.cost) ? one : least,
  )
}
