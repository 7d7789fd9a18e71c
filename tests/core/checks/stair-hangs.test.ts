import { describe, expect, it } from 'vitest'
import { uprightLoads } from '../../../core/checks/upright-loads.ts'
import { design } from '../../../core/design.ts'
import { ticks } from '../../../core/units/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'

const high = CATALOGUE.find(({ file }) => file === 'high-stairs-landing.json')?.job ?? {}

function checksOf(statement: object) {
  const made = design(statement)
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value.checks.filter(({ id }) => id.startsWith('stair-hangs'))
}

const stepsOf = (check: ReturnType<typeof checksOf>[number] | undefined) =>
  check?.findings.flatMap(({ steps }) => steps).join('\n') ?? ''

// Stringers 15-1/2 in apart, half of 61-1/2 in, 50 psf: 1.2917 × 2.5625 × 50 = 165.5 lb, up to 166. Southern pine of gravity
// 0.55: along its grain Fe = 6,150 psi, across 3,650. NDS 2018 Table 12.3.1A, both members 1-1/2 in, a bolt of 1/2 in:
// Re = 6150 ÷ 3650 = 1.685, Rt = 1: k1 = (√(1.685 + 2 × 2.839 × 3 + 4.784) − 1.685 × 2) ÷ 2.685 = 0.555; mode II
// 0.555 × 0.5 × 1.5 × 3650 ÷ 4.5 = 337 lb, mode Is 0.5 × 1.5 × 3650 ÷ 5 = 548
describe('what flights hang on', () => {
  const [upper, lower] = checksOf(high)

  it('is reckoned at the deck: two bolts at an upright, wet and 2 in off its end', () => {
    expect(upper?.status).toBe('calculated only')
    const [, z] = /Z = (\d+) lb × CM 0.7 × CΔ 0.57 × 2 bolts/.exec(stepsOf(upper)) ?? []
    expect(Math.abs(Number(z) - 337)).toBeLessThanOrEqual(3)
    // 335 × 0.7 × 0.571 × 2 = 268 lb. The first upright stands 7-3/4 in from the side, beside joist and post, the second at
    // 19-3/4: 83 × 19 ÷ 12 of the outer stringer at 3/4 in, and 166 × 3-1/2 ÷ 12 of the next at 16-1/4 in
    expect(stepsOf(upper)).toContain('Bolts of an upright: 180 lb of 268 lb')
  })

  it('presses more on an upright that stands beside its stringer, by the lever of the header', () => {
    const member = (x: number) => ({
      role: 'stair upright',
      box: { x0: x - 32, x1: x + 32, y0: 0, y1: 32, z0: 0, z1: 1 },
    })
    const flight = { head: { x: 0, y: 16 }, across: { x: 1, y: 0 } }
    // stringers' middles at 3/4, 16-1/4 and 31-3/4 in; uprights at 8-3/4, 16-1/4 and 31-3/4 in. The first stringer's 50 lb lies
    // 8 in outside: 50 × 15-1/2 ÷ 7-1/2 = 103.3 lb on the first upright and 53.3 lb less on the second
    const loads = uprightLoads(
      { members: [8.75, 16.25, 31.75].map((x) => member(x * 32)) } as never,
      flight as never,
      { count: 3, spacing: ticks(15.5 * 32) },
      100,
    )
    expect(loads.map((load) => Math.round(load * 10) / 10)).toEqual([103.3, 46.7, 50])
  })

  it('is reckoned at the strip: three nails of 154 lb, wet, and wood on 1-1/2 by 1-1/2 in', () => {
    // 3 × 154 × 0.7 = 323 lb; 166 ÷ 2.25 = 73.8 psi of 565 × 0.67
    expect(stepsOf(upper)).toContain('Nails of the strip at a stringer: 166 lb of 323 lb')
    expect(stepsOf(upper)).toContain('Stringer on the strip: 74 psi of 379 psi')
    expect(stepsOf(lower)).not.toContain('strip')
  })

  it('is reckoned at a landing: a header from post to post', () => {
    // three spaces of 166 lb on two posts: 249 lb each; 48 in of them, 10.4 lb per in × 48² ÷ 8 = 2,988 lb-in = 249 ft-lb
    expect(stepsOf(lower)).toContain('Bolts of a landing post: 249 lb of')
    expect(stepsOf(lower)).toContain('Greatest moment 249 ft-lb')
  })

  it('fails where stringers bring more than two bolts bear', () => {
    // closed stringers in one flight of 13 treads: 23-1/4 in apart, half of 133-1/4 in: 861 lb each under snow
    const [check] = checksOf({
      version: 1,
      size: { width: '16 ft', depth: '12 ft', height: '108 in' },
      stairs: { kind: 'straight', stringers: 'closed', treads: '2x6', width: '48 in' },
    })
    expect(check?.status).toBe('fails')
    expect(check?.message).toContain('861 lb at each of its 3 stringers')
  })

  it('says that the rim’s nails into joists are reckoned for nothing', () => {
    expect(upper?.remedy).toContain('have an angle at every joist under the head of the stairs')
  })
})
