import type { Job } from '../job/index.ts'
import type { Layout } from '../layout/index.ts'
import { type Cents, cents, divideRounded, share, shareOf, sumCents, TICKS_PER_FOOT } from '../units/index.ts'
import type { Line, Totals } from './types.ts'

export interface Hours {
  /** hundredths of an hour */
  readonly crewHours: number
  readonly workerHours: number
}

/**
 * From the printed lines to the price, each step rounded to the cent:
 * M, L, O = sums of lines; T = M × sales tax; C = M + T + L + O; K = C × contingency; H = (C + K) × overhead;
 * cost = C + K + H; price = cost ÷ (1 − margin) or cost × (1 + markup), the one that the job names.
 * An owner builder has no wages, overhead or margin: the price is the cost.
 */
export function totals(
  job: Job,
  outline: Layout['outline'],
  lines: readonly Line[],
  hours: Hours,
  further: readonly Layout['outline'][] = [],
): Totals {
  const { pricing } = job
  const owner = job.builder === 'owner'
  const sum = (part: Line['part']) => sumCents(lines.filter((l) => l.part === part).map((l) => l.amount))
  const material = sum('material')
  const tax = shareOf(material, pricing.salesTax)
  const labour = sum('labour')
  const other = sum('other')
  const direct = cents(material + tax + labour + other)
  const contingency = shareOf(direct, pricing.contingency)
  const overhead = owner ? cents(0) : shareOf(cents(direct + contingency), pricing.overhead)
  const cost = cents(direct + contingency + overhead)
  const price = owner ? cost : priceFor(cost, pricing)
  const priceTax = owner ? cents(0) : shareOf(price, pricing.priceTax)
  const method = owner ? 'none' : pricing.method
  return {
    material,
    tax,
    labour,
    other,
    direct,
    contingency,
    overhead,
    cost,
    price,
    priceTax,
    priceWithTax: cents(price + priceTax),
    perSquareFoot: perSquareFoot(owner ? cost : price, [outline, ...further]),
    perSquareFootOf: owner ? 'cost' : 'price',
    method,
    methodShare: owner ? share(0) : method === 'margin' ? pricing.margin : pricing.markup,
    ...hours,
  }
}

/** Margin is a share of the price, markup a share of the cost: 33.33 % markup is 25 % margin. */
function priceFor(cost: Cents, pricing: Job['pricing']): Cents {
  return pricing.method === 'margin'
    ? divideRounded(BigInt(cost) * 10_000n, 10_000n - BigInt(pricing.margin))
    : divideRounded(BigInt(cost) * (10_000n + BigInt(pricing.markup)), 10_000n)
}

/** Money ÷ area of all platforms, cents per square foot; the area is exact in square ticks. */
function perSquareFoot(amount: Cents, outlines: readonly Layout['outline'][]): Cents {
  const twice = outlines.reduce((sum, outline) => sum + twiceAreaOf(outline), 0n)
  if (twice === 0n) throw new Error('the outline has no area')
  return divideRounded(BigInt(amount) * 2n * BigInt(TICKS_PER_FOOT) ** 2n, twice)
}

function twiceAreaOf(outline: Layout['outline']): bigint {
  let twice = 0n
  outline.forEach((point, i) => {
    const next = outline[(i + 1) % outline.length] ?? point
    twice += BigInt(point.x) * BigInt(next.y) - BigInt(next.x) * BigInt(point.y)
  })
  return twice < 0n ? -twice : twice
}
