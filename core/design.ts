import { checkFrame } from './checks/index.ts'
import type { Design } from './estimate-types.ts'
import { type Frame, type FrameRun, frameDeck, type frameZones } from './frame/index.ts'
import { type Fault, type FieldPath, type Job, namedRuns, noSuchRun, readJob } from './job/index.ts'
import { layAdditions } from './lay-additions.ts'
import { type Layout, layOut } from './layout/index.ts'
import { takeOff } from './takeoff/index.ts'
import { fail, ok, type Result } from './units/index.ts'

/** From a stated job to its frame, checks and quantities: the part that is quick enough for every keystroke. */
export function design(statement: unknown): Result<Design, readonly Fault[]> {
  const read = readJob(statement)
  return read.ok ? designJob(read.value.job, read.value.given) : read
}

/** The same from a job that is already valid. */
export function designJob(job: Job, given: readonly FieldPath[]): Result<Design, readonly Fault[]> {
  const framed = frameJob(job)
  if (!framed.ok) return framed
  const { layout } = framed.value
  const laid = layAdditions(job, layout, framed.value.frame)
  if (!laid.ok) return laid
  const { frame, ...additions } = laid.value
  const takeoff = takeOff(job, frame, additions)
  const unknown = unknownRuns(job, takeoff.runs)
  if (unknown.length > 0) return fail(unknown)
  const checks = checkFrame(job, layout, frame, additions)
  return ok({ job, given, layout, frame, ...additions, checks, takeoff })
}

/** A job laid out and framed. */
export interface FramedJob {
  readonly job: Job
  readonly layout: Layout
  readonly frame: Frame
}

/**
 * The frame of a valid job alone, without what stands on it.
 * @param partsOf as for `frameDeck`
 */
export function frameJob(job: Job, partsOf?: typeof frameZones): Result<FramedJob, readonly Fault[]> {
  const layout = layOut(job)
  if (!layout.ok) return layout
  const frame = frameDeck(job, layout.value, partsOf)
  return frame.ok ? ok({ job, layout: layout.value, frame: frame.value }) : frame
}

/** Runs to be held in one piece that this deck does not have. */
function unknownRuns({ cutting }: Job, runs: readonly FrameRun[]): readonly Fault[] {
  return namedRuns(cutting.onePiece, runs).unknown.map((name) => ({
    path: 'cutting.onePiece',
    ...noSuchRun(name, runs),
  }))
}
