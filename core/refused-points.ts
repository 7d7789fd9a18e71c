import type { FrameRun, RefusedPoint } from './frame/index.ts'
import { type Job, namedRuns } from './job/index.ts'

/** Points of a run where a rule allows no joint; all of them where it is held in one piece. */
export function refusedPoints(run: FrameRun, { cutting }: Job): readonly RefusedPoint[] {
  if (namedRuns(cutting.onePiece, [run]).named.length === 0) return run.refused
  const why = 'The run is held in one piece, as you wish.'
  return [...run.refused, ...run.points.map((point) => ({ ...point, why }))].sort((a, b) => a.at - b.at)
}
