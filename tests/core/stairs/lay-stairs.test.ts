import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import type { Design } from '../../../core/estimate-types.ts'
import { leftOut } from '../../../core/left-out.ts'
import { priceJob, SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import type { StairPlan } from '../../../core/stairs/index.ts'
import { stairsShare } from '../../../core/stairs-share.ts'
import { inches } from '../../../core/units/index.ts'

const DECK = { version: 1, size: { width: '16 ft', depth: '12 ft', height: '44 in' } } as const

function designOf(statement: object): Design {
  const made = design({ ...DECK, ...statement })
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value
}

function stairsOf(statement: object): StairPlan {
  const [stairs] = designOf(statement).stairs
  if (stairs === undefined) throw new Error('the deck has no stairs')
  return stairs
}

function faultsOf(statement: object) {
  const made = design({ ...DECK, ...statement })
  return made.ok ? [] : made.error
}

function countOf(stairs: StairPlan, role: string): number {
  return stairs.members.filter((member) => member.role === role).length
}

describe('risers and treads', () => {
  // Worked example of the data pack, own case from the limits of IRC R311.7.5: 44 in, treads of 10-1/2 in
  it('44 in of rise are six risers of 7 1/3 in and five treads, 52 1/2 in of run', () => {
    const stairs = stairsOf({ stairs: { kind: 'straight', run: '10 1/2 in' } })
    expect(stairs).toMatchObject({ risers: 6, run: inches(52.5), totalRise: inches(44) })
    expect(stairs.rise / 32).toBeCloseTo(7.3333, 4)
    expect(countOf(stairs, 'tread')).toBe(2 * 5)
  })

  // US Army correspondence course EN5156, stairway calculations: 94 in of rise, 13 risers of 7.231 in, 126 in of run
  it('94 in of rise are 13 risers of 7.231 in, with 126 in of run at 10 1/2 in', () => {
    const stairs = stairsOf({
      size: { ...DECK.size, height: '94 in' },
      stairs: { kind: 'straight', run: '10 1/2 in' },
    })
    expect(stairs).toMatchObject({ risers: 13, run: inches(126) })
    expect(stairs.rise / 32).toBeCloseTo(7.231, 3)
  })

  it('a flight of one tread stands on a pad that begins at the deck, not under it', () => {
    const stairs = stairsOf({
      size: { ...DECK.size, height: '15 in' },
      frame: { joists: { size: '2x6' }, beams: { front: { set: 'flush', size: '2x6' } } },
      ground: { projection: '0 in', standoff: '0 in' },
      stairs: { kind: 'straight' },
    })
    expect(stairs).toMatchObject({ risers: 2, run: inches(10.25) })
    // the deck's boards reach 1 in over, the tread's 7/8 in over its riser: 1 + 10-1/4 − 7/8 in to the face of its board
    expect(stairs.pad).toMatchObject({ depth: inches(48), landing: inches(48 - 10.375) })
    expect(stairs.pad?.corner.y).toBe(inches(144))
  })

  // Own case from the limits of IRC R311.7.5: exactly five times 7-3/4 in
  it('38 3/4 in is five risers at the limit, not six', () => {
    const stairs = stairsOf({
      size: { ...DECK.size, height: '38 3/4 in' },
      stairs: { kind: 'straight', run: '10 in' },
    })
    expect(stairs).toMatchObject({ risers: 5, rise: inches(7.75), run: inches(40) })
  })

  it('on falling ground the rise is that to the ground where the foot then stands', () => {
    // 1 in 12 away from the house: at the deck's edge 12 in lower, and 1 in more for every foot of run
    const stairs = stairsOf({
      site: { ground: { away: { fall: '1 in', over: '12 in' } } },
      stairs: { kind: 'straight', run: '10 in' },
    })
    // by hand: treads of 11-1/8 in have a nosing of 1-1/8, with a riser's board of 1 in 1-1/8 in more than the deck's 1 in:
    // 8 risers reach 70 − 1-1/8 in out, 44 + 12 + 68.875/12 = 61.74 in, 7.72 in each; 7 risers would be 8.70 in each
    expect(stairs.risers).toBe(8)
    expect(stairs.totalRise / 32).toBeCloseTo(44 + 12 + 68.875 / 12, 1)
    expect(stairs.landingLevel / 32).toBeCloseTo(-(12 + 68.875 / 12), 1)
  })
})

describe('the stringer', () => {
  /**
   * Extent along the slope of a cut stringer's outline, every corner reckoned by itself. The last run is shorter by a
   * riser's board of 1 in and the nosing of two 5/4x6 with 1/8 in between, less the 1 in that the deck's boards reach over.
   */
  function boardLength(risers: number, rise: number, run: number, drop: number): number {
    const shorter = inches(1) + (inches(11.125) - run) - inches(1)
    const treads = risers - 1
    const slope = Math.atan2(rise, run)
    const along = (out: number, up: number) => out * Math.cos(slope) + up * Math.sin(slope)
    const corners: (readonly [number, number])[] = [[0, 0]]
    for (let tread = 1; tread <= treads; tread += 1) {
      const end = tread * run - (tread === treads ? shorter : 0)
      corners.push([(tread - 1) * run, tread * rise - drop], [end, tread * rise - drop])
    }
    const places = corners.map(([out, up]) => along(out, up))
    return Math.max(...places) - Math.min(...places)
  }

  it.each([
    ['44 in', '10 1/2 in'],
    ['60 in', '10 in'],
    ['27 in', '11 in'],
  ])('of a deck %s high with treads of %s is as long as its outline, up to a tick', (height, run) => {
    const stairs = stairsOf({ size: { ...DECK.size, height }, stairs: { kind: 'straight', run } })
    const [pattern] = stairs.patterns
    const expected = boardLength(stairs.risers, stairs.rise, pattern?.run ?? 0, inches(1))
    expect((pattern?.length ?? 0) - expected).toBeGreaterThanOrEqual(-1e-6)
    expect((pattern?.length ?? 0) - expected).toBeLessThan(1)
  })

  it('is dropped by the thickness of a tread, and its marks stand a step apart', () => {
    const [pattern] = stairsOf({ stairs: { kind: 'straight', run: '10 1/2 in' } }).patterns
    expect(pattern?.drop).toBe(inches(1))
    expect(pattern?.marks).toHaveLength(5)
    // √(7.3333² + 10.5²) = 12.807 in, the worked example's step line
    for (const { riser, at } of pattern?.marks ?? []) expect(at / 32).toBeCloseTo((riser - 1) * 12.807, 1)
    // 11-1/4 less 7.3333 × 10.5 ÷ 12.807
    expect((pattern?.throat ?? 0) / 32).toBeCloseTo(11.25 - (7.3333 * 10.5) / 12.807, 3)
  })

  it('comes as often as the treads ask for: 16 in apart under 5/4 boards, 18 in under 2x6', () => {
    const of = (treads: string) =>
      stairsOf({ stairs: { kind: 'straight', width: '48 in', treads } }).patterns[0]?.count
    // 46-1/2 in from centre to centre: 3 spaces of 16 in or less, 3 of 18 in or less; at 36 in wide 3 and 2
    expect([of('5/4x6'), of('2x6')]).toEqual([4, 4])
    const narrow = (treads: string) =>
      stairsOf({ stairs: { kind: 'straight', width: '36 in', treads } }).patterns[0]?.count
    expect([narrow('5/4x6'), narrow('2x6')]).toEqual([4, 3])
  })

  it('closed keeps its depth, takes brackets instead of notches, and has treads between', () => {
    const stairs = stairsOf({
      stairs: { kind: 'straight', width: '48 in', stringers: 'closed', treads: '2x6' },
    })
    // 24 in between: three stringers, two bays of treads, each 46-1/2 ÷ 2 − 1-1/2 in long
    expect(stairs.patterns[0]).toMatchObject({ count: 3, drop: 0, throat: inches(11.25) })
    const tread = stairs.members.find(({ role }) => role === 'tread')
    expect(tread?.length).toBe(inches(21.75))
    expect(countOf(stairs, 'tread')).toBe(5 * 2 * 2)
    expect(stairs.connectors.find(({ kind }) => kind === 'tread bracket')?.count).toBe(5 * 2 * 2)
  })
})

describe('the place', () => {
  it('is the middle of the longest open edge that faces the side', () => {
    const stairs = stairsOf({ stairs: { kind: 'straight', width: '48 in' } })
    expect(stairs.edge).toMatchObject({ side: 'front', number: 3 })
    expect(stairs.place).toBe(inches((192 - 48) / 2))
    const left = stairsOf({ stairs: { kind: 'straight', side: 'left', align: 'near' } })
    expect(left.flights[0]).toMatchObject({ head: { x: 0, y: 0 }, down: { x: -1, y: 0 } })
  })

  it('as wide as the edge takes all of it', () => {
    const stairs = stairsOf({ stairs: { kind: 'full width' } })
    expect([stairs.place, stairs.width]).toEqual([0, inches(192)])
  })

  it.each([
    [{ kind: 'straight', side: 'rear' }, 'stairs.side', 'the house stands there'],
    [{ kind: 'straight', edge: 1 }, 'stairs.edge', 'the house stands there'],
    [{ kind: 'straight', edge: 9 }, 'stairs.edge', 'there is no edge 9: the outline has 4'],
    [{ kind: 'straight', width: '17 ft' }, 'stairs.width', 'wider than their edge'],
    [{ kind: 'straight', align: 'stated', place: '13 ft' }, 'stairs.place', 'reach past the end'],
  ])('%j is a fault at %s', (stairs, path, message) => {
    expect(faultsOf({ stairs })).toEqual([
      expect.objectContaining({ path, message: expect.stringContaining(message) }),
    ])
  })

  it('a deck one step up needs no stringers, and says so', () => {
    const faults = faultsOf({
      size: { ...DECK.size, height: '20 in' },
      site: {
        ground: {
          kind: 'spots',
          spots: [
            ...['12 in', '68 in', '124 in', '180 in'].map((x) => ({ x, y: '120 in', z: '0 in' })),
            { x: '96 in', y: '154 1/4 in', z: '15 in' },
          ],
        },
      },
      frame: { beams: { front: { size: '2x6' } }, joists: { size: '2x6' } },
      stairs: { kind: 'straight' },
    })
    expect(faults).toEqual([
      expect.objectContaining({ path: 'stairs.kind', message: expect.stringContaining('5", one step') }),
    ])
  })
})

describe('two flights with a landing', () => {
  it('share the risers, turn where asked, and stand on four posts', () => {
    const size = { ...DECK.size, height: '84 in' }
    const left = stairsOf({ size, stairs: { kind: 'landing left', landingDepth: '42 in' } })
    // 84 in ÷ 7-3/4 in: 11 risers, six above and five below
    expect(left.risers).toBe(11)
    expect(left.flights.map(({ risers }) => risers)).toEqual([6, 5])
    // walking away from the house, left is to the right on the plan
    expect(left.flights[1]).toMatchObject({ down: { x: 1, y: 0 }, width: inches(42) })
    const right = stairsOf({ size, stairs: { kind: 'landing right' } })
    expect(right.flights[1]?.down).toEqual({ x: -1, y: 0 })
    expect(countOf(left, 'landing post')).toBe(4)
    expect(left.platform?.level).toBeCloseTo(84 * 32 - (6 * 84 * 32) / 11, 6)
  })

  it('lie where the upper flight ends, and the lower one begins past them', () => {
    const stairs = stairsOf({
      size: { ...DECK.size, height: '84 in' },
      stairs: { kind: 'landing', landingDepth: '40 in', run: '10 in' },
    })
    const front = inches(144)
    // five runs of 10 in, the uppermost shorter by the nosing of 1-1/8 in: the deck's 1 in is taken by the riser's board
    expect(stairs.platform?.corner.y).toBe(front + inches(50 - 1.125))
    expect(stairs.flights[1]?.head.y).toBe(front + inches(90 - 1.125))
  })
})

describe('none by default', () => {
  it('a job without stairs has none, and its takeoff is that of the frame', () => {
    const made = designOf({})
    expect(made.stairs).toEqual([])
    expect(made.checks.some(({ id }) => id.startsWith('stair'))).toBe(false)
    expect(made.takeoff.goods.some(({ sku }) => sku.startsWith('stringer') || sku === 'handrail')).toBe(false)
  })
})

describe('in the price', () => {
  it('a sum set down for stairs that are counted is not added: nothing is paid twice', () => {
    const made = designOf({
      stairs: { kind: 'straight' },
      scope: { stairs: { included: true, allowance: '$900' } },
    })
    const priced = priceJob(made, [], SAMPLE_BOOK)
    if (!priced.ok) throw new Error(JSON.stringify(priced.error))
    const { lines } = priced.value
    expect(lines.some(({ id }) => id === 'other-stairs')).toBe(false)
    const told = leftOut(made.job, made.checks, lines).find(({ topic }) => topic === 'stairs')
    expect(told).toMatchObject({
      state: 'priced',
      message: expect.stringContaining('$900.00 stated for it is not added'),
    })
  })

  it('the stairs’ share of concrete and gravel is told, by volume, though the lines stand with the deck’s', () => {
    const made = designOf({
      stairs: { kind: 'straight', width: '4 ft', foot: 'pad', padDepth: '48 in', padThickness: '4 in' },
      ground: { tube: '12 in', base: '0 in', concreteWaste: 0, concrete: 'bags' },
    })
    const priced = priceJob(made, [], SAMPLE_BOOK)
    if (!priced.ok) throw new Error(JSON.stringify(priced.error))
    const { lines } = priced.value
    const amountOf = (id: string) => lines.find((line) => line.id === id)?.amount ?? Number.NaN
    // by hand: the pad's own measures, 4 in thick on 4 in of gravel; tubes of 12 in are π/4 sq ft across
    const [width, depth] = [made.stairs[0]?.pad?.width ?? 0, made.stairs[0]?.pad?.depth ?? 0].map(
      (l) => l / 384,
    )
    const pad = ((width ?? 0) * (depth ?? 0)) / 3
    const tubes = made.frame.footings.reduce(
      (sum, { tubeLength }) => sum + (Math.PI / 4) * (tubeLength / 384),
      0,
    )
    expect(pad).toBeGreaterThan(4)
    // all gravel of this job lies under the pad
    const share = amountOf('good-gravel') + (amountOf('good-concrete-bag-80lb') * pad) / (pad + tubes)
    const told = leftOut(made.job, made.checks, lines, stairsShare(made, lines))
    const dollars = `$${(share / 100).toFixed(2)}`
    expect(told.find(({ topic }) => topic === 'stairs')?.message).toContain(
      `Their share of concrete and gravel, ${dollars} by volume, stands with the deck’s.`,
    )
  })
})
