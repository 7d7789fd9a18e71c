import type { Mitres, RunGroup } from '../types.ts'

/** Cuts of a piece of a run between two places of it; nothing where both are square. An end that is cut off in place is. */
export function mitresBetween(run: RunGroup, from: number, to: number): Mitres | undefined {
  if (run.mitres === undefined) return undefined
  const { across, ends, joint } = run.mitres
  const left = from === 0 ? ends[0] : joint
  const right = to === run.length ? (run.wild === undefined ? ends[1] : 0) : joint
  return left === 0 && right === 0 ? undefined : { across, ends: [left, right] }
}
