import { checkFrame } from './checks/index.ts'
import type { Design } from './estimate-types.ts'
import { type Frame, type FrameRun, frameDeck } from './frame/index.ts'
import type { GuardPlan } from './guard/index.ts'
import { type Fault, type FieldPath, type Job, namedRuns, noSuchRun, readJob } from './job/index.ts'
import { layAdditions } from './lay-additions.ts'
import { layOut } from './layout/index.ts'
import { takeOff } from './takeoff/index.ts'
import { fail, ok, type Result } from './units/index.ts'

/** From a stated job to its frame, checks and quantities: the part that is quick enough for every keystroke. */
export function design(statement: unknown): Result<Design, readonly Fault[]> {
  const read = readJob(statement)
  return read.ok ? designJob(read.value.job, read.value.given) : read
}

/** The same from a job that is already valid. */
export function designJob(job: Job, given: readonly FieldPath[]): Result<Design, readonly Fault[]> {
  const layout = layOut(job)
  if (!layout.ok) return layout
  const framed = frameDeck(job, layout.value)
  if (!framed.ok) return framed
  const additions = layAdditions(job, layout.value, framed.value)
  if (!additions.ok) return additions
  const frame = withoutReplaced(framed.value, additions.value.guard)
  const takeoff = takeOff(job, frame, additions.value)
  const unknown = unknownRuns(job, takeoff.runs)
  if (unknown.length > 0) return fail(unknown)
  return ok({
    job,
    given,
    layout: layout.value,
    frame,
    ...additions.value,
    checks: checkFrame(job, layout.value, frame, additions.value),
    takeoff,
  })
}

/** The frame but for blocks in whose place one behind a guard post stands. */
function withoutReplaced(frame: Frame, guard: GuardPlan | null): Frame {
  if (guard === null || guard.replaced.length === 0) return frame
  return { ...frame, members: frame.members.filter(({ id }) => !guard.replaced.includes(id)) }
}

/** Runs to be held in one piece that this deck does not have. */
function unknownRuns({ cutting }: Job, runs: readonly FrameRun[]): readonly Fault[] {
  return namedRuns(cutting.onePiece, runs).unknown.map((name) => ({
    path: 'cutting.onePiece',
    ...noSuchRun(name, runs),
  }))
}
