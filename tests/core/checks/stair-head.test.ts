import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import { footingSchedule } from '../../../core/ground/index.ts'
import { footingLoadWords } from '../../../core/papers/tables/ground-footings.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'

const high = CATALOGUE.find(({ file }) => file === 'high-stairs-landing.json')?.job ?? {}

function checkOf(statement: object) {
  const made = design(statement)
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value.checks.find(({ id }) => id === 'stair-head-load')
}

describe('stairs that hang on the deck', () => {
  const check = checkOf(high)
  const told = check?.findings.flatMap(({ steps }) => steps).join('\n') ?? ''

  it('bring half of their first flight to the posts either side, by the lever of the cantilever', () => {
    // by hand: 6 treads of 10 1/4 in span 61 1/2 in, half of it 4 ft wide is 10.25 sq ft, × 50 psf = 512.5 lb; at the tip
    // of 20 in over a clear span of 121 in it comes to the beam 1 + 20 ÷ 121 = 1.1653 times: 597.2 lb
    expect(check?.message).toContain('513 lb')
    expect(check?.message).toContain('598 lb to posts 1 and 2')
    // 1,653 lb of the deck at post 2, and these: 2,250 lb
    expect(check?.message).toMatch(/listed for 2,25\d lb or more/)
    // (27.08 sq ft × 50 psf + 597.2 lb) ÷ 2.1817 sq ft under a base of 20 in = 894.5 psf
    expect(told).toContain('Footing 2: 27.08 sq ft × 50 psf and all of it, 1,952 lb: 895 psf')
    expect(check?.status).toBe('passes')
  })

  it('are counted at the tip of the joists, in the beam and in the posts', () => {
    // 48 in of flight over joists at 16 in: three share it
    expect(told).toContain('513 lb on 3 joists, 20.00 in beyond the beam')
    expect(told).toContain('598 lb at the worst place of beam B1')
    expect(told).toMatch(/Post 2: 225\d lb, the deck's greatest reaction and the stairs/)
  })

  it('fail what bears the deck but not the deck and them', () => {
    // a base of 16 in is 1.396 sq ft: 1,952 lb press 1,398 psf, and soil of 1,000 psf does not carry it
    expect(
      checkOf({
        ...high,
        site: { frostDepth: '36 in', soil: 'sand', soilBearing: 1000, snowLoad: 0 },
        ground: { base: '16 in', tube: '12 in' },
      })?.status,
    ).toBe('fails')
  })

  it('are counted in the joist that they hang along, and tell what its ends are held for', () => {
    const side = checkOf({ ...high, stairs: { kind: 'straight', side: 'left', width: '4 ft' } })
    expect(side?.remedy).toMatch(/The 1,111 lb hang along a joist, E1: what holds either end/)
    // 13 treads of 10-1/4 in, 133-1/4 in: half of it 4 ft wide × 50 psf is 1,110.4 lb. By hand, 122-1/2 in from the ledger to
    // the beam's middle, as if it ended there: in the middle 1,110 × (122.5 ÷ 4 − 48 ÷ 8) ÷ 12 = 2,279 ft-lb; of the deck
    // 8 + 1 in, 50 psf, 3.125 lb per in × 122.5² ÷ 8 ÷ 12 = 488 ft-lb. The joist goes on beyond, which takes a little off
    const steps = side?.findings.flatMap((finding) => finding.steps) ?? []
    const at = steps.findIndex((text) => text.includes('of joist E1, at the worst place'))
    const moment = Number(/Greatest moment (\d+) ft-lb/.exec(steps.slice(at).join(' '))?.[1])
    expect(moment).toBeLessThan(2279 + 488)
    expect(moment).toBeGreaterThan(0.9 * (2279 + 488))
    // 2,700 ft-lb on 21.39 in³ are 1,500 psi, no joist of 2x10 bears that
    expect(side?.status).toBe('fails')
    const low = checkOf({
      ...high,
      size: { width: '18 ft', depth: '12 ft', height: '30 in' },
      stairs: { kind: 'straight', side: 'left', width: '4 ft' },
    })
    expect(low?.status).toBe('passes')
  })
})

describe('what is told of the deck’s loads', () => {
  const made = design(high)
  if (!made.ok) throw new Error(JSON.stringify(made.error))

  it('says that the greatest reaction is without the stairs, and where theirs stands', () => {
    const ends = made.value.checks.find(({ id }) => id === 'post-ends-front')
    expect(ends?.message).toContain('where stairs hang, for what the load of the stairs says')
    expect(ends?.findings[0]?.steps.join(' ')).toContain('1,653 lb, the stairs not in it')
    expect(footingLoadWords(made.value).explains).toContain(
      'are in the greatest reaction and not in the load: Half of flight 1',
    )
  })

  it('counts half of the flight in the greatest reaction of the footings that it comes to, and in no other', () => {
    // posts 1 and 2 lie either side of the stairs: 597.2 lb to each, as above, beside 1,653 lb at post 2
    const rows = footingSchedule(made.value).filter(({ under }) => under === 'deck')
    expect(rows.map(({ carries }) => Math.round(carries?.ofStairs ?? 0))).toEqual([597, 597, 0, 0, 0])
    expect(Math.abs((rows[1]?.carries?.worst ?? 0) - (1653 + 597.2))).toBeLessThan(1.5)
    // on π/4 × (20/12)² = 2.1817 sq ft
    expect(rows[1]?.carries?.worstPressure).toBeCloseTo((rows[1]?.carries?.worst ?? 0) / 2.18166, 1)
  })
})
