import fc from 'fast-check'
import { beforeAll, describe, expect, it } from 'vitest'
import { auditPlan, type CutJob, type LpEngine, planCuts } from '../../core/cutting/index.ts'
import { loadGlpk, loadHighs } from '../../main/workers/lp/index.ts'
import { arbitraryCutJob, mostPieces } from './arbitrary-cut-job.ts'
import { bruteCost } from './brute-cutting.ts'

/** As many pieces as the oracle can try every way of in a moment. */
const MOST_PIECES = 7
const numRuns = Number(process.env.FC_RUNS ?? 250)

const small = (job: CutJob): boolean => mostPieces(job) <= MOST_PIECES

let engines: LpEngine[]
beforeAll(async () => {
  engines = [await loadHighs(), await loadGlpk()]
})

describe('cutting against an oracle that tries everything', () => {
  it('finds the same least cost with either engine, proves it, and says so when nothing does the job', () => {
    let proven = 0
    fc.assert(
      fc.property(arbitraryCutJob.filter(small), (job) => {
        const least = bruteCost(job)
        for (const engine of engines) {
          const result = planCuts(job, engine)
          expect(result.ok).toBe(least !== null)
          if (!result.ok) {
            expect(result.error.help).not.toBe('')
            continue
          }
          expect(auditPlan(job, result.value)).toEqual([])
          expect(result.value.cost + result.value.preference).toBe(least)
          expect(result.value.status).toBe('proven optimal')
          proven++
        }
      }),
      { numRuns },
    )
    expect(proven).toBeGreaterThan(0)
  })
})
