import type { Estimate } from '../../core/estimate-types.ts'
import type { OffcutsOnHand } from '../../core/pricing/index.ts'
import type { Methods, StoredOffcut } from '../../shared/contract/index.ts'
import type { Store } from '../store/index.ts'
import { type Emit, ServiceError } from './service-types.ts'

/** The offcuts kept from job to job. */
export interface Rack {
  /**
   * Equal offcuts together, in an order that depends on nothing but what is there. For a stored job: without what it
   * left on the rack itself, and with what it took from it, so that its plan comes out as it was cut.
   */
  readonly onHand: (jobId?: string) => readonly OffcutsOnHand[]
  readonly list: () => readonly StoredOffcut[]
  readonly add: (input: Methods['offcuts.add'][0]) => readonly StoredOffcut[]
  readonly remove: (input: Methods['offcuts.remove'][0]) => { readonly removed: number }
  /** Throws `conflict` where the job was taken before. */
  readonly takeFrom: (
    job: { readonly id: string; readonly name: string },
    estimate: Estimate,
  ) => { readonly used: number; readonly added: number }
}

export function rackService(store: Store, now: () => Date, newId: () => string, emit: Emit): Rack {
  const changed = (): void => emit('offcuts.changed', { count: store.offcuts.list().length })
  return {
    onHand: (jobId) => together(jobId === undefined ? store.offcuts.list() : store.offcuts.listFor(jobId)),
    list: () => store.offcuts.list(),
    add: ({ product, length, count, fromJob }) => {
      const addedAt = now().toISOString()
      const added = Array.from({ length: count }, () => ({ id: newId(), product, length, fromJob, addedAt }))
      store.offcuts.add(added)
      changed()
      return added
    },
    remove: ({ ids }) => {
      const removed = store.offcuts.remove(ids)
      if (removed > 0) changed()
      return { removed }
    },
    takeFrom: (job, estimate) => {
      const cutAt = now().toISOString()
      const used = usedBy(estimate, store.offcuts.list())
      const left = keptOf(estimate).map(({ product, length }) => ({
        id: newId(),
        product,
        length,
        fromJob: job.name,
        addedAt: cutAt,
      }))
      if (!store.offcuts.takeFromJob({ jobId: job.id, cutAt, used, left })) {
        throw new ServiceError(
          'conflict',
          `The offcuts of ${job.name} are on the rack already. Add further ones by their length.`,
        )
      }
      changed()
      return { used: used.length, added: left.length }
    },
  }
}

function together(offcuts: readonly StoredOffcut[]): OffcutsOnHand[] {
  const counts = new Map<string, OffcutsOnHand>()
  for (const { product, length } of offcuts) {
    const key = JSON.stringify([product.size, product.species, product.grade, product.treatment, length])
    counts.set(key, { product, length, count: (counts.get(key)?.count ?? 0) + 1 })
  }
  return [...counts.values()]
}

/** Ids of offcuts on the rack that the plans cut from, the oldest of equal ones first. */
function usedBy(estimate: Estimate, rack: readonly StoredOffcut[]): string[] {
  const used: string[] = []
  for (const { product, plan, onHand } of estimate.plans) {
    for (const board of plan.boards) {
      if (!onHand.includes(board.stockId)) continue
      const taken = rack.find(
        (offcut) =>
          offcut.length === board.length && !used.includes(offcut.id) && same(offcut.product, product),
      )
      if (taken !== undefined) used.push(taken.id)
    }
  }
  return used
}

/** What the plans leave that the job says is worth keeping. */
function keptOf({ job, plans }: Estimate): Pick<StoredOffcut, 'product' | 'length'>[] {
  const from = job.cutting.keepOffcutsFrom
  if (from === 0) return []
  return plans.flatMap(({ product, plan }) =>
    plan.boards.filter((board) => board.offcut >= from).map((board) => ({ product, length: board.offcut })),
  )
}

function same(a: StoredOffcut['product'], b: StoredOffcut['product']): boolean {
  return a.size === b.size && a.species === b.species && a.grade === b.grade && a.treatment === b.treatment
}
