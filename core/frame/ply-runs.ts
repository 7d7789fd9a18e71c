import { type Ticks, ticks } from '../units/index.ts'
import { leadOf } from './joint-place.ts'
import type { FrameRun, Member, PlanPoint, RefusedPoint, RunPoint } from './types.ts'

/**
 * The runs of a beam's plies: one where all are alike, else one for each ply with its own length and its points measured
 * from its own left end. Runs apart share no cap, so each ply leaves out the posts of its own turn, and no post is left
 * without a ply that goes through.
 * @param run as if all plies started where the beam does
 */
export function plyRuns(
  run: FrameRun,
  plies: readonly Member[],
  line: readonly [PlanPoint, PlanPoint],
): readonly FrameRun[] {
  const leads = plies.map((ply) => leadOf(ply, line))
  const [first] = plies
  const isAlike = plies.every(({ length }, i) => length === first?.length && leads[i] === leads[0])
  if (isAlike) return [movedOn(run, leads[0] ?? ticks(0))]
  return plies.map((ply, i) =>
    runOfPly(movedOn(run, leads[i] ?? ticks(0)), ply, {
      turn: i,
      of: plies.length,
      label: `Beam ply ${ply.mark}`,
    }),
  )
}

/**
 * The run of one ply of several that are not alike. Of the plies so many as the cap says may be jointed at one place, and
 * runs apart share no cap: each leaves out the places of its own turn.
 * @param run all of them, as if each had this one's length and places
 */
export function runOfPly(
  run: FrameRun,
  ply: Member,
  { turn, of, label }: { readonly turn: number; readonly of: number; readonly label: string },
): FrameRun {
  const through = run.cap === null ? 0 : of - run.cap
  const isOwnTurn = (_: RunPoint, k: number) => (((k - turn) % of) + of) % of < through
  const turns = run.points.filter(isOwnTurn)
  const named = {
    ...run,
    id: `run-${ply.id}`,
    label,
    length: ply.length,
    memberIds: [ply.id],
    cap: null,
    ...(ply.ends === undefined ? {} : { ends: ply.ends }),
  }
  if (run.capPreferred) {
    const points = run.points.map((point) => (turns.includes(point) ? { ...point, cap: 0 } : point))
    return { ...named, points }
  }
  const refused = [
    ...run.refused,
    ...turns.map(
      (point): RefusedPoint => ({ ...point, why: 'This ply goes through here: another may be jointed.' }),
    ),
  ]
  return {
    ...named,
    points: run.points.filter((point) => !turns.includes(point)),
    refused: refused.sort((a, b) => a.at - b.at),
  }
}

function movedOn(run: FrameRun, by: Ticks): FrameRun {
  if (by === 0) return run
  const moved = <P extends RunPoint>(point: P): P => ({ ...point, at: ticks(point.at + by) })
  return {
    ...run,
    points: run.points.map(moved),
    refused: run.refused.map(moved),
    supports: run.supports.map((at) => ticks(at + by)),
  }
}
