import type { Ticks } from '../../units/index.ts'
import { lengthsTooFew, runCrowded, runUnordered, supplyTooSmall } from '../model/infeasible.ts'
import type { Problem } from '../model/problem.ts'
import type { Infeasible } from '../types.ts'
import type { Outcome } from './search.ts'

/** Why nothing does the job, in words that name the run or piece. */
export function reasonFor(problem: Problem, outcome: Outcome): Infeasible {
  const { job } = problem
  const longest = problem.stocks.reduce((most, stock) => Math.max(most, stock.usable), 0) as Ticks
  const crowded = problem.runs[outcome.lacking?.runs[0] ?? -1]
  if (crowded !== undefined) return runCrowded(job, crowded.group, longest)
  const item = problem.items[outcome.lacking?.items[0] ?? -1]
  if (item !== undefined) {
    const piece = job.pieces.find(
      ({ length, mitres }) => length - problem.measure.less(length, mitres) === item.size,
    )
    const run = problem.runs.find((model) => model.arcs.some((arc) => problem.items[arc.item] === item))
    const subject = piece?.mark ?? run?.group.label ?? job.label
    return supplyTooSmall(job, subject, piece?.length ?? item.size)
  }
  const apart = problem.runs.find((run) => run.group.neighboursApart)
  if (job.maxLengths !== undefined) return lengthsTooFew(job, job.maxLengths)
  return apart === undefined ? supplyTooSmall(job, job.label, longest) : runUnordered(job, apart.group)
}
