import type { LpEngine } from '../lp-port.ts'
import type { Costs } from '../model/costs.ts'
import type { Problem } from '../model/problem.ts'
import type { SearchOptions } from './search.ts'
import { lengthsOnSale, type RuledOutcome, searchRules, withoutLength } from './search-rules.ts'
import type { Work } from './work.ts'

/** Most choices of lengths that are looked at one by one; beyond it lengths are left out one after another. */
const MOST_CHOICES = 220

/**
 * Least cost with at most so many different lengths bought. Each choice of lengths is a small problem with a bound of
 * its own: those whose bound lies above the best plan of another are not searched.
 */
export function searchWithin(
  problem: Problem,
  costs: Costs,
  engine: LpEngine,
  work: () => Work,
  options: SearchOptions,
  most: number,
): RuledOutcome {
  const lengths = lengthsOnSale(problem)
  if (most >= lengths.length || choices(lengths.length, most) > MOST_CHOICES) {
    const outcome = searchRules(problem, costs, engine, work(), options, most)
    return { ...outcome, bound: boundOf(outcome) }
  }
  const first = subsets(lengths, most).map((kept) => {
    const left = lengths
      .filter((length) => !kept.includes(length))
      .reduce((smaller, length) => withoutLength(smaller, length), problem)
    const looked = { ...options, quick: true, onProgress: () => undefined, onBest: undefined }
    return { left, outcome: searchRules(left, costs, engine, work(), looked, Number.POSITIVE_INFINITY) }
  })
  first.sort((a, b) => boundOf(a.outcome) - boundOf(b.outcome) || costOf(a.outcome) - costOf(b.outcome))
  let best: RuledOutcome | null = null
  let bound = Number.POSITIVE_INFINITY
  for (const { left, outcome } of first) {
    const open = outcome.best === null || outcome.best.cost > outcome.bound
    const worth: boolean = best === null || boundOf(outcome) < costOf(best)
    const settled: RuledOutcome =
      open && worth && !options.quick
        ? searchRules(
            left,
            costs,
            engine,
            work(),
            { ...options, onBest: undefined },
            Number.POSITIVE_INFINITY,
          )
        : outcome
    bound = Math.min(bound, boundOf(settled))
    if (settled.best !== null && (best === null || settled.best.cost < costOf(best))) best = settled
  }
  const [nothing] = first
  if (best === null) {
    if (nothing === undefined) throw new Error('a choice of lengths has at least one way')
    return { ...nothing.outcome, best: null, bound }
  }
  return { ...best, bound }
}

/** No plan at all is proven by the relaxation that lacks something; else the bound it has. */
function boundOf({ best, bound, lacking }: RuledOutcome): number {
  return best === null && lacking !== null ? Number.POSITIVE_INFINITY : bound
}

function costOf({ best }: RuledOutcome): number {
  return best?.cost ?? Number.POSITIVE_INFINITY
}

function choices(of: number, most: number): number {
  let count = 1
  for (let k = 0; k < most; k++) count = (count * (of - k)) / (k + 1)
  return count
}

function subsets(lengths: readonly number[], size: number): number[][] {
  if (size === 0) return [[]]
  return lengths.flatMap((length, index) =>
    subsets(lengths.slice(index + 1), size - 1).map((rest) => [length, ...rest]),
  )
}
