import { describe, expect, it } from 'vitest'
import { designed } from '../../fixtures/designed.ts'

const DECK = { size: { width: '14 ft', depth: '11 ft', height: '40 in' } }

/** Gates that are counted, and what is told with the guard's make. */
function gatesAt(stairs: object) {
  const made = designed({ ...DECK, guard: { where: 'all open edges', gate: true }, stairs })
  return {
    gates: made.guard?.gates,
    told: made.checks.find(({ id }) => id === 'guard-make')?.remedy ?? '',
  }
}

describe('a gate that is asked for', () => {
  it('at stairs of usual width is counted, and nothing is told', () => {
    const { gates, told } = gatesAt({ kind: 'straight', width: '4 ft' })
    expect([gates, told.includes('gate')]).toEqual([1, false])
  })

  it('is told where stairs take their whole edge, and where there are none', () => {
    const full = gatesAt({ kind: 'full width', side: 'front' })
    expect(full).toMatchObject({
      gates: 0,
      told: expect.stringContaining('No gate is counted at the stairs'),
    })
    expect(gatesAt({ kind: 'none' })).toMatchObject({
      gates: 0,
      told: expect.stringContaining('No gate is counted: there are no stairs.'),
    })
  })

  it('is told where it would be wider than gates are', () => {
    expect(gatesAt({ kind: 'straight', width: '10 ft' })).toMatchObject({
      gates: 1,
      told: expect.stringContaining('The gate at the stairs 10\'-0" wide is counted as one of usual width'),
    })
  })
})
