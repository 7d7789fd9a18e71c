import type { CompareRow } from '../../core/compare/index.ts'
import { cents, feet, type Ticks } from '../../core/units/index.ts'

/** A comparison row with made-up figures; what a test is about is given. */
export function rowAt(width: Ticks, given: Partial<CompareRow> = {}): CompareRow {
  return {
    width,
    cost: cents(600_000),
    price: cents(900_000),
    perSquareFoot: cents(3_000),
    lumber: cents(150_000),
    joints: 0,
    framingJoints: 0,
    boards: 60,
    waste: 300,
    fitsStock: true,
    fitsWithDecking: true,
    proven: true,
    bound: cents(150_000),
    failing: 0,
    changes: [],
    fault: null,
    ...given,
  }
}

export const ft = feet
