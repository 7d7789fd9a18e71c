import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'

// The largest deck of the catalogue by hand: three levels, 60, 46 and 32 in high, on level ground. Level 1 is 30 ft by
// 20 ft, level 2 24 ft by 15 ft before it, level 3 20 ft by 12 ft to the right of level 2.

describe('the largest deck', () => {
  const deck = CATALOGUE.find(({ file }) => file === 'largest.json')
  const made = design(deck?.job)
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  const { stairs, guard, frame, takeoff, checks } = made.value
  const good = (sku: string) => (takeoff.goods.find((one) => one.sku === sku)?.thousandths ?? 0) / 1000

  it('has the stairs that a person solves', () => {
    // 60 ÷ 7-3/4: 8 risers of 7-1/2; 32 ÷ 7-3/4: 5 of 6.4
    expect(stairs.map(({ risers, rise }) => [risers, rise / 32])).toEqual([
      [8, 7.5],
      [5, 6.4],
    ])
    // 48 in wide: 46-1/2 ÷ 16, 3 spaces; 60 in wide: 58-1/2 ÷ 16, 4 spaces
    expect(stairs.map(({ patterns }) => patterns[0]?.count)).toEqual([4, 5])
    expect(good('stringer-hanger')).toBe(9)
    // one rail of 7 steps of √(7.5² + 10.25²), two of 4 steps of √(6.4² + 10.25²), to a tick each; 3 in to return each end
    const rails = (7 * Math.hypot(7.5, 10.25) + 2 * 4 * Math.hypot(6.4, 10.25) + 3 * 6) / 12
    expect(Math.abs(good('handrail') - rails)).toBeLessThan(3 / 384 + 1 / 1000)
  })

  it('has its pads in the concrete: 4 ft by 4 ft and 5 ft by 4 ft, 4 in thick', () => {
    const alone = design({ ...deck?.job, stairs: { kind: 'none' } })
    if (!alone.ok) throw new Error(JSON.stringify(alone.error))
    const pads = takeoff.volumes.concrete - alone.value.takeoff.volumes.concrete
    expect(pads).toBeCloseTo((4 * 4 + 5 * 4) / 3, 9)
  })

  it('has a guard along all that is open: 153 ft', () => {
    // level 1: right 20, front 30 less the step of 4, left 20 less the stairs of 4; level 2: right 15 less its step of
    // 4, front 24, left 15; level 3: what stands out past level 1, 44 − 30, right 12 less the stairs of 5, front 20
    const feet = 20 + (30 - 4) + (20 - 4) + (15 - 4) + 24 + 15 + (44 - 30) + (12 - 5) + 20
    expect(feet).toBe(153)
    expect((guard?.levelLength ?? 0) / 384).toBeCloseTo(feet, 9)
    // on both sides of both stairs, from the inner face of the rim, 1-1/2 in inside the edge, to the lowest rise cut: 7 and 4
    // treads of 10-1/4 in along slopes of 7-1/2 and 6.4 in 10-1/4, the uppermost run shorter by a riser's board of 1 in and
    // a nosing of 7/8 in less the deck's 1 in
    const along = (treads: number, rise: number) =>
      ((1.5 + treads * 10.25 - 0.875) * Math.hypot(rise, 10.25)) / 10.25
    const sloped = 2 * (along(7, 7.5) + along(4, 6.4))
    expect(Math.abs((guard?.slopedLength ?? 0) / 32 - sloped)).toBeLessThan(4 / 32)
    for (const stretch of guard?.stretches ?? [])
      for (const { opening } of stretch.bays) expect(opening).toBeLessThan(4 * 32)
  })

  it('is walked by a box step of two risers from each level to the next', () => {
    expect(frame.steps.map(({ higher, lower, risers, drop }) => [higher, lower, risers, drop / 32])).toEqual([
      [1, 2, 2, 14],
      [2, 3, 2, 14],
    ])
  })

  it('fails no check', () => {
    expect(checks.filter(({ status }) => status === 'fails')).toEqual([])
  })
})
