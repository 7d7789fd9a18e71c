import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { auditPlan, type CutJob, type CutPlan, planCuts } from '../../core/cutting/index.ts'
import { type Cents, cents } from '../../core/units/index.ts'
import { loadHighs } from '../../main/workers/lp/highs.ts'
import { arbitraryCutJob, mostPieces } from './arbitrary-cut-job.ts'
import { bruteCost } from './brute-cutting.ts'

const engine = await loadHighs()
const numRuns = Number(process.env.FC_RUNS ?? 100)

/** Joints cost nothing, boards as much as they are long, so that many plans cost the same. */
const manyAlike = arbitraryCutJob
  .map(
    (job): CutJob => ({
      ...job,
      keep: null,
      stock: job.stock.map(({ id, length, offcut }) => ({
        id,
        length,
        price: cents(length),
        supply: null,
        offcut,
      })),
      runs: job.runs.map((run) => ({
        ...run,
        points: run.points.map((point) => ({ ...point, cost: 0 as Cents, excess: null })),
      })),
    }),
  )
  .filter((job) => mostPieces(job) <= 8)

/** Money weighs a thousand times a joint: what the oracle finds is the least cost, and among such plans the fewest joints. */
function jointsAsCrumbs(job: CutJob): CutJob {
  const times = (money: Cents): Cents => (money * 1000) as Cents
  return {
    ...job,
    handling: times(job.handling),
    perCut: times(job.perCut),
    stock: job.stock.map((option) => ({ ...option, price: times(option.price) })),
    runs: job.runs.map((run) => ({
      ...run,
      points: run.points.map((point) => ({ ...point, cost: 1 as Cents })),
    })),
  }
}

const setUps = ({ boards }: CutPlan): string[] =>
  boards.map(({ stockId, cuts }) => `${stockId}: ${cuts.map((cut) => cut.length).join(' ')}`)

describe('among plans of equal cost', () => {
  it('the one with fewest joints is taken', () => {
    let planned = 0
    fc.assert(
      fc.property(manyAlike, (job) => {
        const result = planCuts(job, engine)
        if (!result.ok) return
        planned++
        const { cost, preference, joints } = result.value
        expect((cost + preference) * 1000 + joints.length).toBe(bruteCost(jointsAsCrumbs(job)))
      }),
      { numRuns },
    )
    expect(planned).toBeGreaterThan(0)
  })

  it('none costs more for being tidier than the first plan, and each is sound and the same every time', () => {
    fc.assert(
      fc.property(arbitraryCutJob, (job) => {
        const first = planCuts(job, engine, { quick: true })
        const tidy = planCuts(job, engine)
        if (!first.ok || !tidy.ok) return
        const total = ({ cost, preference }: CutPlan): number => cost + preference
        expect(total(tidy.value)).toBeLessThanOrEqual(total(first.value))
        if (total(tidy.value) === total(first.value))
          expect(tidy.value.joints.length).toBeLessThanOrEqual(first.value.joints.length)
        expect(auditPlan(job, tidy.value)).toEqual([])
        expect(JSON.stringify(planCuts(job, engine))).toBe(JSON.stringify(tidy))
      }),
      { numRuns },
    )
  })

  it('boards cut alike lie together', () => {
    fc.assert(
      fc.property(arbitraryCutJob, (job) => {
        const result = planCuts(job, engine)
        if (!result.ok) return
        const kinds = setUps(result.value)
        const turns = kinds.filter((kind, index) => kind !== kinds[index - 1])
        expect(new Set(turns).size).toBe(turns.length)
      }),
      { numRuns },
    )
  })
})
