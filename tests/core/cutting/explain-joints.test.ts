import { beforeAll, describe, expect, it } from 'vitest'
import {
  auditPlan,
  type CutJob,
  type CutPlan,
  explainJoints,
  forbidStock,
  holdInOnePiece,
  type LpEngine,
  planCuts,
} from '../../../core/cutting/index.ts'
import { type Cents, feet } from '../../../core/units/index.ts'
import { loadHighs } from '../../../main/workers/lp/index.ts'
import { jobOf, pointAt, runOf, stockOf } from './jobs.ts'

let engine: LpEngine
beforeAll(async () => {
  engine = await loadHighs()
})

const PRICES = { 6: 1190, 12: 2288, 16: 3074, 24: 6390 }

function beam(plies: number, prices: Readonly<Record<number, number>>): CutJob {
  const cap = plies > 1 ? plies - 1 : null
  const points = [6, 11, 16].map((at) => pointAt(feet(at), { cost: 850 as Cents, cap }))
  return jobOf({ stock: stockOf(prices), runs: [runOf('beam', plies, feet(22), points)] })
}

function plan(job: CutJob): CutPlan {
  const result = planCuts(job, engine)
  if (!result.ok) throw new Error(result.error.message)
  expect(auditPlan(job, result.value)).toEqual([])
  return result.value
}

// a 16 and a 6 with a joint cost 30.74 + 11.90 + 8.50 = 51.14; two 12s with one 54.26; a 24 63.90; all by hand
describe('one ply of a 22 ft beam over posts at 6, 11 and 16 ft', () => {
  it('says what each joint saves and what each unused point would cost', () => {
    const job = beam(1, PRICES)
    const reasons = explainJoints(job, plan(job), engine)
    const made = reasons.filter((reason) => reason.kind === 'made')
    expect(made).toHaveLength(1)
    expect(made[0]).toMatchObject({ withoutIt: { most: 0 }, inOnePiece: { atLeast: 1276, most: 1276 } })
    expect(reasons.find(({ at }) => at === feet(11))).toMatchObject({
      kind: 'unused',
      withIt: { atLeast: 312, most: 312 },
      message: 'No joint at post at 11 ft (beam): it may be jointed there; the order would cost $3.12 more.',
    })
  })

  it('says that a run cannot do without a joint where no board is long enough', () => {
    const job = beam(1, { 12: 2288 })
    const [, middle] = explainJoints(job, plan(job), engine)
    expect(middle).toMatchObject({ kind: 'made', withoutIt: { most: 2288 + 850 }, inOnePiece: null })
    expect(middle?.message).toContain('no board makes the run in one piece')
  })

  it('gives the rule where a point was refused, and only what is asked for', () => {
    const job = beam(1, PRICES)
    const refused = [{ runId: 'beam', at: feet(0), label: 'post 1', message: 'An end post.' }]
    const asked = explainJoints(job, plan(job), engine, { refused, only: (_, at) => at === 0 })
    expect(asked).toEqual([{ ...refused[0], kind: 'refused' }])
  })
})

describe('two plies that may not be jointed at one post', () => {
  it('prices a joint that one of them does not have', () => {
    const job = beam(2, PRICES)
    const reasons = explainJoints(job, plan(job), engine)
    // a 16 and a 6 for one ply, two 12s for the other, in place of a 16 and a 6 for both
    expect(reasons.find(({ at }) => at === feet(11))).toMatchObject({ kind: 'unused', withIt: { most: 312 } })
  })

  it('answers the same twice', () => {
    const job = beam(2, PRICES)
    const made = plan(job)
    expect(explainJoints(job, made, engine)).toEqual(explainJoints(job, made, engine))
  })
})

describe('wishes', () => {
  it('hold one member in one piece and leave the others free', () => {
    const made = plan(holdInOnePiece(beam(2, PRICES), 'beam.2'))
    expect(made.cost).toBe(6390 + 3074 + 1190 + 850)
    expect(made.joints.map((joint) => joint.memberId)).toEqual(['beam.1'])
  })

  it('leave a stock length out', () => {
    expect(plan(forbidStock(beam(1, PRICES), '16 ft')).cost).toBe(2 * 2288 + 850)
  })
})
