import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import { footingSchedule } from '../../../core/ground/index.ts'
import { type JobStatement, setField } from '../../../core/job/index.ts'

/** Stairs of 4 ft and 14 risers, 10 1/4 in runs, over a landing of 4 ft by 3 ft on four posts; 40 psf live, 10 psf dead. */
const STATED = {
  site: {
    frostDepth: '36 in',
    soil: 'sand',
    soilBearing: 1500,
    soilSource: 'a soil report',
    snowLoad: 20,
    snowSource: 'the town',
  },
  size: { width: '18 ft', depth: '12 ft', height: '9 ft' },
  frame: {
    joists: { size: '2x10', spacing: '16 in' },
    postSize: '6x6',
    beams: { front: { size: '2x10', plies: 2, setback: '20 in', posts: 5, inset: '12 in' } },
  },
  ground: { tube: '12 in', base: '20 in', baseThickness: '8 in' },
  stairs: { kind: 'landing', side: 'front', align: 'near', width: '4 ft', landingDepth: '36 in' },
  guard: { where: 'where needed' },
}

type Change = readonly [Parameters<typeof setField>[1], string | number]

function made(...changes: readonly Change[]) {
  const stated = changes.reduce<JobStatement>((sum, [path, value]) => setField(sum, path, value), STATED)
  const result = design(stated)
  if (!result.ok) throw new Error(JSON.stringify(result.error))
  const { value } = result
  return {
    loads: footingSchedule(value).flatMap(({ under, carries }) => (under === 'stairs' ? [carries] : [])),
    check: (id: string) => value.checks.find((one) => one.id === id),
  }
}

describe('footings under a landing', () => {
  it('bear a quarter of it each, and a quarter of the half flights that meet its edges', () => {
    // landing 3 × 4 = 12 sq ft, 3 a post; a flight of 6 treads spans 61 1/2 in = 5.125 ft, half of it 4 ft wide is
    // 10.25 sq ft, on the two posts of the edge that it meets: 8.125 sq ft × 50 psf = 406.25 lb
    const { loads } = made()
    expect(loads.map((load) => load?.area)).toEqual([8.125, 8.125, 8.125, 8.125])
    for (const load of loads) {
      expect(load?.load).toBeCloseTo(406.25, 6)
      // a base of 20 in: π/4 × (20/12)² = 2.1817 sq ft
      expect(load?.pressure).toBeCloseTo(406.25 / 2.18166, 2)
      expect(load?.worst).toBeNull()
    }
  })

  it('bear a flight that leaves sideways at the posts of that side alone', () => {
    // the lower flight is as wide as the landing is deep, 3 ft: half of it 3 × 5.125 ÷ 2 = 7.6875 sq ft, on two posts;
    // the upper one's 10.25 sq ft on the two at the deck's edge
    const { loads } = made(['stairs.kind', 'landing left'])
    const areas = loads.map((load) => load?.area ?? 0).sort((a, b) => a - b)
    expect(areas).toEqual([3, 3 + 7.6875 / 2, 3 + 10.25 / 2, 3 + 10.25 / 2 + 7.6875 / 2])
  })

  it('are sized by the post that bears most, and fail where their soil carries too little', () => {
    expect(made().check('stair-footing-size')?.status).toBe('passes')
    // 406.25 lb on a tube of 8 in, 0.34907 sq ft: 1,164 psf, which 1,000 psf of soil does not carry
    const weak = made(
      ['ground.base', '0'],
      ['ground.tube', '8 in'],
      ['frame.postSize', '4x4'],
      ['site.soilBearing', 1000],
    ).check('stair-footing-size')
    expect(weak?.status).not.toBe('passes')
    expect(weak?.findings.find(({ method }) => method === 'calculated')?.steps.join(' ')).toContain(
      'Load 406 lb: 1164 psf',
    )
  })

  it('are checked in thickness, in depth, and under their posts', () => {
    const { check } = made()
    expect(check('stair-footing-thickness')?.status).toBe('passes')
    expect(check('stair-footing-depth')?.message).toContain('reach 3\'-0" down')
    const posts = check('stair-post-height')
    expect(posts?.status).toBe('passes')
    expect(posts?.findings.find(({ method }) => method === 'calculated')?.steps.join(' ')).toContain(
      '8.13 sq ft × 50 psf = 406 lb',
    )
  })
})

