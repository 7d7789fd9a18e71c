import type { StockOption } from '../cutting/index.ts'
import type { ProductClass } from '../frame/index.ts'
import { cents, type Ticks } from '../units/index.ts'
import { productKey } from './product-name.ts'

/** Equal offcuts of one product that were kept from other jobs. */
export interface OffcutsOnHand {
  readonly product: ProductClass
  readonly length: Ticks
  readonly count: number
}

/** What can be cut from the rack for one product: each length as stock that costs nothing, longest first. */
export function offcutStock(rack: readonly OffcutsOnHand[], product: ProductClass): readonly StockOption[] {
  const key = productKey(product)
  const counts = new Map<Ticks, number>()
  for (const entry of rack) {
    if (productKey(entry.product) !== key || entry.count <= 0) continue
    counts.set(entry.length, (counts.get(entry.length) ?? 0) + entry.count)
  }
  return [...counts]
    .sort((a, b) => b[0] - a[0])
    .map(([length, supply]) => ({
      id: `${key}, offcut of ${length}/32 in`,
      length,
      price: cents(0),
      supply,
      offcut: true,
    }))
}
