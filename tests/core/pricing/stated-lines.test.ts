import { describe, expect, it } from 'vitest'
import type { Pricing } from '../../../core/pricing/index.ts'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { why } from '../../../core/why.ts'
import { estimateOf } from '../../fixtures/engine.ts'
import { smallJob } from '../../fixtures/worked-job.ts'

function pricingOf(lines: string, change = {}): Pricing {
  const { pricing } = estimateOf(smallJob('11 ft 10 in', { pricing: { lines, ...change } }), SAMPLE_BOOK)
  if (pricing === null) throw new Error('it has no price')
  return pricing
}

const plain = pricingOf('')
const lineOf = (id: string, from: Pricing = plain) => {
  const line = from.lines.find((one) => one.id === id)
  if (line === undefined) throw new Error(`no line ${id}`)
  return line
}
const HANGER = 'good-joist-hanger-2x8'
const BAGS = 'good-concrete-bag-80lb'
const JOISTS = 'labour-task-joist'

describe('a line stated by hand', () => {
  it('counts quantity × price as stated, and keeps what was computed beside it', () => {
    const stated = pricingOf(`${HANGER}: 7 at $2.0005`)
    const [line, computed] = [lineOf(HANGER, stated), lineOf(HANGER)]
    // 7 × $2.0005 = $14.0035, to the cent $14.00
    expect(line).toMatchObject({ thousandths: 7000, price: 20_005, amount: 1400 })
    expect(line.overridden).toEqual({
      quantity: true,
      price: true,
      computed: { thousandths: computed.thousandths, price: computed.price, amount: computed.amount },
    })
    expect(computed.overridden).toBeUndefined()
    expect(stated.totals.material - plain.totals.material).toBe(1400 - computed.amount)
    expect(stated.idle).toEqual([])
  })

  it('leaves every other line as it was, and the half that is not stated as computed', () => {
    const stated = pricingOf(`${HANGER}: at $3`)
    expect(lineOf(HANGER, stated)).toMatchObject({
      thousandths: lineOf(HANGER).thousandths,
      overridden: { quantity: false, price: true },
    })
    const others = (from: Pricing) => from.lines.filter(({ id }) => id !== HANGER)
    expect(others(stated)).toEqual(others(plain))
  })

  it('is marked even where it is just what was computed', () => {
    const { thousandths } = lineOf(HANGER)
    const stated = pricingOf(`${HANGER}: ${thousandths / 1000}`)
    expect(lineOf(HANGER, stated).overridden?.quantity).toBe(true)
    expect(stated.totals).toEqual(plain.totals)
  })

  it('may be nothing at all: what is on hand already', () => {
    expect(lineOf(BAGS, pricingOf(`${BAGS}: 0`)).amount).toBe(0)
  })

  it('of hours counts into paid hours, clock hours and days by exactly the difference', () => {
    const hours = lineOf(JOISTS).thousandths
    const stated = pricingOf(`${JOISTS}: ${(hours + 14_000) / 1000}`)
    // the computed hours are rounded to 1/1000 in the line and exact in the sum: 1/100 h may lie between
    expect(Math.abs(stated.totals.workerHours - plain.totals.workerHours - 1400)).toBeLessThanOrEqual(1)
    expect(Math.abs(stated.totals.crewHours - plain.totals.crewHours - 700)).toBeLessThanOrEqual(1)
    // 14 worker hours are $60 each
    expect(stated.totals.labour - plain.totals.labour).toBe(14 * 6000)
    expect(stated.calendar.find(({ what }) => what === 'Frame')?.crewHours).toBe(
      (plain.calendar.find(({ what }) => what === 'Frame')?.crewHours ?? 0) + 700,
    )
  })

  it('of a price of hours changes no hours', () => {
    const stated = pricingOf(`${JOISTS}: at $100`)
    expect(stated.totals.workerHours).toBe(plain.totals.workerHours)
    expect(stated.totals.labour).toBeGreaterThan(plain.totals.labour)
  })

  it('of boards changes what is paid and not how they are cut', () => {
    const board = plain.lines.find(({ group }) => group === 'lumber')
    if (board === undefined) throw new Error('there is lumber')
    const made = estimateOf(
      smallJob('11 ft 10 in', { pricing: { lines: `${board.id}: at $1` } }),
      SAMPLE_BOOK,
    )
    const before = estimateOf(smallJob('11 ft 10 in'), SAMPLE_BOOK)
    expect(made.plans).toEqual(before.plans)
    expect(made.pricing?.lines.find(({ id }) => id === board.id)?.amount).toBe(board.thousandths / 10)
  })

  it('says in its why what was stated in the place of what', () => {
    const job = smallJob('11 ft 10 in', { pricing: { lines: `${HANGER}: 7` } })
    const step = why(estimateOf(job, SAMPLE_BOOK), HANGER)
    expect(step?.cause?.fields[0]).toBe('pricing.lines')
    expect(step?.cause?.rule).toContain(`quantity stated, ${lineOf(HANGER).thousandths / 1000} computed`)
  })
})

