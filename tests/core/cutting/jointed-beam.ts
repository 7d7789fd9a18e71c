import { expect } from 'vitest'
import {
  auditPlan,
  type CutJob,
  type CutPlan,
  type LpEngine,
  type Objective,
  planCuts,
} from '../../../core/cutting/index.ts'
import { type Cents, feet, inches } from '../../../core/units/index.ts'
import { jobOf, pointAt, runOf, stockOf } from './jobs.ts'

export const points = [6, 11, 16].map((at) => pointAt(feet(at), { cost: 300 as Cents }))

/** A beam of two plies, 22 ft long, that may be jointed at three posts, and three blocks of 14 1/2 in. */
export function jointedBeam(objectives: Objective[], more: Partial<CutJob> = {}): CutJob {
  return jobOf({
    stock: stockOf({ 6: 1190, 12: 2288, 16: 3074, 24: 6390 }),
    runs: [runOf('beam', 2, feet(22), points)],
    pieces: [1, 2, 3].map((k) => ({ id: `b${k}`, mark: `B${k}`, length: inches(14.5) })),
    objectives,
    ...more,
  })
}

/** The plan of a job that can be planned, with no fault found by the auditor. */
export function auditedPlan(job: CutJob, engine: LpEngine): CutPlan {
  const result = planCuts(job, engine)
  if (!result.ok) throw new Error(result.error.message)
  expect(auditPlan(job, result.value)).toEqual([])
  return result.value
}
