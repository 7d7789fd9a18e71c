import { describe, expect, it } from 'vitest'
import { estimate } from '../../../core/estimate.ts'
import type { Estimate } from '../../../core/estimate-types.ts'
import { DEMO_JOB } from '../../../core/job/index.ts'
import { type OffcutsOnHand, SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { feet } from '../../../core/units/index.ts'
import { engine } from '../../fixtures/engine.ts'

function madeOf(cutting: Record<string, string | boolean>, rack: readonly OffcutsOnHand[] = []): Estimate {
  const result = estimate({ ...DEMO_JOB, cutting }, SAMPLE_BOOK, engine, { rack })
  if (!result.ok) throw new Error(JSON.stringify(result.faults))
  return result.estimate
}
const rack: OffcutsOnHand[] = [
  {
    product: { size: '2x10', species: 'SP', grade: 'No.2', treatment: 'treated' },
    length: feet(14),
    count: 2,
  },
  {
    product: { size: '2x10', species: 'SP', grade: 'No.2', treatment: 'untreated' },
    length: feet(14),
    count: 9,
  },
]

describe('spare boards in an estimate', () => {
  it('are none, and no line, where no board is taken to be unusable', () => {
    const made = madeOf({ finishProbability: '99 %' })
    expect(made.spares).toBe(null)
    expect(made.pricing?.lines.filter((line) => line.group === 'spares')).toEqual([])
  })

  it('are lines of their own in material, and leave plans and joints as they were', () => {
    const without = madeOf({})
    const made = madeOf({ unusableShare: '3 %' })
    expect(made.plans).toEqual(without.plans)
    const lines = made.pricing?.lines.filter((line) => line.group === 'spares') ?? []
    expect(lines.length).toBeGreaterThan(0)
    expect(lines.reduce((sum, line) => sum + line.amount, 0)).toBe(made.spares?.cost)
    expect((made.pricing?.totals.material ?? 0) - (without.pricing?.totals.material ?? 0)).toBe(
      made.spares?.cost,
    )
    expect(made.spares?.probability).toBeGreaterThanOrEqual(9500)
  })
})

describe('offcuts on hand', () => {
  it('make the order cheaper, cost nothing, and only those of the same product are cut', () => {
    const without = madeOf({})
    const made = madeOf({}, rack)
    const planOf = ({ plans }: Estimate) => plans.find(({ product }) => product.size === '2x10')
    expect(planOf(made)?.plan.cost).toBeLessThan(planOf(without)?.plan.cost ?? 0)
    const [line] = made.pricing?.lines.filter((one) => one.label.includes('offcut on hand')) ?? []
    expect(line).toMatchObject({ amount: 0, thousandths: 2000 })
  })

  it('are left alone where the job says so, and give the same bytes from the same rack', () => {
    expect(madeOf({ useOffcuts: false }, rack).pricing).toEqual(madeOf({ useOffcuts: false }).pricing)
    expect(JSON.stringify(madeOf({}, rack))).toBe(JSON.stringify(madeOf({}, [...rack].reverse())))
  })
})
