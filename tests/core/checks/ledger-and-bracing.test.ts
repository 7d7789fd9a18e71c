import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import { DEMO_JOB, type JsonValue, setField } from '../../../core/job/index.ts'
import { checkNamed } from './worked-deck.ts'

function checksWith(...fields: readonly (readonly [string, JsonValue])[]) {
  const made = design(fields.reduce((job, [path, value]) => setField(job, path, value), DEMO_JOB))
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value.checks
}

describe('what a ledger hangs on', () => {
  // IRC 2021 R507.9.1.1, as read in a permit document: no ledger on stone or masonry veneer
  it.each([
    ['sound', 'passes', 'Look behind the siding'],
    ['masonry veneer', 'fails', 'Build the deck freestanding.'],
    ['cantilevered bay', 'outside scope', 'Build the deck freestanding, or'],
    ['I-joists or trusses', 'outside scope', 'Build the deck freestanding, or'],
    ['unknown', 'outside scope', 'Open the siding and look'],
  ] as const)('%s: %s', (band, status, remedy) => {
    const check = checkNamed(checksWith(['site.band', band]), 'ledger-band')
    expect(check.status).toBe(status)
    expect(check.remedy).toContain(remedy)
  })

  it('is no question of a freestanding deck', () => {
    const checks = checksWith(['site.attachment', 'freestanding'], ['site.band', 'masonry veneer'])
    expect(checks.filter(({ id }) => id.startsWith('ledger') || id === 'hanger-load')).toEqual([])
  })
})

describe('fasteners and hangers at a ledger', () => {
  // IRC 2021 Table R507.9.1.3(2), as quoted in a permit sheet: 5-1/2, 6-1/2, 7-1/2 in to the top edge; 3/4 in at the bottom
  it.each([
    ['2x8', 'bottom row 5.5 to 6.5 in'],
    ['2x10', 'bottom row 6.5 to 8.5 in'],
    ['2x12', 'bottom row 7.5 to 10.5 in'],
  ])('have their rows in a %s ledger', (size, words) => {
    const check = checkNamed(checksWith(['frame.joists.size', size]), 'ledger-edges')
    expect([check.status, check.message]).toEqual(['passes', expect.stringContaining(words)])
  })

  it('have no row in a 2x6 ledger', () => {
    expect(checkNamed(checksWith(['frame.joists.size', '2x6']), 'ledger-edges').status).toBe('outside scope')
  })

  it('tell the load that a hanger must be listed for', () => {
    // by hand, statics of a joist from x = 0 with its beam at 136.5 in of 160.5 in, at 16 in: live load on the span alone
    // (40 × 16 ÷ 144) × 136.5 ÷ 2 = 303.3 lb; dead (10 × 16 ÷ 144) × 160.5 × (136.5 − 80.25) ÷ 136.5 = 73.5 lb
    const check = checkNamed(checksWith(), 'hanger-load')
    expect(check.governing?.demand).toEqual({ value: 377, unit: 'lb' })
    expect(check.message).toContain('377 lb: use one listed for 600 lb or more')
  })

  it('ask of the angles at end joists, in which no hanger fits, no hanger but an angle for the same load', () => {
    // statics as above; the takeoff counts one angle per end joist at the ledger
    const check = checkNamed(checksWith(), 'hanger-load')
    expect(check.remedy).toContain('Each angle of end joists E1, E2')
    expect(check.remedy).toContain('listed for 377 lb or more')
  })
})

describe('sideways stability of a freestanding deck', () => {
  it.each([
    ['none stated', 'outside scope'],
    ['knee braces', 'outside scope'],
    ['designed', 'passes'],
  ] as const)('with bracing %s: %s', (bracing, status) => {
    const checks = checksWith(['site.attachment', 'freestanding'], ['frame.bracing', bracing])
    expect(checkNamed(checks, 'lateral-stability').status).toBe(status)
  })
})
