import type { Frame } from './frame/index.ts'
import { type GuardPlan, layGuard } from './guard/index.ts'
import type { Fault, Job } from './job/index.ts'
import type { Layout } from './layout/index.ts'
import { layStairs, type StairPlan, withUprights } from './stairs/index.ts'
import { ok, type Result } from './units/index.ts'

/** What stands on a frame and beside it. */
export interface Laid {
  readonly stairs: readonly StairPlan[]
  /** left open for the stairs */
  readonly guard: GuardPlan | null
  /** the frame as it is built under them: without blocks in whose place one behind a guard post stands */
  readonly frame: Frame
}

/** Stairs and the guard of a frame, or the named faults that keep them from being built. */
export function layAdditions(job: Job, layout: Layout, frame: Frame): Result<Laid, readonly Fault[]> {
  const stairs = layStairs(job, layout, frame.members)
  if (!stairs.ok) return stairs
  const guard = layGuard(job, layout, frame, stairs.value)
  if (!guard.ok) return guard
  const built = [...frame.members, ...(guard.value?.members ?? [])]
  return ok({
    stairs: withUprights(job, stairs.value, built),
    guard: guard.value,
    frame: withoutReplaced(frame, guard.value),
  })
}

function withoutReplaced(frame: Frame, guard: GuardPlan | null): Frame {
  if (guard === null || guard.replaced.length === 0) return frame
  return { ...frame, members: frame.members.filter(({ id }) => !guard.replaced.includes(id)) }
}
