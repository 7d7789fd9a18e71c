import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import { DEMO_JOB, setField } from '../../../core/job/index.ts'
import { toInches } from '../../../core/units/index.ts'

describe('the handrail of stairs over a landing', () => {
  it('is a rail of its own along each flight, from over its lowest riser to over its uppermost', () => {
    const statement = [
      ['size.height', '9 ft'],
      ['stairs.kind', 'landing'],
      ['stairs.handrail', 'one side'],
    ].reduce((sum, [path = '', value = '']) => setField(sum, path, value), DEMO_JOB)
    const made = design(statement)
    if (!made.ok) throw new Error(JSON.stringify(made.error))
    const [stairs] = made.value.stairs
    if (stairs === undefined) throw new Error('no stairs')
    // by hand: between its first and its last riser a flight has one step less than risers, each √(rise² + run²)
    // (IRC 2021 R311.7.8.4: from a point over the top riser to one over the lowest)
    const expected = stairs.patterns.map(
      ({ run }, i) =>
        ((stairs.flights[i]?.risers ?? 0) - 1) *
        Math.hypot(toInches(stairs.totalRise) / stairs.risers, toInches(run)),
    )
    const { flights, each } = stairs.handrail
    expect(flights).toHaveLength(2)
    flights.forEach((long, i) => {
      expect(Math.abs(toInches(long) - (expected[i] ?? 0))).toBeLessThan(1 / 16)
    })
    expect(each).toBe(flights.reduce<number>((sum, long) => sum + long, 0))
  })
})
