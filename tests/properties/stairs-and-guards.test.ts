import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { design } from '../../core/design.ts'

const SIDES = ['front', 'left', 'right', 'rear'] as const
const KINDS = ['straight', 'full width', 'landing', 'landing left', 'landing right'] as const

const jobs = fc.record({
  size: fc.record({
    width: fc.integer({ min: 60, max: 400 }),
    depth: fc.integer({ min: 60, max: 240 }),
    height: fc.integer({ min: 20, max: 160 }),
  }),
  site: fc.record({
    attachment: fc.constantFrom('ledger', 'freestanding'),
    ground: fc.record({
      along: fc.record({ fall: fc.integer({ min: -6, max: 12 }), over: fc.constant('10 ft') }),
      away: fc.record({ fall: fc.integer({ min: -6, max: 24 }), over: fc.constant('10 ft') }),
    }),
  }),
  stairs: fc.record({
    second: fc.record({
      kind: fc.constantFrom('none', ...KINDS),
      side: fc.constantFrom(...SIDES),
      align: fc.constantFrom('middle', 'near', 'far'),
    }),
    kind: fc.constantFrom(...KINDS),
    side: fc.constantFrom(...SIDES),
    align: fc.constantFrom('middle', 'near', 'far'),
    width: fc.integer({ min: 30, max: 120 }),
    run: fc.integer({ min: 9, max: 14 }),
    stringers: fc.constantFrom('cut', 'closed'),
    treads: fc.constantFrom('as the decking', '5/4x6', '2x6'),
    risers: fc.constantFrom('a board', 'open'),
    foot: fc.constantFrom('pad', 'footings', 'existing'),
    landingDepth: fc.integer({ min: 30, max: 60 }),
  }),
  guard: fc.record({
    where: fc.constantFrom('where needed', 'all open edges'),
    infill: fc.constantFrom('balusters', 'panels'),
    cap: fc.constantFrom('2x6', '5/4x6', 'none'),
    postSize: fc.constantFrom('4x4', '6x6'),
    postSpacing: fc.integer({ min: 36, max: 96 }),
    height: fc.integer({ min: 36, max: 48 }),
  }),
})

describe('stairs and guards of any deck', () => {
  it('are built by the rules or told to be at fault, at a field', () => {
    let built = 0
    fc.assert(
      fc.property(jobs, (statement) => {
        const made = design({ version: 1, frame: { beams: { front: { posts: 2 } } }, ...statement })
        if (!made.ok) {
          expect(
            made.error.every(({ path, message, fix }) => path !== '' && message !== '' && fix !== ''),
          ).toBe(true)
          return
        }
        built += 1
        const { guard, checks, takeoff } = made.value
        const [stairs] = made.value.stairs
        if (stairs === undefined || guard === null) throw new Error('both were asked for')
        // the risers add up to the rise, and none is higher than 7-3/4 in
        expect(stairs.rise * stairs.risers).toBeCloseTo(stairs.totalRise, 6)
        expect(stairs.rise).toBeLessThanOrEqual(7.75 * 32)
        const heights = stairs.flights.map(({ topLevel, bottomLevel }) => topLevel - bottomLevel)
        expect(heights.reduce((sum, height) => sum + height, 0)).toBeCloseTo(stairs.totalRise, 6)
        const members = [...made.value.stairs.flatMap((one) => one.members), ...guard.members]
        expect(new Set(members.map(({ id }) => id)).size).toBe(members.length)
        for (const { length, id } of members) expect(length, id).toBeGreaterThan(0)
        // every baluster opening stops the ball
        for (const { bays } of guard.stretches)
          for (const { opening } of bays) expect(opening).toBeLessThan(4 * 32)
        // every edge from which the ground lies more than 30 in below is guarded, but where stairs take all of it
        const guarded = new Set(guard.stretches.map(({ edge }) => edge.id))
        for (const { edge, needed } of guard.edges) {
          const here = made.value.stairs.filter((one) => one.edge.id === edge.id)
          const left = edge.length - here.reduce((sum, { width }) => sum + width, 0)
          if (needed && (here.length === 0 || left >= (here.length + 1) * 8 * 32))
            expect(guarded.has(edge.id), edge.id).toBe(true)
        }
        for (const { governing } of checks) expect(Number.isNaN(governing?.ratio ?? 0)).toBe(false)
        for (const { thousandths } of [...takeoff.goods, ...takeoff.tasks]) {
          expect(Number.isInteger(thousandths)).toBe(true)
          expect(thousandths).toBeGreaterThan(0)
        }
        const ids = takeoff.pieces.map(({ id }) => id)
        expect(new Set(ids).size).toBe(ids.length)
      }),
      { numRuns: 80 },
    )
    expect(built).toBeGreaterThan(15)
  })
})
