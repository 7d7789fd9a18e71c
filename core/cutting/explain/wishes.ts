import { mitresBetween } from '../mitres/run-mitres.ts'
import type { CutJob, RunGroup } from '../types.ts'

/**
 * The same job with a run, or one member of it, held in one piece: what is held becomes pieces of fixed length.
 * Exact for every run but one with `neighboursApart` of which only a part is held: the others are then laid without
 * counting on the whole one between them, so that the plan is sound but could be a little dearer than need be.
 */
export function holdInOnePiece(job: CutJob, runOrMemberId: string): CutJob {
  const held: CutJob['pieces'][number][] = []
  const runs = job.runs.map((run): RunGroup => {
    const whole = run.members.filter(({ id }) => run.id === runOrMemberId || id === runOrMemberId)
    const mitres = mitresBetween(run, 0, run.length)
    for (const { id, mark } of whole)
      held.push({ id, mark, length: run.length, ...(mitres === undefined ? {} : { mitres }) })
    return whole.length === 0
      ? run
      : { ...run, members: run.members.filter((member) => !whole.includes(member)) }
  })
  return { ...job, pieces: [...job.pieces, ...held], runs }
}

/** The same job without one stock option. */
export function forbidStock(job: CutJob, stockId: string): CutJob {
  const allowed = job.onlyStock ?? job.stock.map(({ id }) => id)
  return { ...job, onlyStock: allowed.filter((id) => id !== stockId) }
}

/** The same job with no joint of a run at one of its points. */
export function forbidJoint(job: CutJob, runId: string, at: number): CutJob {
  return { ...job, runs: job.runs.map((run) => (run.id === runId ? withoutPoint(run, at) : run)) }
}

function withoutPoint(run: RunGroup, at: number): RunGroup {
  const kept = run.points.flatMap((point, index) => (point.at === at ? [] : [index]))
  const place = new Map(kept.map((index, now) => [index, now]))
  const without = { ...run, points: run.points.filter((point) => point.at !== at) }
  if (run.windows === undefined) return without
  return {
    ...without,
    windows: run.windows.map(({ points, cap }) => ({
      cap,
      points: points.flatMap((index) => place.get(index) ?? []),
    })),
  }
}
