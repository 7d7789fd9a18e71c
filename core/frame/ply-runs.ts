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
  return plies.map((ply, i) => {
    const own = movedOn(run, leads[i] ?? ticks(0))
    const isOwnTurn = (_: RunPoint, k: number) => run.cap !== null && k % plies.length === i
    const turns = own.points.filter(isOwnTurn)
    const others = own.points.filter((point) => !turns.includes(point))
    const named = {
      ...own,
      id: `run-${ply.id}`,
      label: `Beam ply ${ply.mark}`,
      length: ply.length,
      memberIds: [ply.id],
      cap: null,
      ...(ply.ends === undefined ? {} : { ends: ply.ends }),
    }
    if (run.capPreferred) {
      const points = own.points.map((point) => (turns.includes(point) ? { ...point, cap: 0 } : point))
      return { ...named, points }
    }
    const refused = [
      ...own.refused,
      ...turns.map(
        (point): RefusedPoint => ({ ...point, why: 'This ply goes through here: another may be jointed.' }),
      ),
    ]
    return { ...named, points: others, refused: refused.sort((a, b) => a.at - b.at) }
  })
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
