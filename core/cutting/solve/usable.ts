import type { DualBound } from '../bound/dual-bound.ts'
import type { Costs } from '../model/costs.ts'
import type { Problem } from '../model/problem.ts'
import { type Ways, waysWithin } from './ways.ts'

/** What plans cheaper than a limit can want of the pieces. */
export interface Usable {
  /** most pieces of each item */
  readonly limits: readonly number[]
  /** one[item × items + other]: 0 where no such plan wants both, so that no board of it need hold both; null: not known */
  readonly together: Uint8Array | null
}

/** Where there are more pairs of pieces of runs than this, no pair is looked at. */
const MOST_PAIRS = 4_000_000

/** A piece of a run. */
interface Source {
  readonly run: number
  readonly arc: number
}

/**
 * Pieces and pairs of pieces that a plan cheaper than `below` can want. A member goes one way only, so that two pieces of
 * a run with one member are wanted together only where one way has both. A board of a cheapest plan need not hold more
 * than is wanted, unless it costs less the more of it is used.
 */
export function usableWithin(problem: Problem, costs: Costs, bound: DualBound, below: number): Usable {
  const ways = waysWithin(problem, costs, bound, below)
  const members = ({ run }: Source): number => problem.runs[run]?.members ?? 0
  const sources = problem.items.map((): Source[] => [])
  problem.runs.forEach(({ arcs }, run) => {
    arcs.forEach(({ item }, arc) => {
      if (ways[run]?.has(arc) === true) sources[item]?.push({ run, arc })
    })
  })
  const wanted = (one: Source, other: Source): boolean => areWanted(ways, one, other, members(one))
  const limits = problem.items.map(({ demand, limit }, item) => {
    const own = sources[item] ?? []
    const once = own.every(
      (one, k) => members(one) === 1 && own.slice(k + 1).every((other) => !wanted(one, other)),
    )
    const most = own.length === 0 ? 0 : once ? 1 : limit
    return Math.min(limit, demand + most)
  })
  const all = sources.reduce((sum, own) => sum + own.length, 0)
  if (all * all > MOST_PAIRS) return { limits, together: null }
  const n = problem.items.length
  const together = new Uint8Array(n * n)
  for (let i = 0; i < n; i++)
    for (let j = i; j < n; j++) {
      const isFixed = (problem.items[i]?.demand ?? 0) > 0 || (problem.items[j]?.demand ?? 0) > 0
      const both =
        isFixed || sources[i]?.some((one) => sources[j]?.some((other) => wanted(one, other))) === true
      together[i * n + j] = both ? 1 : 0
      together[j * n + i] = both ? 1 : 0
    }
  return { limits, together }
}

function areWanted(ways: readonly Ways[], one: Source, other: Source, members: number): boolean {
  return one.run !== other.run || members > 1 || ways[one.run]?.haveBoth(one.arc, other.arc) === true
}
