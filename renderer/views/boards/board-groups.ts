import type { Board, CutPlan } from '../../../core/cutting/index.ts'

/** Boards of one length cut alike, drawn once. */
export interface BoardGroup {
  readonly key: string
  readonly length: number
  readonly boards: readonly Board[]
}

/** In which order the boards of a product stand. */
export const BOARD_ORDERS = [
  ['length', 'longest board first'],
  ['number', 'by number'],
  ['left', 'most left over first'],
] as const
export type BoardOrder = (typeof BOARD_ORDERS)[number][0]

/**
 * Boards cut to the same lengths in the same order, in the order asked for, then by their first number; `byMark` keeps
 * boards apart whose pieces are marked otherwise.
 */
export function groupBoards(
  plan: CutPlan,
  { byMark = false, order = 'length' }: { readonly byMark?: boolean; readonly order?: BoardOrder } = {},
): readonly BoardGroup[] {
  const alike = Map.groupBy(
    plan.boards,
    (board) =>
      `${board.length}:${board.cuts.map((cut) => (byMark ? `${cut.length} ${cut.mark}` : cut.length)).join(',')}`,
  )
  return [...alike]
    .map(([key, boards]) => ({ key, length: boards[0]?.length ?? 0, boards }))
    .sort(
      (a, b) => rank(b, order) - rank(a, order) || (a.boards[0]?.number ?? 0) - (b.boards[0]?.number ?? 0),
    )
}

function rank({ length, boards }: BoardGroup, order: BoardOrder): number {
  if (order === 'length') return length
  return order === 'left' ? (boards[0]?.offcut ?? 0) : 0
}
