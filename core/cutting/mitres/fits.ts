import type { CutJob, CutPlan } from '../types.ts'

/** Every board of the plan ends where it is good, its shared cuts and all: a plan made by a relaxed measure may not. */
export function fitsItsBoards(job: CutJob, plan: CutPlan): boolean {
  const offcuts = new Set(job.stock.filter((option) => option.offcut).map((option) => option.id))
  return plan.boards.every(
    ({ stockId, length, cuts }) =>
      (cuts.at(-1)?.to ?? 0) <= length - (offcuts.has(stockId) ? 0 : job.endTrim),
  )
}
