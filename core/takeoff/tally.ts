import type { Cause } from '../frame/index.ts'
import { skus } from './skus.ts'
import { taskRates } from './task-rates.ts'
import type { Good, Task } from './types.ts'

/** A share of a good or a task that one thing in the deck asks for, in its unit, not rounded. */
export interface Share {
  readonly quantity: number
  readonly cause: Cause
  /** what the shares of one good have in common, said once after what each says for itself */
  readonly shared?: readonly string[]
}
export interface GoodShare extends Share {
  readonly sku: string
}
export interface TaskShare extends Share {
  readonly rateId: string
}

/** One good for each sku, in the order of the list of skus; shares of one sku are added, then rounded up to 1/1000. */
export function tallyGoods(shares: readonly GoodShare[]): readonly Good[] {
  return gather(shares, (share) => share.sku).map(([sku, quantity, cause]) => {
    const { label, unit, group } = skuOf(sku)
    return { id: `good-${sku}`, sku, label, group, thousandths: thousandthsUp(quantity), unit, cause }
  })
}

/** One task for each production rate. */
export function tallyTasks(shares: readonly TaskShare[]): readonly Task[] {
  return gather(shares, (share) => share.rateId).map(([rateId, quantity, cause]) => {
    const rate = taskRates.find((one) => one.rateId === rateId)
    if (rate === undefined) throw new Error(`the rate ${rateId} is not in the list`)
    const { label, stage, unit } = rate
    return { id: `task-${rateId}`, rateId, label, stage, thousandths: thousandthsUp(quantity), unit, cause }
  })
}

/** A tube of a diameter that no list has is still asked for by name, so that it is missed where it has no price. */
function skuOf(sku: string): { label: string; unit: string; group: Good['group'] } {
  const known = skus.find((one) => one.sku === sku)
  if (known !== undefined) return known
  if (sku.startsWith('form-tube-'))
    return { label: `Form tube, ${sku.slice(10)}`, unit: 'foot', group: 'concrete' }
  throw new Error(`the sku ${sku} is not in the list`)
}

function gather<S extends Share>(
  shares: readonly S[],
  keyOf: (share: S) => string,
): readonly (readonly [string, number, Cause])[] {
  const keys = [...new Set(shares.filter((share) => share.quantity > 0).map(keyOf))]
  return keys.map((key) => {
    const own = shares.filter((share) => keyOf(share) === key && share.quantity > 0)
    const quantity = own.reduce((sum, share) => sum + share.quantity, 0)
    const unique = (texts: readonly string[]) => [...new Set(texts)]
    return [
      key,
      quantity,
      {
        fields: unique(own.flatMap((share) => share.cause.fields)),
        ids: unique(own.flatMap((share) => share.cause.ids)),
        rule: unique([
          ...own.map((share) => share.cause.rule),
          ...own.flatMap((share) => share.shared ?? []),
        ]).join('; '),
      },
    ]
  })
}

/** Up to the next 1/1000, past the noise of floating point. */
function thousandthsUp(quantity: number): number {
  return Math.ceil(quantity * 1000 - 1e-6)
}
