import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { auditPlan, type CutJob, type CutPlan, type Objective, planCuts } from '../../core/cutting/index.ts'
import type { Cents } from '../../core/units/index.ts'
import { loadHighs } from '../../main/workers/lp/highs.ts'
import { arbitraryCutJob, mostPieces } from './arbitrary-cut-job.ts'
import { bruteCost } from './brute-cutting.ts'

const engine = await loadHighs()
const numRuns = Number(process.env.FC_RUNS ?? 60)
const LARGE = 10_000

/** Plain stock without preferences: of each objective it can be said by hand what a plan's boards and joints count. */
const plain = arbitraryCutJob
  .map(
    (job): CutJob => ({
      ...job,
      handling: 0 as Cents,
      perCut: 0 as Cents,
      keep: null,
      stock: job.stock.map(({ id, length, price, supply, offcut }) => ({
        id,
        length,
        price,
        supply,
        offcut,
      })),
      runs: job.runs.map((run) => ({
        ...run,
        points: run.points.map((point) => ({ ...point, excess: null })),
      })),
    }),
  )
  .filter((job) => mostPieces(job) <= 6)

const OBJECTIVES: readonly Objective[] = ['least cost', 'fewest joints', 'least waste']
const twoOf = fc.uniqueArray(fc.constantFrom(...OBJECTIVES), { minLength: 1, maxLength: 2 })

/** What one board of a stock and one joint count for under an objective. */
const COUNTS: Record<string, (job: CutJob) => { readonly board: readonly number[]; readonly joint: number }> =
  {
    'least cost': (job) => ({ board: job.stock.map(({ price }) => price), joint: -1 }),
    'fewest joints': (job) => ({ board: job.stock.map(() => 0), joint: 1 }),
    'least waste': (job) => ({ board: job.stock.map(({ length }) => length), joint: 0 }),
  }

/** The job with prices such that its least cost is the best by the objectives in turn, each a digit of a large number. */
function weighed(job: CutJob, objectives: readonly Objective[]): CutJob {
  const weight = (rank: number): number => LARGE ** (objectives.length - 1 - rank)
  const sum = (pick: (counts: { board: readonly number[]; joint: number }, rank: number) => number): Cents =>
    objectives.reduce(
      (total, name, rank) => total + weight(rank) * pick(COUNTS[name]?.(job) as never, rank),
      0,
    ) as Cents
  return {
    ...job,
    stock: job.stock.map((option, s) => ({ ...option, price: sum(({ board }) => board[s] ?? 0) })),
    runs: job.runs.map((run) => ({
      ...run,
      points: run.points.map((point) => ({
        ...point,
        cost: sum(({ joint }) => (joint < 0 ? point.cost : joint)),
      })),
    })),
  }
}

function reached(plan: CutPlan, objectives: readonly Objective[]): number {
  return objectives.reduce((total, name) => {
    const length = plan.boards.reduce((sum, board) => sum + board.length, 0)
    const value = name === 'least cost' ? plan.cost : name === 'fewest joints' ? plan.joints.length : length
    return total * LARGE + value
  }, 0)
}

describe('objectives against an oracle that tries everything', () => {
  it('are each the best there is, the second among those that are best by the first', () => {
    let planned = 0
    fc.assert(
      fc.property(plain, twoOf, (job, objectives) => {
        const best = bruteCost(weighed(job, objectives))
        const result = planCuts({ ...job, objectives }, engine)
        expect(result.ok).toBe(best !== null)
        if (!result.ok) return
        planned++
        expect(auditPlan({ ...job, objectives }, result.value)).toEqual([])
        expect(reached(result.value, objectives)).toBe(best)
      }),
      { numRuns },
    )
    expect(planned).toBeGreaterThan(0)
  })

  it('say of a plan what it has, however little work was allowed', () => {
    const orders = fc.shuffledSubarray([...OBJECTIVES, 'fewest lengths'] as Objective[], { minLength: 2 })
    const little = fc.record({
      nodes: fc.integer({ min: 0, max: 3 }),
      columns: fc.integer({ min: 0, max: 20 }),
      patterns: fc.integer({ min: 0, max: 10 }),
    })
    fc.assert(
      fc.property(arbitraryCutJob, orders, little, (job, objectives, limits) => {
        const result = planCuts({ ...job, objectives }, engine, { limits })
        if (result.ok) expect(auditPlan({ ...job, objectives }, result.value)).toEqual([])
      }),
      { numRuns },
    )
  })

  it('buy as few different lengths as any plan does, and cost the least among such plans', () => {
    fc.assert(
      fc.property(plain, (job) => {
        const result = planCuts({ ...job, objectives: ['fewest lengths', 'least cost'] }, engine)
        const most = job.maxLengths ?? job.stock.length
        const least = Array.from({ length: most + 1 }, (_, lengths) =>
          bruteCost({ ...job, maxLengths: lengths }),
        )
        const fewest = least.findIndex((cost) => cost !== null)
        expect(result.ok).toBe(fewest >= 0)
        if (!result.ok) return
        const bought = new Set(
          result.value.boards
            .filter((board) => job.stock.find(({ id }) => id === board.stockId)?.offcut === false)
            .map((board) => board.length),
        )
        expect([bought.size, result.value.cost]).toEqual([fewest, least[fewest]])
      }),
      { numRuns },
    )
  })

  it('keep what is wished of runs and stock: no joint in one, only some lengths, at most so many boards', () => {
    fc.assert(
      fc.property(plain, fc.constantFrom('a', 'b'), (job, only) => {
        const wished: CutJob = {
          ...job,
          onlyStock: [only],
          runs: job.runs.map((run, index) => (index === 0 ? { ...run, maxJoints: 0 } : run)),
        }
        const least = bruteCost(wished)
        const result = planCuts(wished, engine)
        expect(result.ok).toBe(least !== null)
        if (!result.ok) return
        expect(result.value.cost).toBe(least)
        expect(result.value.joints.filter((joint) => joint.runId === job.runs[0]?.id)).toEqual([])
        expect(result.value.boards.every((board) => board.stockId === only)).toBe(true)
      }),
      { numRuns },
    )
  })
})
