import { productKey } from '../../../../core/pricing/index.ts'
import type { StoredOffcut } from '../../../../shared/contract/index.ts'

/** Equal offcuts of one job, shown as one line. */
export interface LikeOffcuts {
  readonly key: string
  readonly product: StoredOffcut['product']
  readonly length: StoredOffcut['length']
  readonly from: string
  readonly ids: readonly string[]
}

/** Offcuts of one product, length and origin together, in the order of the list. */
export function togetherOf(offcuts: readonly StoredOffcut[]): readonly LikeOffcuts[] {
  const alike = Map.groupBy(offcuts, ({ product, length, fromJob }) =>
    JSON.stringify([productKey(product), length, fromJob]),
  )
  return [...alike].flatMap(([key, some]) => {
    const [first] = some
    if (first === undefined) return []
    const { product, length, fromJob } = first
    return [{ key, product, length, from: fromJob, ids: some.map(({ id }) => id) }]
  })
}
