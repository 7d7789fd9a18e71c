import type { Check, CheckStatus } from '../../core/checks/index.ts'
import type { Estimate } from '../../core/estimate-types.ts'
import { wasteOf } from '../../core/waste.ts'

/** The sill's figures of one estimate; money in cents, hours in 1/100, waste in 1/100 %. */
export interface Figures {
  readonly cost: number
  readonly price: number
  readonly perSquareFoot: number
  readonly boards: number
  readonly joints: number
  readonly waste: number
  readonly crewHours: number
  /** true where every class of lumber has the least order there is */
  readonly proven: boolean
  /** true where its user ended the search of a class */
  readonly stopped: boolean
  /** cents by which a better order could still beat this one, at most */
  readonly gap: number
}

/** null where the estimate has no total: a good without a price, or lumber that cannot be cut from stock. */
export function figuresOf(estimate: Estimate): Figures | null {
  const { pricing, plans } = estimate
  if (!pricing) return null
  const { totals } = pricing
  const sum = (read: (plan: (typeof plans)[number]['plan']) => number) =>
    plans.reduce((total, each) => total + read(each.plan), 0)
  return {
    cost: totals.cost,
    price: totals.price,
    perSquareFoot: totals.perSquareFoot,
    boards: sum((plan) => plan.boards.length),
    joints: sum((plan) => plan.joints.length),
    waste: wasteOf(estimate).share,
    crewHours: totals.crewHours,
    proven: plans.every((each) => each.plan.status === 'proven optimal'),
    stopped: plans.some((each) => each.plan.status === 'stopped'),
    gap: sum((plan) => plan.gap),
  }
}

/** Three marks for five states: what needs the official's word counts with what fails. */
export type Mark = 'passes' | 'near' | 'fails'

export function markOf(status: CheckStatus): Mark {
  if (status === 'passes' || status === 'near') return status
  return 'fails'
}

const ORDER: readonly CheckStatus[] = ['fails', 'outside scope', 'calculated only', 'near', 'passes']

/** Worst first; among equals the fullest first. */
export function bySeverity(checks: readonly Check[]): readonly Check[] {
  return [...checks].sort(
    (a, b) =>
      ORDER.indexOf(a.status) - ORDER.indexOf(b.status) ||
      (b.governing?.ratio ?? 0) - (a.governing?.ratio ?? 0) ||
      a.id.localeCompare(b.id),
  )
}

export function countMarks(checks: readonly Check[]): { readonly [mark in Mark]: number } {
  const count = (mark: Mark) => checks.filter((check) => markOf(check.status) === mark).length
  return { passes: count('passes'), near: count('near'), fails: count('fails') }
}
