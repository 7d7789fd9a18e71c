import type { Ticks } from '../../units/index.ts'
import { mitresBetween } from '../mitres/run-mitres.ts'
import type { CutJob, JointPoint, RunGroup } from '../types.ts'

/** A job in which one member is jointed at a point, whose own cost is not in it. */
export interface Forced {
  readonly job: CutJob
  readonly jointCost: number
}

/**
 * The same job with one member of a run jointed at `at`: the member becomes two, left and right of the point. Where
 * the run has other members, this one has no further joint, so that no cap but that of the point itself is shared.
 * null: it cannot be stated so (courses laid in turn, a limit on joints, a window), or the pieces would break a rule.
 */
export function forceJoint(job: CutJob, runId: string, at: number): Forced | null {
  const run = job.runs.find(({ id }) => id === runId)
  const point = run?.points.find((candidate) => candidate.at === at)
  const [member] = run?.members ?? []
  if (run === undefined || point === undefined || member === undefined) return null
  if (run.neighboursApart || run.maxJoints !== null || run.windows !== undefined || point.cap === 0)
    return null
  const alone = run.members.length === 1
  const halves = [leftOf(run, point, alone), rightOf(run, point, alone)]
  if (halves.some((half) => !keepsRules(half))) return null
  const rest: RunGroup = {
    ...run,
    members: run.members.slice(1),
    points: run.points.map((other) =>
      other !== point || point.cap === null ? other : { ...point, cap: point.cap - 1 },
    ),
  }
  const named = halves.map((half, h) => ({
    ...half,
    id: `${run.id}/${h}`,
    members: [{ id: `${member.id}/${h}`, mark: member.mark }],
  }))
  return {
    job: { ...job, runs: job.runs.flatMap((other) => (other === run ? [...named, rest] : [other])) },
    jointCost: point.cost,
  }
}

/** Pieces that keep the rules can only be had of a half that does as a whole: any part of it is shorter. */
function keepsRules(half: RunGroup): boolean {
  return half.length >= half.minPiece && half.supports.length >= half.minSupports
}

function endsBetween(run: RunGroup, from: number, to: number): Pick<RunGroup, 'mitres'> {
  if (run.mitres === undefined) return {}
  return { mitres: { ...run.mitres, ends: mitresBetween(run, from, to)?.ends ?? [0, 0] } }
}

function leftOf({ wild: _cutOffAtTheEnd, ...run }: RunGroup, point: JointPoint, alone: boolean): RunGroup {
  return {
    ...run,
    ...endsBetween(run, 0, point.at),
    length: (point.at + point.lap) as Ticks,
    points: alone ? run.points.filter((other) => other.at < point.at) : [],
    supports: run.supports.filter((support) => support <= point.at),
  }
}

function rightOf(run: RunGroup, point: JointPoint, alone: boolean): RunGroup {
  const shift = point.at - point.lap
  return {
    ...run,
    ...endsBetween(run, point.at, run.length),
    length: (run.length - shift) as Ticks,
    points: alone
      ? run.points
          .filter((other) => other.at > point.at)
          .map((other) => ({ ...other, at: (other.at - shift) as Ticks }))
      : [],
    supports: run.supports
      .filter((support) => support >= point.at)
      .map((support) => (support - shift) as Ticks),
  }
}
