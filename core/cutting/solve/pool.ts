import type { BoardTable, Spot } from '../bound/board-table.ts'
import { patternOf } from '../model/board-cost.ts'
import type { Pattern, Problem } from '../model/problem.ts'
import { repeatable } from './random.ts'
import type { Solution } from './solution.ts'

/** One board of one piece each, on the stock type that is cheapest for it: a start from which every master can be solved. */
function singles(problem: Problem): Pattern[] {
  return problem.items.flatMap((item, i) => {
    const patterns: Pattern[] = []
    problem.stocks.forEach((stock, s) => {
      for (let count = Math.min(item.limit, Math.floor(stock.capacity / item.width)); count > 0; count--) {
        const pattern = patternOf(problem, s, [i], [count])
        if (pattern.used > stock.capacity) continue
        patterns.push(pattern)
        return
      }
    })
    const endless = patterns.filter(
      (pattern) => problem.stocks[pattern.stock]?.supply === Number.POSITIVE_INFINITY,
    )
    const wanted = endless.length > 0 ? endless : patterns
    return wanted.sort((a, b) => a.cost / a.used - b.cost / b.used).slice(0, 2)
  })
}

/**
 * The first columns of a master: those of the starting plans, one piece a board, and `rounds` randomised fills,
 * each board filled as fully as can be from what is left, its widest piece forced in. Such a start saves most of
 * the iterations of a large master.
 */
export function firstPatterns(
  problem: Problem,
  plans: readonly Solution[],
  table: BoardTable,
  rounds: number,
): Pattern[] {
  const patterns = singles(problem)
  for (const plan of plans) for (const { pattern } of plan.boards) patterns.push(pattern)
  const random = repeatable(1)
  const n = problem.items.length
  const ends = problem.stocks.map((stock) => stock.capacity)
  for (let round = 0; round < rounds; round++) {
    const profits = problem.items.map((item) => item.width * (1 + 0.04 * (random() - 0.5)))
    const found: { item: number; spot: Spot; stock: number }[] = []
    const note = (item: number): void => {
      problem.stocks.forEach((stock, s) => {
        if (table.valueBeside(item, stock.capacity) >= 0)
          found.push({ item, spot: table.spotBeside(item, stock.capacity), stock: s })
      })
    }
    table.fill(profits, false, note, ends)
    const chosen = found.length > 4 * n ? found.filter(() => random() < (4 * n) / found.length) : found
    for (const { item, spot, stock } of chosen) {
      const filling = table.traceSpot(item + 1, spot)
      patterns.push(patternOf(problem, stock, [item, ...filling.items], [1, ...filling.counts]))
    }
  }
  return patterns
}