describe('what is stated for a line that cannot hold it', () => {
  it('is kept and told, and nothing else of the price changes: a line that is not there', () => {
    const gone = pricingOf(
      'good-concrete-tube-36: 3; good-joist-hangr-2x8: 7; lumber-30212-16: at $20; nothing: 1',
    )
    expect(gone.lines).toEqual(plain.lines)
    expect(gone.totals).toEqual(plain.totals)
    expect(gone.idle.map(({ line }) => line)).toEqual([
      'good-concrete-tube-36',
      'good-joist-hangr-2x8',
      'lumber-30212-16',
      'nothing',
    ])
    expect(gone.idle[1]?.fix).toContain(`"${HANGER}"`)
    expect(gone.idle[2]?.label).toBe('2x12 Southern Pine No.2, treated, 16 ft')
    for (const { message, fix } of gone.idle) {
      expect(message).toContain('kept')
      expect(fix).not.toBe('')
    }
  })

  it('counts again once the line is there', () => {
    const lines = 'other-permit: at $310'
    expect(pricingOf(lines).idle).toHaveLength(1)
    const job = smallJob('11 ft 10 in', { pricing: { lines }, scope: { permit: { allowance: '$210' } } })
    const { pricing } = estimateOf(job, SAMPLE_BOOK)
    expect(pricing?.idle).toEqual([])
    expect(pricing?.lines.find(({ id }) => id === 'other-permit')?.amount).toBe(31_000)
  })

  it('is told where half a board or hanger is stated', () => {
    const half = pricingOf(`${HANGER}: 7.5`)
    expect(half.lines).toEqual(plain.lines)
    expect(half.idle[0]?.message).toContain('7.5 each cannot be had')
  })

  it('is told where it comes to more than a deck is priced up to', () => {
    const much = pricingOf(`${HANGER}: 100000 at $999999`)
    expect(much.totals).toEqual(plain.totals)
    expect(much.idle[0]?.message).toContain('$4,000,000.00')
  })

  it('is a named fault where lines that are each in bounds come to more together, and no total is shown', () => {
    const shares = {
      contingency: '100 %',
      overhead: '200 %',
      margin: '95 %',
      salesTax: '30 %',
      priceTax: '30 %',
    }
    const most = pricingOf(`${HANGER}: 1 at $999999; ${BAGS}: 1 at $999999`, shares)
    expect(most.totals.priceWithTax).toBeGreaterThan(most.totals.price)
    const lines = [HANGER, BAGS, 'good-uplift-tie'].map((id) => `${id}: 2 at $999999`).join('; ')
    const { pricing, priceFaults } = estimateOf(
      smallJob('11 ft 10 in', { pricing: { lines, ...shares } }),
      SAMPLE_BOOK,
    )
    expect(pricing).toBeNull()
    expect(priceFaults[0]?.message).toContain('$4,000,000.00')
  })
})
