import type { Planned } from '../../core/estimate-types.ts'
import { boardsOf, type SawDays } from './saw-day.ts'

/**
 * Boards that were marked at the saw as unusable, by the line of the estimate that bought them: those of which a stretch
 * was culled that a piece was to come from. What is bad in an offcut only takes no board away.
 */
export function culledByLine(plans: readonly Planned[], days: SawDays): ReadonlyMap<string, number> {
  const counts = new Map<string, number>()
  for (const { plan, onHand } of plans) {
    const day = days[plan.jobId]
    // a day of other boards says nothing of these
    if (day === undefined || day.boards !== boardsOf(plan)) continue
    for (const { number, stockId, cuts } of plan.boards) {
      if (onHand.includes(stockId)) continue
      const isCulled = day.day.culls.some(
        ({ board, from, to }) => board === number && cuts.some((cut) => cut.from < to && cut.to > from),
      )
      if (isCulled) counts.set(`lumber-${stockId}`, (counts.get(`lumber-${stockId}`) ?? 0) + 1)
    }
  }
  return counts
}
