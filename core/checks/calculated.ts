import type { Source } from '../data/index.ts'
import { calculationConfidence, figure } from '../rules/index.ts'
import { over } from './finding.ts'
import type { Finding, Quantity } from './types.ts'

/** One limit of a calculation: what it is called, what is there, what is allowed. */
export interface Limit {
  /** e.g. "bending" */
  readonly name: string
  readonly clause: string
  readonly demand: Quantity
  readonly capacity: Quantity
  /** how demand and capacity came about, in the order that a person would reckon them */
  readonly steps: readonly string[]
}

/**
 * The worst of several limits as one finding, with the steps of all of them.
 * @param values where the design values come from: their confidence is the calculation's
 */
export function byCalculation(
  limits: readonly [Limit, ...Limit[]],
  values: Source,
  before: readonly string[] = [],
): Finding {
  const ratioOf = (limit: Limit) => over(limit.demand.value, limit.capacity.value)
  const worst = limits.reduce((a, b) => (ratioOf(b) > ratioOf(a) ? b : a))
  return {
    method: 'calculated',
    document: 'NDS',
    edition: '2018',
    clause: worst.clause,
    demand: worst.demand,
    capacity: worst.capacity,
    ratio: ratioOf(worst),
    confidence: calculationConfidence(values),
    lookup: `${worst.name} governs; values from ${values.document} ${values.edition} ${values.clause}`,
    steps: [...before, ...limits.flatMap((limit) => [...limit.steps, `${limit.name}: ${outcome(limit)}`])],
  }
}

function outcome({ demand, capacity }: Limit): string {
  const share = Math.round(over(demand.value, capacity.value) * 100)
  return `${print(demand)} of ${print(capacity)}, ${share} %`
}

function print({ value, unit }: Quantity): string {
  const digits = unit === 'in' ? 3 : unit === 'sq ft' ? 2 : 0
  return `${figure(value, digits)} ${unit}`
}
