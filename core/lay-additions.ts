import type { Frame } from './frame/index.ts'
import { type GuardPlan, layGuard } from './guard/index.ts'
import type { Fault, Job } from './job/index.ts'
import type { Layout } from './layout/index.ts'
import { layStairs, type StairPlan, withUprights } from './stairs/index.ts'
import { ok, type Result } from './units/index.ts'

/** What stands on a frame and beside it: stairs, and the guard that is left open for them. */
export function layAdditions(
  job: Job,
  layout: Layout,
  frame: Frame,
): Result<{ readonly stairs: readonly StairPlan[]; readonly guard: GuardPlan | null }, readonly Fault[]> {
  const stairs = layStairs(job, layout)
  if (!stairs.ok) return stairs
  const guard = layGuard(job, layout, frame, stairs.value)
  if (!guard.ok) return guard
  const built = [...frame.members, ...(guard.value?.members ?? [])]
  return ok({ stairs: withUprights(job, stairs.value, built), guard: guard.value })
}
