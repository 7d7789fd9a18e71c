import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import { setField } from '../../../core/job/index.ts'
import { kneeBraceForce } from '../../../core/rules/index.ts'
import { inches, ticks } from '../../../core/units/index.ts'

const braced = {
  version: 1,
  size: { width: '16 ft', depth: '12 ft', height: '6 ft' },
  site: { attachment: 'freestanding' },
  frame: { bracing: 'knee braces' },
}

function made(statement: Parameters<typeof setField>[0]) {
  const result = design(statement)
  if (!result.ok) throw new Error(JSON.stringify(result.error))
  return result.value
}

describe('knee braces of a freestanding deck', () => {
  it('stand both ways at the four end posts, at 45° with legs of 24 in', () => {
    const { frame } = made(braced)
    const braces = frame.members.filter(({ role }) => role === 'knee brace')
    expect(braces).toHaveLength(8)
    // 24 in × √2 = 33.94 in, rounded up to 1/32 in
    expect(new Set(braces.map(({ length }) => length))).toEqual(
      new Set([ticks(Math.ceil(24 * 32 * Math.SQRT2))]),
    )
    for (const { box } of braces) {
      expect(box.z1 - box.z0).toBe(inches(24))
      expect(Math.max(box.x1 - box.x0, box.y1 - box.y0)).toBe(inches(24))
    }
    expect(new Set(braces.flatMap(({ bearings }) => bearings))).toEqual(
      new Set(['post-rear-1', 'post-rear-4', 'post-front-1', 'post-front-4']),
    )
  })

  it('are cut, bolted and counted in hours', () => {
    const { takeoff } = made(braced)
    const without = made(setField(braced, 'frame.bracing', 'none stated')).takeoff
    expect(takeoff.pieces.filter(({ mark }) => mark.startsWith('KB'))).toHaveLength(8)
    const bolts = (of: typeof takeoff) =>
      of.goods.find(({ sku }) => sku === 'ledger-bolt-1/2')?.thousandths ?? 0
    expect(bolts(takeoff) - bolts(without)).toBe(16_000)
    const work = takeoff.tasks.find(({ rateId }) => rateId === 'post-brace')
    expect(work?.thousandths).toBe(8000)
    expect(without.tasks.some(({ rateId }) => rateId === 'post-brace')).toBe(false)
  })

  it('are none where a ledger holds the deck, and shorter or none on short posts', () => {
    const roles = (statement: Parameters<typeof setField>[0]) =>
      made(statement).frame.members.filter(({ role }) => role === 'knee brace')
    expect(roles(setField(braced, 'site.attachment', 'ledger'))).toEqual([])
    // posts of 48 − 1 − 9 1/4 − 11 1/4 − 4 − 1 = 21 1/2 in, less 6 in left below, in whole inches
    const short = roles(setField(braced, 'size.height', '48 in'))
    expect(new Set(short.map(({ box }) => box.z1 - box.z0))).toEqual(new Set([inches(15)]))
    expect(roles(setField(braced, 'size.height', '40 in'))).toEqual([])
  })

  it('are told to the reviewer and pass nothing by themselves', () => {
    const check = made(braced).checks.find(({ id }) => id === 'lateral-stability')
    expect(check?.status).toBe('outside scope')
    expect(check?.remedy).toContain('8 knee braces are in the takeoff')
    expect(check?.findings[0]).toMatchObject({ demand: { value: 4 }, capacity: { value: 4 } })
  })

  it('carry a push at the beam by statics: 100 lb on a post of 48 in, leg 24 in, is 283 lb in the brace', () => {
    // moments about the foot of the brace's thrust: 100 × 48 = H × 24, H = 200, along 45° 200 × √2
    expect(kneeBraceForce(100, 48, 24)).toBeCloseTo(282.84, 2)
  })
})
