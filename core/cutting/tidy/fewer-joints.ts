import type { LpEngine } from '../lp-port.ts'
import { costsInCents } from '../model/costs.ts'
import type { Problem } from '../model/problem.ts'
import { fewestJoints } from '../solve/fewest-joints.ts'
import { type Counted, combined, measure } from '../solve/objectives.ts'
import { lengthsBought, type RuledOutcome, searchRules } from '../solve/search-rules.ts'
import { solutionOf } from '../solve/solution.ts'
import { Work } from '../solve/work.ts'
import type { WorkLimits } from '../types.ts'

/** Work for the second search: its plan is taken or left, and a person waits for it. */
const LIMITS: WorkLimits = { columns: 4_000, nodes: 12, patterns: 800 }

/** A plan as good by every objective and no dearer with fewer joints, where a short search finds one; else the plan itself. */
export function fewerJoints(
  problem: Problem,
  chosen: RuledOutcome,
  engine: LpEngine,
  stop: () => boolean,
): RuledOutcome {
  const { best } = chosen
  const { objectives, maxLengths } = problem.job
  if (best === null || objectives.includes('fewest joints')) return chosen
  const joints = measure(problem, best, 'fewest joints')
  if (joints <= fewestJoints(problem)) return chosen
  const before = objectives.filter((objective): objective is Counted => objective !== 'fewest lengths')
  const wanted: Counted[] = before.includes('least cost') ? before : [...before, 'least cost']
  const costs = combined(problem, [...wanted, 'fewest joints'], best)
  const lengths = objectives.includes('fewest lengths') ? lengthsBought(problem, best).length : maxLengths
  const quiet = { quick: !someJointIsFree(problem), onProgress: () => undefined }
  const work = new Work(LIMITS, stop)
  const other = searchRules(problem, costs, engine, work, quiet, lengths ?? Number.POSITIVE_INFINITY)
  if (work.stopped()) return chosen
  const cents = costsInCents(problem)
  const plan = other.best === null ? null : solutionOf(problem, cents, other.best.boards, other.best.flows)
  if (plan === null || measure(problem, plan, 'fewest joints') >= joints) return chosen
  const asGood = wanted.every(
    (objective) => measure(problem, plan, objective) <= measure(problem, best, objective),
  )
  return asGood ? { ...chosen, best: plan, paths: other.paths } : chosen
}

/** Where a joint costs nothing many plans cost the same, and a first plan is not enough to tell the fewest joints. */
function someJointIsFree(problem: Problem): boolean {
  return problem.runs.some((run) => run.group.points.some((point) => point.cost === 0))
}
