import type { Objective } from '../cutting/index.ts'
import type { ProductClass } from '../frame/index.ts'
import { type Job, stockCounts, stockLengths } from '../job/index.ts'
import { productName } from './product-name.ts'
import type { LumberProduct, PriceFault } from './types.ts'

/** The stock lengths that the job's wishes leave of a product, each in no larger supply than they allow. */
export function wishedStock(listed: LumberProduct, { cutting }: Job): LumberProduct['stock'] {
  const { size } = listed.product
  const without = stockLengths(cutting.doWithout).filter((wish) => wish.size === size)
  const most = new Map(
    stockCounts(cutting.atMost)
      .filter((wish) => wish.size === size)
      .map((wish) => [wish.length, wish.count]),
  )
  return listed.stock
    .filter((stock) => !without.some((wish) => wish.length === stock.length))
    .map((stock) => {
      const count = most.get(stock.length)
      return count === undefined ? stock : { ...stock, supply: Math.min(count, stock.supply ?? count) }
    })
}

/** What the plans are chosen for; least cost decides in the end whatever stands before it. */
export function objectivesOf({ cutting }: Job): readonly Objective[] {
  const { objective, objectiveThen } = cutting
  return objective === objectiveThen || (objective !== 'least cost' && objectiveThen === 'least cost')
    ? [objective]
    : [objective, objectiveThen]
}

export function allLeftOut(product: ProductClass, listed: LumberProduct): PriceFault {
  const name = productName(product)
  return {
    subject: name,
    message: `Every stock length of ${name} is among those to do without (${listed.stock.length} of ${listed.stock.length}).`,
    fix: 'Take one of them back under "Lengths to do without".',
  }
}
