import type { Board, CutPlan } from '../../../core/cutting/index.ts'

/** Boards of one length cut alike, drawn once. */
export interface BoardGroup {
  readonly key: string
  readonly length: number
  readonly boards: readonly Board[]
}

/**
 * Boards cut to the same lengths in the same order, longest stock first, then by their first number; `byMark` keeps
 * boards apart whose pieces are marked otherwise.
 */
export function groupBoards(plan: CutPlan, byMark = false): readonly BoardGroup[] {
  const alike = Map.groupBy(
    plan.boards,
    (board) =>
      `${board.length}:${board.cuts.map((cut) => (byMark ? `${cut.length} ${cut.mark}` : cut.length)).join(',')}`,
  )
  return [...alike]
    .map(([key, boards]) => ({ key, length: boards[0]?.length ?? 0, boards }))
    .sort((a, b) => b.length - a.length || (a.boards[0]?.number ?? 0) - (b.boards[0]?.number ?? 0))
}
