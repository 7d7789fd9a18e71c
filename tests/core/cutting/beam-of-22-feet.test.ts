import { beforeAll, describe, expect, it } from 'vitest'
import { auditPlan, type CutJob, type CutPlan, type LpEngine, planCuts } from '../../../core/cutting/index.ts'
import { type Cents, feet } from '../../../core/units/index.ts'
import { loadHighs } from '../../../main/workers/lp/index.ts'
import { jobOf, pointAt, runOf, stockOf } from './jobs.ts'

let engine: LpEngine
beforeAll(async () => {
  engine = await loadHighs()
})

const JOINT = 850 as Cents

/** A beam 22 ft long over posts at its ends and at 6, 11 and 16 ft. */
function beam(
  plies: number,
  prices: Readonly<Record<number, number>>,
  stagger: { cap: number | null; excess: Cents | null },
): CutJob {
  const points = [6, 11, 16].map((at) => pointAt(feet(at), { cost: JOINT, ...stagger }))
  return jobOf({ stock: stockOf(prices), runs: [runOf('beam', plies, feet(22), points)] })
}

function plan(job: CutJob): CutPlan {
  const result = planCuts(job, engine)
  if (!result.ok) throw new Error(result.error.message)
  expect(auditPlan(job, result.value)).toEqual([])
  expect(result.value.status).toBe('proven optimal')
  return result.value
}

const lengths = (made: CutPlan): number[] =>
  made.runPieces.map((piece) => piece.length / 384).sort((a, b) => b - a)

describe('one ply of a 22 ft beam over posts at 6, 11 and 16 ft', () => {
  const free = { cap: null, excess: null }

  it('is a 16 and a 6 where those are cheapest, without a saw cut', () => {
    const made = plan(beam(1, { 6: 1190, 12: 2288, 16: 3074, 24: 6390 }, free))
    expect(lengths(made)).toEqual([16, 6])
    expect(made.cost).toBe(3074 + 1190 + JOINT)
  })

  it('is two boards jointed at 11 ft where a 6 is dear', () => {
    const made = plan(beam(1, { 6: 2600, 12: 2288, 16: 3900, 24: 6390 }, free))
    expect(lengths(made)).toEqual([11, 11])
    expect(made.cost).toBe(2 * 2288 + JOINT)
  })

  it('is one 24 where that costs less than any two boards and their joint', () => {
    const made = plan(beam(1, { 6: 1190, 12: 2288, 16: 3074, 24: 4800 }, free))
    expect(lengths(made)).toEqual([22])
    expect(made.cost).toBe(4800)
  })
})

describe('two plies of that beam', () => {
  const prices = { 6: 2600, 12: 2288, 16: 3900, 24: 9000 }
  const atEleven = 2 * (2 * 2288 + JOINT)

  it('are never jointed at one post where the job requires it', () => {
    const made = plan(beam(2, prices, { cap: 1, excess: null }))
    const posts = made.joints.map((joint) => joint.at)
    expect(new Set(posts).size).toBe(posts.length)
    expect(made.cost).toBeGreaterThan(atEleven)
  })

  it('avoid one post where that costs less than the penalty', () => {
    const made = plan(beam(2, prices, { cap: 1, excess: 2500 as Cents }))
    const posts = made.joints.map((joint) => joint.at)
    expect(new Set(posts).size).toBe(posts.length)
    expect(made.preference).toBe(0)
  })

  it('share one post where that is worth the penalty, which stays out of the cost', () => {
    const made = plan(beam(2, prices, { cap: 1, excess: 100 as Cents }))
    expect(made.joints.map((joint) => joint.at)).toEqual([feet(11), feet(11)])
    expect(made.cost).toBe(atEleven)
    expect(made.preference).toBe(100)
  })
})
