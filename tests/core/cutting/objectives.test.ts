import { beforeAll, describe, expect, it } from 'vitest'
import { auditPlan, type CutJob, type CutPlan, type LpEngine, planCuts } from '../../../core/cutting/index.ts'
import { type Cents, feet } from '../../../core/units/index.ts'
import { loadHighs } from '../../../main/workers/lp/index.ts'
import { jobOf, stockOf } from './jobs.ts'
import { auditedPlan, jointedBeam as job } from './jointed-beam.ts'

let engine: LpEngine
beforeAll(async () => {
  engine = await loadHighs()
})

const plan = (of: CutJob): CutPlan => auditedPlan(of, engine)

describe('objectives', () => {
  it('joint a beam where that is cheapest, by default', () => {
    const made = plan(job(['least cost']))
    expect(made.joints.length).toBeGreaterThan(0)
    expect(made.status).toBe('proven optimal')
  })

  it('leave a beam whole for fewest joints, and say what that costs above the least', () => {
    const made = plan(job(['fewest joints', 'least cost']))
    expect(made.joints).toEqual([])
    expect(made.cost).toBe(2 * 6390 + 1190)
    expect(made.status).toBe('feasible')
    expect(made.gap).toBe(made.cost - plan(job(['least cost'])).cost)
    expect(made.why).toContain('fewest joints')
  })

  it('buy the least length for least waste', () => {
    const bought = (made: CutPlan): number =>
      made.order.reduce((sum, line) => sum + line.count * line.length, 0)
    expect(bought(plan(job(['least waste'])))).toBeLessThanOrEqual(bought(plan(job(['least cost']))))
  })

  it('buy one length for fewest lengths', () => {
    const made = plan(job(['fewest lengths', 'least cost']))
    expect(made.order.length).toBe(1)
  })

  it('keep the least cost where it comes first, and fewer joints among equals', () => {
    const equal = job(['least cost', 'fewest joints'], {
      stock: stockOf({ 6: 1000, 16: 3000, 24: 4300 }),
      pieces: [],
    })
    const made = plan(equal)
    expect(made.cost).toBe(2 * 4300)
    expect(made.joints).toEqual([])
  })
})

describe('limits', () => {
  it('buy only the lengths that are allowed', () => {
    const made = plan(job(['least cost'], { onlyStock: ['24 ft'] }))
    expect(made.order.map((line) => line.stockId)).toEqual(['24 ft'])
  })

  it('buy no more of a length than is allowed', () => {
    const made = plan(job(['least cost'], { atMost: [{ stockId: '16 ft', count: 1 }] }))
    expect(made.order.find((line) => line.stockId === '16 ft')?.count ?? 0).toBeLessThanOrEqual(1)
    expect(made.status).toBe('proven optimal')
  })

  it('take an offcut on hand before a board is bought', () => {
    const offcut = { id: 'rack', length: feet(4), price: 0 as Cents, supply: 1, offcut: true }
    const made = plan(job(['least cost'], { stock: [...job([]).stock, offcut] }))
    expect(made.boards.some((board) => board.stockId === 'rack')).toBe(true)
  })

  it('buy whole packs, and pay the lower price from where it holds', () => {
    const stock = [
      {
        id: '12 ft',
        length: feet(12),
        price: 1000 as Cents,
        supply: null,
        offcut: false,
        pack: 4,
        breaks: [{ from: 8, price: 400 as Cents }],
      },
    ]
    const pieces = Array.from({ length: 5 }, (_, k) => ({ id: `p${k}`, mark: `P${k}`, length: feet(12) }))
    const made = plan(jobOf({ stock, pieces }))
    expect(made.order).toEqual([{ stockId: '12 ft', length: feet(12), count: 8, price: 400, amount: 3200 }])
    expect(made.status).toBe('proven optimal')
  })
})

describe('work', () => {
  it('gives the same plan every time', () => {
    expect(JSON.stringify(plan(job(['least cost'])))).toBe(JSON.stringify(plan(job(['least cost']))))
  })

  it('keeps the best plan so far when it is stopped, and says that it was', () => {
    const result = planCuts(job(['least cost']), engine, { stop: () => true })
    expect(result.ok && auditPlan(job(['least cost']), result.value)).toEqual([])
    expect(result.ok && ['stopped', 'proven optimal']).toContain(result.ok && result.value.status)
  })

  it('tells of the bound and the best plan as they close in', () => {
    const seen: [number, number][] = []
    planCuts(job(['least cost']), engine, { onProgress: (bound, best) => seen.push([bound, best]) })
    expect(seen.length).toBeGreaterThan(0)
    for (const [bound, best] of seen) expect(bound).toBeLessThanOrEqual(best)
  })
})
