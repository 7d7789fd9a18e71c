import { describe, expect, it } from 'vitest'
import { costDesign, design } from '../../../core/estimate.ts'
import { type PriceBook, type Pricing, SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { divideRounded } from '../../../core/units/index.ts'
import { engine, estimateOf } from '../../fixtures/engine.ts'
import { type StatedJob, smallJob, workedJob } from '../../fixtures/worked-job.ts'

function pricingOf(statement: StatedJob, book: PriceBook = SAMPLE_BOOK): Pricing {
  const { pricing } = estimateOf(statement, book)
  if (pricing === null) throw new Error('it has no price')
  return pricing
}

const stated = workedJob()
const estimate = estimateOf(stated, SAMPLE_BOOK)
const pricing = pricingOf(stated)
const lineOf = (id: string, from: Pricing = pricing) => from.lines.find((line) => line.id === id)

describe('the lines of a price', () => {
  it('are each quantity × unit price, rounded once', () => {
    for (const line of pricing.lines) {
      expect(line.amount).toBe(divideRounded(BigInt(line.thousandths) * BigInt(line.price), 100_000n))
    }
  })

  it('have ids of their own', () => {
    expect(new Set(pricing.lines.map((line) => line.id)).size).toBe(pricing.lines.length)
  })

  it('sum to the printed totals', () => {
    const sum = (part: string) =>
      pricing.lines.filter((line) => line.part === part).reduce((s, l) => s + l.amount, 0)
    const { totals } = pricing
    expect([sum('material'), sum('labour'), sum('other')]).toEqual([
      totals.material,
      totals.labour,
      totals.other,
    ])
    expect(totals.material + totals.tax + totals.labour + totals.other).toBe(totals.direct)
    expect(totals.direct + totals.contingency + totals.overhead).toBe(totals.cost)
  })

  it('hold the boards of the cutting plans, once, with the yard’s code for each length', () => {
    // boards for blocks behind joints of rims are in no plan
    const lumber = pricing.lines.filter(
      (line) => (!line.id.startsWith('blocks-') && line.group === 'lumber') || line.group === 'decking',
    )
    expect(lumber.reduce((sum, line) => sum + line.amount, 0)).toBe(
      estimate.plans.reduce((sum, { plan }) => sum + plan.stockCost, 0),
    )
    const codes = SAMPLE_BOOK.lumber.flatMap((entry) => entry.stock.map((stock) => stock.code))
    for (const line of lumber) expect(codes).toContain(line.code)
  })

  it('hold the joints of the cutting plans, once, as material and labour', () => {
    const joints = pricing.lines.filter((line) => line.group === 'joints')
    expect(joints.length).toBeGreaterThan(0)
    expect(joints.reduce((sum, line) => sum + line.amount, 0)).toBe(
      estimate.plans.reduce((sum, { plan }) => sum + plan.jointCost, 0),
    )
    expect(new Set(joints.map((line) => line.part))).toEqual(new Set(['material', 'labour']))
  })

  it('say of a rim’s joints that their blocks are lumber', () => {
    expect(lineOf('joint-rim-material')?.cause.rule).toContain('boards with a line of their own')
    expect(lineOf('joint-beam-ply-material')?.cause.rule).not.toContain('blocks')
  })

  it('round goods up to whole packs', () => {
    // 27 bags by the count of the worked job; deck screws come in boxes of 350
    expect(lineOf('good-concrete-bag-80lb')?.thousandths).toBe(27_000)
    const screws = lineOf('good-screw-deck-2-1/2')
    expect((screws?.thousandths ?? 1) % 350_000).toBe(0)
    const needed = estimate.takeoff.goods.find((good) => good.sku === 'screw-deck-2-1/2')?.thousandths ?? 0
    expect(screws?.thousandths).toBeGreaterThanOrEqual(needed)
    expect((screws?.thousandths ?? 0) - needed).toBeLessThan(350_000)
  })

  it('pay worker hours, not crew hours: joists at 0.0125 crew hours a board foot by two', () => {
    const joists = estimate.takeoff.tasks.find((task) => task.rateId === 'joist')
    expect(lineOf('labour-task-joist')?.thousandths).toBe(Math.round((joists?.thousandths ?? 0) * 0.025))
  })

  it('count the minutes of joints into the hours, and crew hours as worker hours ÷ crew', () => {
    const labour = pricing.lines
      .filter((line) => line.group === 'labour')
      .reduce((s, line) => s + line.thousandths, 0)
    const minutes = estimate.plans
      .flatMap(({ plan }) => plan.joints)
      .reduce((sum, joint) => {
        const kind = estimate.takeoff.runs.find((run) => run.id === joint.runId)?.kind
        return sum + (SAMPLE_BOOK.joints.find((kit) => kit.kind === kind)?.minutes ?? 0)
      }, 0)
    // lines show hours to 1/1000, so a sum of some 40 may be off by 0.02 h
    expect(pricing.totals.workerHours / 100).toBeCloseTo(labour / 1000 + minutes / 60, 1)
    // both are rounded from the exact hours, each by itself
    expect(Math.abs(2 * pricing.totals.crewHours - pricing.totals.workerHours)).toBeLessThanOrEqual(1)
  })

  it('take nothing for an owner’s own hours, but show them', () => {
    const owner = pricingOf(smallJob('11 ft 10 in', { builder: 'owner' }))
    const labour = owner.lines.filter((line) => line.part === 'labour')
    expect(labour.length).toBeGreaterThan(20)
    expect(labour.every((line) => line.amount === 0)).toBe(true)
    expect(owner.totals.labour).toBe(0)
    expect(owner.totals.workerHours).toBeGreaterThan(2000)
    expect(owner.totals.price).toBe(owner.totals.cost)
  })

  it('hold a stated sum for each topic that the job includes, and nothing for the others', () => {
    const scope = { permit: { allowance: '$210' }, stairs: { included: false, allowance: '$900' } }
    const priced = pricingOf({ ...stated, scope })
    expect(lineOf('other-permit', priced)?.amount).toBe(21_000)
    expect(lineOf('other-stairs', priced)).toBeUndefined()
    expect(priced.totals.other).toBe(21_000)
  })

  it('leave out flashing and fasteners where the job says so', () => {
    const scope = { flashing: { included: false }, fasteners: { included: false } }
    const priced = pricingOf({ ...stated, scope })
    expect(lineOf('good-ledger-flashing', priced)).toBeUndefined()
    expect(priced.lines.filter((line) => line.group === 'fasteners')).toEqual([])
    expect(lineOf('good-joist-hanger-2x10', priced)).toBeDefined()
  })
})

describe('a book that lacks something', () => {
  const costed = (book: PriceBook) => {
    const made = design(stated)
    if (!made.ok) throw new Error(JSON.stringify(made.error))
    return costDesign(made.value, book, engine)
  }

  it('gives no total, and names every good and rate without a price', () => {
    const { pricing: none, priceFaults } = costed({
      ...SAMPLE_BOOK,
      goods: SAMPLE_BOOK.goods.filter((good) => good.sku !== 'uplift-tie'),
      rates: SAMPLE_BOOK.rates.filter((rate) => rate.id !== 'joist'),
    })
    expect(none).toBeNull()
    expect(priceFaults.map((fault) => fault.subject)).toEqual(['uplift-tie', 'joist'])
    expect(priceFaults[0]?.message).toContain('has no price for "uplift-tie"')
  })

  it('refuses a price per another unit than the takeoff counts in', () => {
    const goods = SAMPLE_BOOK.goods.map((good) =>
      good.sku === 'uplift-tie' ? { ...good, unit: 'lb' } : good,
    )
    const { priceFaults } = costed({ ...SAMPLE_BOOK, goods })
    expect(priceFaults[0]?.message).toContain('prices "uplift-tie" per lb; it is counted per each')
  })

  it('gives no total where a member is longer than any board and cannot be jointed, and says what would help', () => {
    const lumber = SAMPLE_BOOK.lumber.map((entry) =>
      entry.product.size === '2x10'
        ? { ...entry, stock: entry.stock.filter((one) => one.length <= 12 * 384) }
        : entry,
    )
    const { pricing: none, infeasible } = costed({ ...SAMPLE_BOOK, lumber })
    expect(none).toBeNull()
    expect(infeasible[0]?.message).toContain('cannot be jointed')
    expect(infeasible[0]?.help).toContain('14 ft')
  })
})
