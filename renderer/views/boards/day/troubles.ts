import type { Board, DayState } from '../../../../core/cutting/index.ts'
import { printLength } from '../../../../core/units/index.ts'

/** What went wrong with a board, in words. */
export function troublesOf(board: Board, day: DayState): readonly string[] {
  return [
    ...day.culls
      .filter((cull) => cull.board === board.number)
      .map(({ from, to }) =>
        from === 0 && to === board.length ? 'culled' : `bad from ${printLength(from)} to ${printLength(to)}`,
      ),
    ...day.miscuts
      .filter((miscut) => miscut.board === board.number)
      .map(({ pieceId, length }) => {
        const mark = board.cuts.find((cut) => cut.pieceId === pieceId)?.mark ?? pieceId
        return length === null ? `${mark} is lost` : `${mark} came out ${printLength(length)}`
      }),
  ]
}
