import { beforeAll, describe, expect, it } from 'vitest'
import { auditPlan, type CutJob, type CutPlan, type LpEngine, planCuts } from '../../../core/cutting/index.ts'
import { feet, inches } from '../../../core/units/index.ts'
import { loadHighs } from '../../../main/workers/lp/index.ts'
import { runOf, stockOf } from './jobs.ts'
import { auditedPlan, jointedBeam as job, points } from './jointed-beam.ts'

let engine: LpEngine
beforeAll(async () => {
  engine = await loadHighs()
})

const plan = (of: CutJob): CutPlan => auditedPlan(of, engine)

describe('what a plan was chosen for', () => {
  it('is not said where it is the least cost alone', () => {
    expect(plan(job(['least cost'])).aims).toBeUndefined()
  })

  it('is proven: no joint where a 24 is to be had, and of such plans the cheapest', () => {
    // by hand: each ply from a 24, whose 2 ft left over hold one block each; the third block takes a 6
    const cost = 2 * 6390 + 1190
    const made = plan(job(['fewest joints']))
    expect(made.aims).toEqual([
      { objective: 'fewest joints', value: 0, bound: 0 },
      { objective: 'least cost', value: cost, bound: cost },
    ])
    expect(made.why).toContain('none has fewer joints than 0, proven; of such plans none costs less, proven')
  })

  it('is proven where the posts leave no way but two joints in each ply', () => {
    const short = stockOf({ 6: 1190, 12: 2288 })
    const [joints] = plan(job(['fewest joints'], { stock: short })).aims ?? []
    // by hand: 22 ft from boards of 12 ft at most, jointed at 6, 11 or 16: 11 + 11 is one joint a ply
    expect(joints).toEqual({ objective: 'fewest joints', value: 2, bound: 2 })
  })

  it('is proven where a limit forbids that both plies are jointed where one would be', () => {
    const short = stockOf({ 6: 1190, 12: 2288 })
    const apart = points.map((point) => ({ ...point, cap: 1 }))
    const made = plan(job(['fewest joints'], { stock: short, runs: [runOf('beam', 2, feet(22), apart)] }))
    // by hand: one ply 11 + 11; the other jointed at 6 and 16, 6 + 10 + 6, for one of 12 ft and one of 10 has no post
    expect(made.aims?.[0]).toEqual({ objective: 'fewest joints', value: 3, bound: 3 })
  })

  it('is proven in lengths of board, and never less than the wood that is needed', () => {
    const [waste] = plan(job(['least waste'])).aims ?? []
    expect(waste?.bound).toBe(waste?.value)
    expect(waste?.value).toBeGreaterThanOrEqual(2 * feet(22) + 3 * inches(14.5))
  })

  it('is proven: one length does, and of the lengths the cheapest is taken', () => {
    const made = plan(job(['fewest lengths']))
    expect(made.aims?.[0]).toEqual({ objective: 'fewest lengths', value: 1, bound: 1 })
    expect(made.aims?.[1]?.bound).toBe(made.cost)
    const alone = [6, 12, 16, 24].flatMap((long) => {
      const result = planCuts(job(['least cost'], { onlyStock: [`${long} ft`] }), engine)
      return result.ok ? [result.value.cost] : []
    })
    expect(made.cost).toBe(Math.min(...alone))
  })

  it('is said of a plan that is stopped, with what the pieces alone prove', () => {
    const result = planCuts(job(['fewest joints']), engine, { stop: () => true })
    const [joints] = (result.ok && result.value.aims) || []
    expect(joints).toMatchObject({ objective: 'fewest joints', bound: 0 })
    expect(result.ok && auditPlan(job(['fewest joints']), result.value)).toEqual([])
  })
})

describe('the auditor', () => {
  const wished = job(['fewest joints'])
  const rules = (made: CutPlan) => auditPlan(wished, made).map(({ rule }) => rule)
  const changed = (change: (aims: NonNullable<CutPlan['aims']>) => NonNullable<CutPlan['aims']>): CutPlan => {
    const made = plan(wished)
    return { ...made, aims: change(made.aims ?? []) }
  }

  it('refuses a plan that says nothing of what it was chosen for, or says it of another wish', () => {
    const { aims: _said, ...silent } = plan(wished)
    expect(rules(silent)).toEqual(['aims'])
    expect(rules(changed((aims) => aims.toReversed()))).toEqual(['aims'])
  })

  it('counts again what was reached, and refuses a bound above it', () => {
    expect(rules(changed((aims) => aims.map((aim) => ({ ...aim, value: aim.value + 1 }))))).toEqual([
      'aim',
      'aim',
    ])
    expect(rules(changed(([first, ...rest]) => [{ ...first, bound: 1 } as never, ...rest]))).toEqual(['aim'])
  })
})
