import { describe, expect, it } from 'vitest'
import { type Job, readJob } from '../../../core/job/index.ts'
import type { Line } from '../../../core/pricing/index.ts'
import { totals } from '../../../core/pricing/totals.ts'
import { cents, feet, share, ticks, unitPrice } from '../../../core/units/index.ts'

const outline = [
  { x: ticks(0), y: ticks(0) },
  { x: feet(20), y: ticks(0) },
  { x: feet(20), y: feet(12) },
  { x: ticks(0), y: feet(12) },
]

function line(part: Line['part'], amount: number): Line {
  return {
    id: `${part}-${amount}`,
    group: 'other',
    label: '',
    code: '',
    thousandths: 1000,
    unit: '',
    price: unitPrice(amount * 100),
    amount: cents(amount),
    part,
    cause: { fields: [], ids: [], rule: '' },
  }
}

function jobWith(pricing: object, builder = 'contractor'): Job {
  const read = readJob({ version: 1, builder, pricing })
  if (!read.ok) throw new Error(JSON.stringify(read.error))
  return read.value.job
}

const lines = [
  line('material', 100_001),
  line('material', 23_456),
  line('labour', 200_050),
  line('other', 9_999),
]
const shares = { salesTax: '7.25 %', contingency: '5 %', overhead: '12.5 %' }
const hours = { crewHours: 1000, workerHours: 2000 }

describe('the way from lines to a price', () => {
  // worked by hand from the formulas, cent by cent: T = 123457 × 0.0725 = 8950.63…; K = 342457 × 0.05 = 17122.85;
  // H = 359580 × 0.125 = 44947.5, half away from zero
  it('rounds each step to the cent, half away from zero', () => {
    const t = totals(jobWith({ ...shares, method: 'margin', margin: '30 %' }), outline, lines, hours)
    expect(t).toMatchObject({
      material: 123_457,
      tax: 8_951,
      labour: 200_050,
      other: 9_999,
      direct: 342_457,
      contingency: 17_123,
      overhead: 44_948,
      cost: 404_528,
      price: 577_897,
      priceTax: 0,
      priceWithTax: 577_897,
    })
  })

  it('takes a margin as a share of the price and a markup as a share of the cost', () => {
    const margin = totals(
      jobWith({ method: 'margin', margin: '25 %', markup: '90 %' }),
      outline,
      lines,
      hours,
    )
    const markup = totals(
      jobWith({ method: 'markup', margin: '90 %', markup: '25 %' }),
      outline,
      lines,
      hours,
    )
    expect([margin.cost, margin.price, margin.method, margin.methodShare]).toEqual([
      333_506,
      444_675,
      'margin',
      share(2500),
    ])
    expect([markup.cost, markup.price, markup.method, markup.methodShare]).toEqual([
      333_506,
      416_883,
      'markup',
      share(2500),
    ])
    // what is left of the price after the cost is the margin; it is not what the markup leaves
    expect((margin.price - margin.cost) / margin.price).toBeCloseTo(0.25, 5)
    expect((markup.price - markup.cost) / markup.price).toBeCloseTo(0.2, 5)
  })

  it('asks the same price by a 25 % margin as by a 33.33 % markup, to a dollar', () => {
    const margin = totals(jobWith({ method: 'margin', margin: '25 %' }), outline, lines, hours)
    const markup = totals(jobWith({ method: 'markup', markup: '33.33 %' }), outline, lines, hours)
    expect(Math.abs(margin.price - markup.price)).toBeLessThan(100)
  })

  it('adds tax on the price where the place has one, beside the price', () => {
    const t = totals(jobWith({ method: 'markup', markup: '0 %', priceTax: '8 %' }), outline, lines, hours)
    expect([t.price, t.priceTax, t.priceWithTax]).toEqual([333_506, 26_680, 360_186])
  })

  it('leaves overhead, margin and taxed price out for an owner builder, and divides the cost by the area', () => {
    const t = totals(
      jobWith({ ...shares, method: 'margin', margin: '30 %', priceTax: '8 %' }, 'owner'),
      outline,
      [line('material', 240_000)],
      hours,
    )
    expect(t).toMatchObject({
      tax: 17_400,
      contingency: 12_870,
      overhead: 0,
      cost: 270_270,
      price: 270_270,
      priceTax: 0,
      method: 'none',
      perSquareFootOf: 'cost',
      perSquareFoot: 1_126,
    })
  })

  it('divides the price by the exact area of the outline', () => {
    const t = totals(
      jobWith({ method: 'markup', markup: '0 %' }),
      outline,
      [line('material', 240_000)],
      hours,
    )
    expect([t.perSquareFoot, t.perSquareFootOf]).toEqual([1_000, 'price'])
  })
})
