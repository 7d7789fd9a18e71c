import { patternKey } from '../model/board-cost.ts'
import type { Pattern, Problem } from '../model/problem.ts'
import { chained, gapBetween, type ToLay } from './chain.ts'

/** More pieces than this are not tried in every order. */
const MOST_PIECES = 8

/** What was found out of a problem's patterns: they are listed anew for every question. */
const known = new WeakMap<Problem, Map<string, boolean>>()

/**
 * False where the pieces of a pattern lie on its board in no order: by a relaxed measure some patterns are a tick or two
 * too long. True too where that is not known.
 */
export function mayFit(problem: Problem, pattern: Pattern): boolean {
  if (problem.measure.isRelaxed !== true) return true
  const own = known.get(problem) ?? new Map<string, boolean>()
  known.set(problem, own)
  const key = patternKey(pattern)
  const before = own.get(key)
  if (before !== undefined) return before
  const fits = isShortEnough(problem, pattern)
  own.set(key, fits)
  return fits
}

function isShortEnough(problem: Problem, { stock, items, counts }: Pattern): boolean {
  const { kerf } = problem.job
  const usable = problem.stocks[stock]?.usable ?? 0
  const pieces = items.flatMap((item, k) =>
    Array.from({ length: counts[k] ?? 0 }, () => problem.items[item]?.shapes ?? []),
  )
  const first = pieces.flatMap(([shape]) => (shape === undefined ? [] : [shape]))
  if (first.length < pieces.length || pieces.length > MOST_PIECES) return true
  if ((chained(first, kerf, 0).at(-1)?.to ?? 0) <= usable) return true
  return shortest(pieces, kerf) <= usable
}

/**
 * The shortest stretch of board that holds the pieces, each in any of its shapes, over every order and either way round
 * (Held and Karp 1962).
 */
function shortest(pieces: readonly (readonly ToLay[])[], kerf: number): number {
  const ways = pieces.flatMap((shapes, k) =>
    shapes.flatMap((piece) => [false, true].map((turned) => ({ piece, turned, k }))),
  )
  const all = (1 << pieces.length) - 1
  const gaps = ways.map((last) => ways.map((next) => gapBetween(last, next, kerf) + next.piece.length))
  const reach = new Float64Array((all + 1) * ways.length).fill(Number.POSITIVE_INFINITY)
  ways.forEach(({ piece, k }, w) => {
    reach[(1 << k) * ways.length + w] = piece.length
  })
  for (let set = 1; set <= all; set++)
    for (let w = 0; w < ways.length; w++) {
      const sofar = reach[set * ways.length + w] as number
      if (sofar === Number.POSITIVE_INFINITY) continue
      ways.forEach((next, v) => {
        if ((set & (1 << next.k)) !== 0) return
        const cell = (set | (1 << next.k)) * ways.length + v
        reach[cell] = Math.min(reach[cell] as number, sofar + (gaps[w]?.[v] ?? 0))
      })
    }
  return Math.min(...reach.subarray(all * ways.length))
}