describe('posts of a landing that bear beside their middle', () => {
  const columnOf = (...changes: readonly Change[]) => {
    const steps = made(...changes)
      .check('stair-post-height')
      ?.findings.find(({ method }) => method === 'calculated')?.steps
    return steps?.join(' ') ?? ''
  }

  it('are reckoned with it, where the outer beam is flush with their faces and a header lies on them', () => {
    // 6x6 under a beam of 3 in whose outer face is flush with theirs: 5-1/2 ÷ 2 − 1-1/2 = 1-1/4 in out; the header’s
    // middle 5-1/2 ÷ 2 + 3/4 = 3-1/2 in out. (3 sq ft × 1-1/4 + 5.125 sq ft × 3-1/2) ÷ 8.125 sq ft = 2.669 in.
    // NDS 2018 15.4.1: Fc′ = 525 × 0.91 × 0.986 = 471.2 psi; le/d = 38-3/4 ÷ 5-1/2 = 7.05,
    // FcE = 0.822 × 440,000 ÷ 7.05² = 7,286 psi; Fb′ = 850 psi; 6 e ÷ d = 2.912. It bears 219.9 psi, 6,652 lb, for
    // (219.9 ÷ 471.2)² + 219.9 × 2.912 × (1 + 0.234 × 0.0302) ÷ (850 × (1 − 0.0302)) = 0.218 + 0.782 = 1
    expect(columnOf()).toContain('2.67 in off the middle')
    expect(columnOf()).toContain('Column under a load beside its middle: 406 lb of 6,652 lb, 6 %')
    const check = made().check('stair-post-height')
    const found = check?.findings.find(({ method }) => method === 'calculated')
    expect(found?.clause).toBe('15.4.1')
    expect(found?.ratio).toBeCloseTo(406.25 / 6651.9, 5)
    expect(check?.status).toBe('passes')
  })

  it('are so at a flight that turns by its header alone, their beam on their middle', () => {
    // half of a flight 3 ft wide on two posts, 3.84375 sq ft × 3-1/2 in; the landing’s 3 sq ft and half of the upper
    // flight, 5.125 sq ft, on their middle: 13.453 ÷ 11.969 = 1.124 in
    expect(columnOf(['stairs.kind', 'landing left'])).toContain('1.12 in off the middle')
    expect(columnOf(['stairs.kind', 'landing left'])).not.toContain('2.67')
  })
})

describe('what stringers stand on', () => {
  it('a tube under each bears half its flight, as wide as stringers stand apart', () => {
    const { loads, check } = made(
      ['stairs.kind', 'straight'],
      ['stairs.foot', 'footings'],
      ['size.height', '4 ft'],
    )
    // 7 risers of 6 7/8 in: 6 treads, 61 1/2 in; stringers at (48 − 1 1/2) ÷ 3 = 15 1/2 in, 1.29167 ft
    expect(loads.length).toBe(4)
    for (const load of loads) expect(load?.area).toBeCloseTo((61.5 / 24) * (15.5 / 12), 6)
    expect(check('stair-footing-size')?.status).toBe('passes')
    expect(check('stair-post-height')).toBeUndefined()
  })

  it('a pad presses with half the flight on what lies under the stringers', () => {
    const { check } = made(['stairs.kind', 'straight'], ['size.height', '4 ft'])
    // 4 ft × 5.125 ft ÷ 2 × 50 psf = 512.5 lb on 4 ft × 11 in: 12 in behind the riser's board of 1 in
    expect(check('stair-pad')?.findings[0]?.demand.value).toBeCloseTo(512.5 / ((4 * 11) / 12), 6)
    expect(check('stair-pad')?.status).toBe('passes')
  })
})
