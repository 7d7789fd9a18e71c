import { z } from 'zod'
import type { JobStatement, JsonValue } from '../../core/job/index.ts'

/** Bounds of a stated job: far above any real one, far below what would hurt the program. */
const MOST_VALUES = 40_000
const MOST_CHARACTERS = 1_000_000
const DEEPEST = 12

/** A job as the window states it. Only its shape and size are judged here; its fields are the core's matter. */
export const statementInput = z.unknown().transform((value, context): JobStatement => {
  const budget = { values: MOST_VALUES, characters: MOST_CHARACTERS }
  const wrong = isRecord(value) ? faultOf(value, budget, DEEPEST) : 'it must be an object with the job in it'
  if (wrong === null) return value as JobStatement
  context.addIssue({ code: 'custom', message: wrong })
  return z.NEVER
})

function faultOf(
  value: JsonValue,
  budget: { values: number; characters: number },
  depth: number,
): string | null {
  budget.values -= 1
  if (budget.values < 0) return `it holds more than ${MOST_VALUES} values`
  if (depth === 0) return `it is nested more than ${DEEPEST} deep`
  if (typeof value === 'string') {
    budget.characters -= value.length
    return budget.characters < 0 ? `its texts are longer than ${MOST_CHARACTERS} characters together` : null
  }
  if (typeof value === 'number') return Number.isFinite(value) ? null : 'a number in it is not finite'
  if (value === null || typeof value === 'boolean') return null
  if (Array.isArray(value)) return firstFault(value, budget, depth)
  if (!isRecord(value)) return 'it holds something that is not plain data'
  for (const key of Object.keys(value)) {
    if (key === '__proto__') return 'a field may not be called "__proto__"'
    budget.characters -= key.length
  }
  return firstFault(Object.values(value), budget, depth)
}

function firstFault(
  values: readonly JsonValue[],
  budget: { values: number; characters: number },
  depth: number,
): string | null {
  for (const value of values) {
    const wrong = faultOf(value, budget, depth - 1)
    if (wrong !== null) return wrong
  }
  return null
}

function isRecord(value: unknown): value is { readonly [key: string]: JsonValue } {
  if (value === null || typeof value !== 'object') return false
  const prototype = Object.getPrototypeOf(value)
  return prototype === Object.prototype || prototype === null
}
