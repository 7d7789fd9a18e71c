import type { Ticks } from '../../units/index.ts'
import { mitresBetween } from '../mitres/run-mitres.ts'
import type { CutJob, CutPlan, FixedPiece, JointPoint, RunGroup, RunPiece } from '../types.ts'

/** Where the pieces of a run of the rest lie in the run they belong to. */
export interface Place {
  readonly run: RunGroup
  readonly memberId: string
  readonly from: Ticks
  readonly to: Ticks
  /** added to a place along the rest to get the place along the member */
  readonly shift: number
  /** length of the rest, laps included */
  readonly length: number
}

/** What is still to be made once some pieces are settled. */
export interface Remainder {
  readonly pieces: readonly FixedPiece[]
  readonly runs: readonly RunGroup[]
  /** by id of a run of the rest, where it is part of one member */
  readonly places: ReadonlyMap<string, Place>
  /** pieces of runs whose joints stay as planned, by piece id */
  readonly planned: ReadonlyMap<string, RunPiece>
}

/**
 * Demand left over. A run that no settled piece belongs to stays as it is. Else its untouched members stay one
 * group under what the caps still allow, and each gap of a begun member becomes a run of its own between the joints
 * that are decided. Of a run in `frozen` every joint stays as planned.
 */
export function remainderOf(
  job: CutJob,
  plan: CutPlan,
  settled: ReadonlySet<string>,
  frozen: ReadonlySet<string>,
): Remainder {
  const pieces = job.pieces.filter((piece) => !settled.has(piece.id))
  const runs: RunGroup[] = []
  const places = new Map<string, Place>()
  const planned = new Map<string, RunPiece>()
  for (const run of job.runs) {
    const ofRun = plan.runPieces.filter((piece) => piece.runId === run.id)
    const kept = ofRun.filter((piece) => settled.has(piece.id))
    if (kept.length === 0) {
      runs.push(run)
      continue
    }
    if (frozen.has(run.id)) {
      for (const piece of ofRun) {
        if (settled.has(piece.id)) continue
        planned.set(piece.id, piece)
        const { id, mark, length, mitres } = piece
        pieces.push({ id, mark, length, ...(mitres === undefined ? {} : { mitres }) })
      }
      continue
    }
    const decided = new Set(kept.flatMap((piece) => ends(run, piece).map((at) => `${piece.memberId}|${at}`)))
    const jointsAt = (at: number): number => [...decided].filter((key) => key.endsWith(`|${at}`)).length
    const limited = underCaps(run, jointsAt)
    const untouched = run.members.filter((member) => !kept.some((piece) => piece.memberId === member.id))
    if (untouched.length > 0) runs.push({ ...limited, members: untouched })
    for (const member of run.members) {
      const own = kept.filter((piece) => piece.memberId === member.id)
      if (own.length === 0) continue
      const settledJoints = new Set(own.flatMap((piece) => ends(run, piece))).size
      gapsOf(run, own).forEach((gap, index) => {
        const name = index === 0 ? 'rest' : `rest ${index + 1}`
        const made = gapRun(run, limited, gap, member, name, settledJoints)
        runs.push(made.run)
        places.set(made.run.id, made.place)
      })
    }
  }
  return { pieces, runs, places, planned }
}

/** Joints at the ends of a piece; the member's own ends are none. */
function ends(run: RunGroup, piece: RunPiece): number[] {
  return [piece.from, piece.to].filter((at) => at > 0 && at < run.length)
}

/** The run with its caps lowered by the joints that are decided; of neighbours apart, at most half of all members a point. */
function underCaps(run: RunGroup, jointsAt: (at: number) => number): RunGroup {
  const less = (cap: number, at: number): number => Math.max(0, cap - jointsAt(at))
  const half = Math.ceil(run.members.length / 2)
  const apart = run.neighboursApart
    ? run.points.map((point, index) => ({ points: [index], cap: less(half, point.at) }))
    : []
  const windows = (run.windows ?? []).map((window) => ({
    points: window.points,
    cap: Math.max(
      0,
      window.cap - window.points.reduce((sum, index) => sum + jointsAt(run.points[index]?.at ?? -1), 0),
    ),
  }))
  return {
    ...run,
    points: run.points.map((point) => ({
      ...point,
      cap: point.cap === null ? null : less(point.cap, point.at),
    })),
    neighboursApart: false,
    windows: [...windows, ...apart],
  }
}

function gapsOf(run: RunGroup, own: readonly RunPiece[]): { from: Ticks; to: Ticks }[] {
  const gaps: { from: Ticks; to: Ticks }[] = []
  let reached = 0 as Ticks
  for (const piece of [...own].sort((a, b) => a.from - b.from)) {
    if (piece.from > reached) gaps.push({ from: reached, to: piece.from })
    reached = piece.to
  }
  if (reached < run.length) gaps.push({ from: reached, to: run.length })
  return gaps
}

/** A gap of one member as a run: it reaches over its end joints by their laps. */
function gapRun(
  run: RunGroup,
  limited: RunGroup,
  gap: { readonly from: Ticks; readonly to: Ticks },
  member: RunGroup['members'][number],
  name: string,
  settledJoints: number,
): { run: RunGroup; place: Place } {
  const lapAt = (at: number): number => run.points.find((point) => point.at === at)?.lap ?? 0
  const { wild: _atTheEndOnly, mitres: _ofWholeMembers, ...shared } = limited
  const ends = mitresBetween(run, gap.from, gap.to)
  const shift = gap.from - lapAt(gap.from)
  const length = (gap.to + lapAt(gap.to) - shift) as Ticks
  const inner = limited.points
    .map((point, index) => ({ point, index }))
    .filter(({ point }) => point.at > gap.from && point.at < gap.to)
  const indexIn = new Map(inner.map(({ index }, k) => [index, k]))
  const points: JointPoint[] = inner.map(({ point }) => ({ ...point, at: (point.at - shift) as Ticks }))
  const windows = (limited.windows ?? []).flatMap((window) => {
    const within = window.points.flatMap((index) => indexIn.get(index) ?? [])
    return within.length === 0 ? [] : [{ points: within, cap: window.cap }]
  })
  return {
    run: {
      ...shared,
      id: `${run.id}/${member.id}/${name}`,
      label: `${run.label}, ${name} of ${member.mark}`,
      members: [{ id: `${member.id}/${name}`, mark: `${member.mark} ${name}` }],
      length,
      ...(run.wild !== undefined && gap.to === run.length ? { wild: run.wild } : {}),
      ...(run.mitres === undefined ? {} : { mitres: { ...run.mitres, ends: ends?.ends ?? [0, 0] } }),
      points,
      supports: run.supports
        .filter((at) => at >= gap.from && at <= gap.to)
        .map((at) => (at - shift) as Ticks),
      maxJoints: run.maxJoints === null ? null : Math.max(0, run.maxJoints - settledJoints),
      windows,
    },
    place: { run, memberId: member.id, from: gap.from, to: gap.to, shift, length },
  }
}

/** A piece of a run of the rest as a piece of the member it belongs to. */
export function inItsMember(piece: RunPiece, places: ReadonlyMap<string, Place>): RunPiece {
  const place = places.get(piece.runId)
  if (place === undefined) return piece
  return {
    ...piece,
    runId: place.run.id,
    memberId: place.memberId,
    from: piece.from === 0 ? place.from : ((piece.from + place.shift) as Ticks),
    to: piece.to === place.length ? place.to : ((piece.to + place.shift) as Ticks),
  }
}
