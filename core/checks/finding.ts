import type { CodeLimit, Source } from '../data/index.ts'
import type { TableLookup } from '../rules/index.ts'
import { inches } from '../units/index.ts'
import type { Finding, Quantity } from './types.ts'

/** A length in ticks, ready to print. */
export function length(value: number): Quantity {
  return { value, unit: 'ticks' }
}

/** What a table allows against what is there, both in ticks; null where no row covers it. */
export function atMost(lookup: TableLookup, demand: number, steps: readonly string[]): Finding | null {
  if (lookup.kind === 'outside') return null
  const capacity = lookup.value === null ? 0 : inches(lookup.value)
  return prescriptive(lookup.source, lookup.sentence, length(demand), length(capacity), steps)
}

/** What a table asks for against what is there, both in ticks; null where no row covers it. */
export function atLeast(lookup: TableLookup, provided: number, steps: readonly string[]): Finding | null {
  if (lookup.kind === 'outside' || lookup.value === null) return null
  const demand = inches(lookup.value)
  return prescriptive(lookup.source, lookup.sentence, length(demand), length(provided), steps)
}

/** A single limit of a clause against what is there. */
export function byLimit(
  limit: CodeLimit,
  demand: Quantity,
  capacity: Quantity | null,
  steps: readonly string[],
): Finding {
  return prescriptive(limit.source, limit.says, demand, capacity, steps)
}

function prescriptive(
  { document, edition, clause, confidence }: Source,
  lookup: string,
  demand: Quantity,
  capacity: Quantity | null,
  steps: readonly string[],
): Finding {
  return {
    method: 'prescriptive',
    document,
    edition,
    clause,
    demand,
    capacity,
    ratio: capacity === null ? null : over(demand.value, capacity.value),
    confidence,
    lookup,
    steps,
  }
}

/** demand ÷ capacity; something over nothing is past every limit, nothing over nothing is no demand. */
export function over(demand: number, capacity: number): number {
  if (demand <= 0) return 0
  return capacity <= 0 ? Number.MAX_VALUE : demand / capacity
}

/** The finding with the greater ratio. */
export function worse(a: Finding | null, b: Finding | null): Finding | null {
  if (a === null || b === null) return a ?? b
  return (b.ratio ?? 0) > (a.ratio ?? 0) ? b : a
}
