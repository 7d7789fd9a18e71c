import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import type { Member } from '../../../core/frame/index.ts'

// A deck 9 ft high: 14 risers of 7.714 in, runs of 10-1/4 in, steps of 12.829 in; boards of 1 in, joists 2x10 of 9-1/4 in.
// A 2x12 is 11-1/4 × 12.829 ÷ 10-1/4 = 14.080 in deep, plumb.
const DECK = {
  version: 1,
  size: { width: '18 ft', depth: '12 ft', height: '9 ft' },
  frame: { joists: { size: '2x10', spacing: '16 in' }, postSize: '6x6' },
  stairs: { kind: 'landing', side: 'front', align: 'near', width: '4 ft' },
} as const

function made(stairs: object = {}, frame: object = {}) {
  const one = design({ ...DECK, frame: { ...DECK.frame, ...frame }, stairs: { ...DECK.stairs, ...stairs } })
  if (!one.ok) throw new Error(JSON.stringify(one.error))
  const [plan] = one.value.stairs
  if (plan === undefined) throw new Error('the deck has no stairs')
  const of = (role: Member['role']) => plan.members.filter((member) => member.role === role)
  const good = (sku: string) =>
    (one.value.takeoff.goods.find((each) => each.sku === sku)?.thousandths ?? 0) / 1000
  return { ...one.value, plan, of, good }
}

describe('the foot of a flight at a landing', () => {
  it('stands by a level cut on a strip at the landing’s beam, 6 in under its boards', () => {
    // 14.080 − (7.714 − 1) = 7.366 in of plumb end; 1-1/2 in of level cut take 1-1/2 × 7.714 ÷ 10-1/4 = 1.129 off
    const { plan, of } = made()
    expect(plan.patterns.map(({ below }) => below / 32)).toEqual([6, 0])
    const [strip, ...more] = of('stair strip')
    expect(more).toEqual([])
    const landing = (plan.platform?.level ?? 0) / 32
    expect((strip?.box.z1 ?? 0) / 32).toBeCloseTo(landing - 6, 6)
    // its face on the beam, in its whole length and height
    const beam = of('landing beam')[0]
    expect(strip?.box.y1).toBe(beam?.box.y0)
    expect(strip?.length).toBe(48 * 32)
    expect(strip?.box.z0).toBeGreaterThanOrEqual(beam?.box.z0 ?? Number.POSITIVE_INFINITY)
  })

  it.each([
    // 1 + joist − 3-1/2: the strip stays on the beam
    ['2x6', 3],
    ['2x8', 4.75],
    ['2x12', 6],
  ])('under a landing of %s lies %f in under its boards', (size, below) => {
    const { plan } = made(
      {},
      { joists: { size, spacing: '12 in' }, beams: { front: { size: '2x12', posts: 6 } } },
    )
    expect((plan.patterns[0]?.below ?? 0) / 32).toBe(below)
  })

  it('has an angle for each stringer in the order, without an anchor in concrete', () => {
    const { good, of, plan } = made()
    expect(of('stringer')).toHaveLength(8)
    expect(good('stringer-foot-angle')).toBe(8)
    expect(plan.connectors.find(({ kind }) => kind === 'stringer landing angle')?.count).toBe(4)
    expect(plan.connectors.find(({ kind }) => kind === 'stringer foot angle')?.count).toBe(4)
  })

  it('of a straight flight stands on the ground: no strip, no such angle', () => {
    const { plan, of } = made({ kind: 'straight', stringers: 'closed', treads: '2x6' })
    expect(of('stair strip')).toEqual([])
    expect(plan.patterns.map(({ below }) => below)).toEqual([0])
    expect(plan.connectors.some(({ kind }) => kind === 'stringer landing angle')).toBe(false)
  })
})

describe('the head of a flight', () => {
  it('has a header behind all of it that lies under the rim', () => {
    // the uppermost run is shorter by a riser's board of 1 in and a nosing of 7/8 in, less the deck's 1 in or the landing's
    // 7/8 in: the head lies 7/8 or 1 in × 7.714 ÷ 10-1/4 lower, 0.659 or 0.753 in. Its lower end is 1 + 14.080 + that under
    // the boards above; the rim ends at 10-1/4, so 5.49 in are left of the upper, a 2x6, and 5.58 of the lower, a 2x8
    const { of } = made()
    expect(of('stair header').map(({ product }) => product.size)).toEqual(['2x6', '2x8'])
    for (const { length } of of('stair header')) expect(length).toBe(48 * 32)
    // under a rim of 2x6 9.24 and 9.33 in are left, of which a 2x10 has 9-1/4: a 2x10 and a 2x12
    const low = made(
      {},
      { joists: { size: '2x6', spacing: '12 in' }, beams: { front: { size: '2x12', posts: 6 } } },
    )
    expect(low.of('stair header').map(({ product }) => product.size)).toEqual(['2x10', '2x12'])
  })

  it('has an upright at each stringer behind rim and header, 9-1/4 + 5-1/2 in long, in nothing else', () => {
    const { of, frame, plan, good } = made()
    const uprights = of('stair upright')
    expect(uprights.map(({ length }) => length / 32)).toEqual([14.75, 14.75, 14.75, 14.75])
    const joists = frame.members.filter(({ role }) => role === 'joist' || role === 'end joist')
    for (const { box } of uprights)
      for (const joist of joists)
        expect(Math.min(box.x1, joist.box.x1) - Math.max(box.x0, joist.box.x0)).toBeLessThanOrEqual(1)
    // 4 uprights × 4 bolts, and 2 in each of the landing's two outer posts
    expect(plan.connectors.find(({ kind }) => kind === 'header bolt')?.count).toBe(20)
    // and 2 in each of the three braces between the landing's posts
    expect(good('ledger-bolt-1/2')).toBe(20 + 6)
  })

  it('at a landing lies on the faces of its outer posts, in its whole length', () => {
    const { of, plan } = made()
    const header = of('stair header')[1]
    const outer = of('landing post').filter(({ box }) => box.y0 > (plan.platform?.corner.y ?? 0) + 18 * 32)
    expect(outer).toHaveLength(2)
    for (const { box } of outer) expect(box.y1).toBe(header?.box.y0)
    // right under the board before the beam
    const board = of('landing beam').at(-1)
    expect([board?.box.y0, board?.box.z0]).toEqual([header?.box.y0, header?.box.z1])
  })

  it.each(['landing left', 'landing right'])('of %s lies on the side faces of two posts', (kind) => {
    const { of } = made({ kind })
    const header = of('stair header')[1]
    const touching = of('landing post').filter(
      ({ box }) => box.x1 === header?.box.x0 || box.x0 === header?.box.x1,
    )
    expect(touching).toHaveLength(2)
  })
})
