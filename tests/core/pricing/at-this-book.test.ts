import { describe, expect, it } from 'vitest'
import { designJob } from '../../../core/design.ts'
import type { Design } from '../../../core/estimate-types.ts'
import type { Job } from '../../../core/job/index.ts'
import { leftOut } from '../../../core/left-out.ts'
import { atThisBook, type Pricing, priceJob, SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { cents, inches } from '../../../core/units/index.ts'
import { heronLane } from '../../fixtures/heron-lane.ts'

function designed(ground: Partial<Job['ground']>, change: Partial<Job> = {}): Design {
  const made = designJob({ ...heronLane, ...change, ground: { ...heronLane.ground, ...ground } }, [])
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value
}

/** Everything but the lumber, which none of this touches. */
function priced(design: Design): Pricing {
  const made = priceJob(design, [], SAMPLE_BOOK)
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value
}

const has = (pricing: Pricing, code: string) => pricing.lines.filter((line) => line.id.includes(code))
const LARGE = { base: inches(40), baseThickness: inches(20) }

describe('concrete by the truck', () => {
  const bags = priced(designed({}))
  const truck = priced(designed({ concrete: 'ready-mix' }))

  it('is priced once, with its fee and its placing, in place of bags and mixing', () => {
    for (const sku of ['concrete-ready-mix', 'ready-mix-short-load', 'readymix-barrow'])
      expect(has(truck, sku)).toHaveLength(1)
    for (const sku of ['concrete-bag-80lb', 'mix-hand']) {
      expect(has(bags, sku)).toHaveLength(1)
      expect(has(truck, sku)).toHaveLength(0)
    }
    // by hand: one yard, nine missing of ten, at the sample prices
    expect(has(truck, 'concrete-ready-mix')[0]?.amount).toBe(18_600)
    expect(has(truck, 'ready-mix-short-load')[0]?.amount).toBe(40_500)
  })

  it('takes fewer hours from the chute than by barrow', () => {
    const chute = priced(designed({ concrete: 'ready-mix', placing: 'from the chute' }))
    // by hand: 0.3 and 0.7 clock hours of two for one yard
    expect(truck.totals.workerHours - chute.totals.workerHours).toBe(80)
  })

  it('is asked for by name where the book lacks it', () => {
    const goods = SAMPLE_BOOK.goods.filter(({ sku }) => !sku.includes('ready-mix'))
    const made = priceJob(designed({ concrete: 'ready-mix' }), [], { ...SAMPLE_BOOK, goods })
    expect(made.ok ? [] : made.error.map(({ subject }) => subject)).toContain('concrete-ready-mix')
    expect(priceJob(designed({ concrete: 'cheaper of both' }), [], { ...SAMPLE_BOOK, goods }).ok).toBe(true)
  })

  it.each([{}, LARGE, { ...LARGE, fullLoad: 1 }, { leastLoad: 0, fullLoad: 1 }])(
    'is bought where that makes the whole cheaper: %j',
    (ground) => {
      const cost = (concrete: Job['ground']['concrete']) =>
        priced(designed({ ...ground, concrete })).totals.cost
      expect(cost('cheaper of both')).toBe(Math.min(cost('bags'), cost('ready-mix')))
    },
  )
})

describe('hired tools', () => {
  const byHand = priced(designed({}))
  const augered = designed({ digging: 'two-person auger' })

  it('bore up to their widest bit, and the rest is dug by hand', () => {
    const tasks = new Map(augered.takeoff.tasks.map(({ rateId, thousandths }) => [rateId, thousandths]))
    // by hand: four holes of 3 ft; of a hole 24 in across, 1 − (18 ÷ 24)² is left to dig
    expect(tasks.get('auger-hand')).toBe(12_000)
    expect(tasks.get('dig-wide-medium')).toBe(Math.ceil(augered.takeoff.volumes.holes * (1 - 0.5625) * 1000))
  })

  it('are counted once, by the day, and named in the scope', () => {
    const pricing = priced(augered)
    expect(has(pricing, 'hire')).toMatchObject([{ part: 'other', amount: 9_200, unit: 'day' }])
    expect(has(byHand, 'hire')).toEqual([])
    const line = leftOut(augered.job, [], pricing.lines).find(({ topic }) => topic === 'hire')
    expect(line).toMatchObject({ state: 'priced', amount: 9_200 })
  })

  it('are not counted beside a sum that is stated for hire', () => {
    const scope = { ...heronLane.scope, hire: { included: true, allowance: cents(15_000) } }
    const design = designed({ digging: 'machine auger', breakerDays: 2 }, { scope })
    const pricing = priced(design)
    expect(has(pricing, 'hire').map(({ amount }) => amount)).toEqual([15_000])
    expect(leftOut(design.job, [], pricing.lines).find(({ topic }) => topic === 'hire')?.amount).toBe(15_000)
  })

  it('are a breaker for the days that are stated', () => {
    expect(has(priced(designed({ breakerDays: 3 })), 'hire-breaker')[0]?.amount).toBe(3 * 8_400)
  })
})

describe('holes in rock', () => {
  const inRock = (ground: Partial<Job['ground']> = {}) =>
    priced(designed(ground, { site: { ...heronLane.site, soil: 'rock' } }))

  it('take 2 worker hours a cubic foot, at the wage of the book', () => {
    // by hand: four holes of 24 in across and 3 ft deep, π × 1² × 3 = 9.425 cu ft each, 37.7 in all; 75.4 hours
    const [line] = has(inRock(), 'dig-rock')
    expect(line).toMatchObject({ part: 'labour', thousandths: 75_400 })
    expect(line?.amount).toBe(Math.round(75.4 * SAMPLE_BOOK.labourRate))
  })

  it('hire a breaker for the days that it takes, 8 hours each', () => {
    // by hand: 75.4 ÷ 8 = 9.4, so ten days at $84
    expect(has(inRock(), 'hire-breaker')[0]?.amount).toBe(10 * 8_400)
  })

  it('hire it for the days that are stated, where any are', () => {
    expect(has(inRock({ breakerDays: 4 }), 'hire-breaker')[0]?.amount).toBe(4 * 8_400)
  })

  it('hire no auger', () => {
    expect(has(inRock({ digging: 'machine auger' }), 'hire-auger')).toEqual([])
  })

  it('ask for their rate by name where the book lacks it', () => {
    const rates = SAMPLE_BOOK.rates.filter(({ id }) => id !== 'dig-rock')
    const design = designed({}, { site: { ...heronLane.site, soil: 'rock' } })
    const made = priceJob(design, [], { ...SAMPLE_BOOK, rates })
    expect(made.ok ? [] : made.error.map(({ subject }) => subject)).toContain('dig-rock')
  })
})

describe('set-up and clean-up of each day', () => {
  it('are counted for as many days as the hours take, only where the job says so', () => {
    const plain = priced(designed({}))
    const daily = priced(designed({}, { pricing: { ...heronLane.pricing, dailySetUp: true } }))
    expect(has(plain, 'day-setup')).toEqual([])
    // by hand: a crew of two has 8 − 0.4 − 0.35 clock hours of a day left
    const days = Math.ceil(plain.totals.crewHours / 100 / 7.25)
    expect(daily.totals.workerHours - plain.totals.workerHours).toBe(Math.round(days * 0.75 * 2 * 100))
  })
})

describe('a takeoff at a book', () => {
  it('stays as it is when it is taken there again', () => {
    const { job, takeoff } = designed(
      { concrete: 'ready-mix', digging: 'two-person auger', breakerDays: 1 },
      { pricing: { ...heronLane.pricing, dailySetUp: true } },
    )
    const once = atThisBook(job, takeoff, SAMPLE_BOOK)
    expect(atThisBook(job, once, SAMPLE_BOOK)).toEqual(once)
  })

  it('is the very same where the job asks for nothing of the kind', () => {
    const { job, takeoff } = designed({})
    expect(atThisBook(job, takeoff, SAMPLE_BOOK)).toBe(takeoff)
  })
})
