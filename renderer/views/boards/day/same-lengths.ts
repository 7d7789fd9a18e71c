import type { Board, CutPlan, DayState, Replan } from '../../../../core/cutting/index.ts'

/**
 * How many of the boards that are planned anew though nothing is wrong with them are still cut to the lengths of one
 * of them in the old plan, under other marks or in another order: for the saw little changes there.
 */
export function sameLengths(plan: CutPlan, day: DayState, { changed, rest, lying }: Replan): number {
  const wrong = new Set([...day.culls, ...day.miscuts].map((entry) => entry.board))
  const before = new Map<string, number>()
  for (const board of plan.boards) {
    if (!changed.includes(board.number) || wrong.has(board.number)) continue
    const key = lengthsOf(board.stockId, board)
    before.set(key, (before.get(key) ?? 0) + 1)
  }
  let same = 0
  for (const board of rest?.plan.boards ?? []) {
    const source = lying.find(({ id }) => id === board.stockId)
    if (source !== undefined && source.of === null) continue
    const key = lengthsOf(source?.of ?? board.stockId, board)
    const left = before.get(key) ?? 0
    if (left === 0) continue
    before.set(key, left - 1)
    same += 1
  }
  return same
}

function lengthsOf(stockId: string, { cuts }: Board): string {
  const lengths = cuts.map(({ length }) => length as number).sort((a, b) => b - a)
  return JSON.stringify([stockId, lengths])
}
