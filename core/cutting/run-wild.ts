import type { CutJob, CutPlan } from './types.ts'

/** The plan with what is cut off in place said at every cut of a piece that runs wild. */
export function sayingWhatRunsWild(job: CutJob, plan: CutPlan): CutPlan {
  const wild = new Map(
    [...job.pieces, ...plan.runPieces].flatMap((piece) =>
      piece.wild === undefined ? [] : [[piece.id, piece.wild] as const],
    ),
  )
  if (wild.size === 0) return plan
  const boards = plan.boards.map((board) => ({
    ...board,
    cuts: board.cuts.map((cut) => {
      const most = wild.get(cut.pieceId)
      return most === undefined ? cut : { ...cut, wild: most }
    }),
  }))
  return { ...plan, boards }
}
