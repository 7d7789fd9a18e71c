import type { Planned } from '../../estimate-types.ts'

/** What is written on a board, from its number within its product's plan. */
export type BoardName = (number: number) => string

/**
 * One name for each board of the whole job, by its plan's id: its size and number, such as 2x10-4. Where two products are
 * of one size, as two grades are, a letter after the size tells them apart.
 */
export function boardNames(plans: readonly Planned[]): ReadonlyMap<string, BoardName> {
  const bySize = Map.groupBy(plans, ({ product }) => product.size)
  return new Map(
    plans.map(({ plan, product }) => {
      const same = bySize.get(product.size) ?? []
      const at = same.findIndex((one) => one.plan.jobId === plan.jobId)
      const letter = same.length === 1 ? '' : String.fromCharCode('a'.charCodeAt(0) + at)
      return [plan.jobId, (number) => `${product.size}${letter}-${number}`]
    }),
  )
}
