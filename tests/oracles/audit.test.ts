import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { auditPlan, type CutJob, type CutPlan, planCuts } from '../../core/cutting/index.ts'
import type { Cents } from '../../core/units/index.ts'
import { loadHighs } from '../../main/workers/lp/highs.ts'
import { arbitraryCutJob, mostPieces } from './arbitrary-cut-job.ts'
import { bruteCost } from './brute-cutting.ts'
import { changes } from './changes.ts'

const engine = await loadHighs()
const plans = arbitraryCutJob
  .map((job) => ({ job, planned: planCuts(job, engine) }))
  .filter(({ planned }) => planned.ok)
  .map(({ job, planned }) => ({ job, plan: (planned as { readonly value: CutPlan }).value }))

/** What no rule says: words, counts of work, and the prices of a proof, which are judged by what they prove. */
const FREE = /^\.(why|work\.|certificate\.(search|scale|prices|capPrices))/

const numRuns = Number(process.env.FC_RUNS ?? 40)

describe('the auditor', () => {
  it('accepts no plan in which one number, one name or one entry is another', () => {
    fc.assert(
      fc.property(plans, ({ job, plan }) => {
        expect(auditPlan(job, plan)).toEqual([])
        for (const [path, changed] of changes(plan)) {
          if (FREE.test(path) || mayBe(job, plan, path)) continue
          expect([path, auditPlan(job, changed as CutPlan).length]).not.toEqual([path, 0])
        }
      }),
      { numRuns },
    )
  })

  it('accepts just the bound that the prices prove, and not a cent more', () => {
    fc.assert(
      fc.property(plans, ({ job, plan }) => {
        const dualBound = (plan.certificate.dualBound + 1) as Cents
        const more = { ...plan, certificate: { ...plan.certificate, dualBound } }
        expect(auditPlan(job, more).map((fault) => fault.rule)).toContain('bound')
      }),
    )
  })

  it('accepts no bound above the least cost, whatever the prices', () => {
    const small = plans.filter(({ job }) => mostPieces(job) <= 6)
    const anyPrices = fc.infiniteStream(fc.integer({ min: 0, max: 30 }))
    let accepted = 0
    fc.assert(
      fc.property(small, anyPrices, fc.constantFrom(1, 2), ({ job, plan }, prices, scale) => {
        const least = bruteCost(job)
        if (least === null) throw new Error('a plan of a job that cannot be done')
        const next = (): number => prices.next().value ?? 0
        const claim = (bound: number): CutPlan => ({
          ...plan,
          bound: bound as Cents,
          gap: (plan.cost + plan.preference - bound) as Cents,
          certificate: { ...certificate, dualBound: bound as Cents },
        })
        const certificate = {
          ...plan.certificate,
          scale,
          search: null,
          prices: plan.certificate.prices.map((entry) => ({ ...entry, price: next() })),
          capPrices: plan.certificate.capPrices.map((entry) => ({ ...entry, price: -next() })),
        }
        const proves = (bound: number): boolean =>
          !auditPlan(job, { ...claim(bound), cost: (bound + 1000) as Cents }).some(
            ({ rule }) => rule === 'bound',
          )
        expect(proves(least + 1)).toBe(false)
        if (proves(0)) accepted++
      }),
    )
    expect(accepted).toBeGreaterThan(0)
  })
})

/** Another board of a pack or of a count that costs nothing is ordered as rightly; an order is named twice or once. */
function mayBe(job: CutJob, plan: CutPlan, path: string): boolean {
  if (path.startsWith('.memberOrder with')) return true
  if (path === '.certificate.dualBound - 1') return plan.certificate.search !== null
  const line = /^\.order\[(\d+)\]\.count/.exec(path)?.[1]
  const option = job.stock.find(({ id }) => id === plan.order[Number(line)]?.stockId)
  return (
    option !== undefined &&
    [option.price, ...(option.breaks ?? []).map(({ price }) => price)].includes(0 as Cents)
  )
}
