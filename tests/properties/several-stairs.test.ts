import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { design } from '../../core/design.ts'
import type { Design } from '../../core/estimate-types.ts'

const SIDES = ['front', 'left', 'right', 'rear'] as const
type Side = (typeof SIDES)[number]
const KINDS = ['straight', 'landing', 'landing left', 'landing right'] as const

const stairs = fc.record({
  kind: fc.constantFrom(...KINDS),
  side: fc.constantFrom<Side>(...SIDES),
  align: fc.constantFrom('middle', 'near', 'far'),
  width: fc.integer({ min: 32, max: 60 }),
  stringers: fc.constantFrom('cut', 'closed'),
  foot: fc.constantFrom('pad', 'footings', 'existing'),
})
type Stairs = typeof stairs extends fc.Arbitrary<infer S> ? S : never

const decks = fc.record({
  width: fc.integer({ min: 10, max: 24 }).map((feet) => feet * 12),
  depth: fc.integer({ min: 10, max: 20 }).map((feet) => feet * 12),
  height: fc.integer({ min: 30, max: 120 }),
  first: stairs,
  second: stairs,
})
type Deck = typeof decks extends fc.Arbitrary<infer D> ? D : never

/** Guard posts stand beside joists, so that a mirrored deck has its joists laid out from the other end. */
function designOf(
  { width, depth, height, first, second }: Deck,
  joists: 'away' | 'along',
  layoutFrom: 'left' | 'right' = 'left',
): Design | null {
  const made = design({
    version: 1,
    size: { height },
    shape: { outline: `0,0; ${width},0; ${width},${depth}; 0,${depth}`, joists },
    site: { attachment: 'freestanding' },
    frame: {
      joists: { layoutFrom },
      beams: { front: { setback: 18, posts: 3 }, rear: { setback: 18, posts: 3 } },
    },
    stairs: { ...first, second },
    guard: { where: 'all open edges' },
  })
  return made.ok ? made.value : null
}

/** What stairs are made of, in any order. */
function orderOf({ stairs: plans, guard }: Design): readonly string[] {
  const beside = guard?.members.filter(({ id }) => id.startsWith('stair-')) ?? []
  return [
    ...plans.flatMap(({ members, connectors, pad, footings, handrail }) => [
      ...members.map(({ role, product, length, ripTo }) => `${role} ${product.size} ${length} ${ripTo}`),
      ...connectors.map(({ kind, count }) => `${kind} ${count}`),
      pad === null ? 'no pad' : `pad ${pad.width} ${pad.depth} ${pad.thickness}`,
      `${footings.length} footings, ${handrail.sides} × ${handrail.each}`,
    ]),
    ...beside.map(({ role, product, length }) => `${role} ${product.size} ${length}`),
  ].sort()
}

const TURNED = { 'landing left': 'landing right', 'landing right': 'landing left' } as const
const otherHand = (kind: Stairs['kind']) =>
  kind === 'landing left' || kind === 'landing right' ? TURNED[kind] : kind

/** Left for right. */
function mirrored(one: Stairs): Stairs {
  const upright = one.side === 'left' || one.side === 'right'
  const side = { front: 'front', rear: 'rear', left: 'right', right: 'left' } as const
  const align = { middle: 'middle', near: 'far', far: 'near' } as const
  return {
    ...one,
    kind: otherHand(one.kind),
    side: side[one.side],
    // along a side, near is the end at the house in both
    align: upright ? one.align : align[one.align as keyof typeof align],
  }
}

/** Width for depth: what faced the front faces the right. */
function transposed(one: Stairs): Stairs {
  const side = { front: 'right', right: 'front', left: 'rear', rear: 'left' } as const
  return { ...one, kind: otherHand(one.kind), side: side[one.side] }
}

describe('two stairs of any deck', () => {
  it('are made of the same where the deck is mirrored, and where it is turned with its joists', () => {
    let built = 0
    fc.assert(
      fc.property(decks, (deck) => {
        const made = designOf(deck, 'away')
        const other = designOf(
          { ...deck, first: mirrored(deck.first), second: mirrored(deck.second) },
          'away',
          'right',
        )
        const turned = designOf(
          {
            ...deck,
            width: deck.depth,
            depth: deck.width,
            first: transposed(deck.first),
            second: transposed(deck.second),
          },
          'along',
        )
        expect([other === null, turned === null]).toEqual([made === null, made === null])
        if (made === null || other === null || turned === null) return
        built += 1
        expect(orderOf(other)).toEqual(orderOf(made))
        expect(orderOf(turned)).toEqual(orderOf(made))
      }),
      { numRuns: 40 },
    )
    expect(built).toBeGreaterThan(8)
  })

  it('stand nowhere in each other, nor in a post or a board of the deck', () => {
    let built = 0
    fc.assert(
      fc.property(decks, (deck) => {
        const made = designOf(deck, 'away')
        if (made === null) return
        built += 1
        const [first, second] = made.stairs
        // a header stands behind the rim, below the joists
        const standing = (plan: typeof first) =>
          plan?.members.filter(({ role }) => role !== 'stair header') ?? []
        const solid = made.frame.members
        for (const { id, box } of [...standing(first), ...standing(second)]) {
          const others = standing(first).some((one) => one.id === id) ? standing(second) : standing(first)
          for (const other of [...others, ...solid]) {
            const into = Math.min(
              Math.min(box.x1, other.box.x1) - Math.max(box.x0, other.box.x0),
              Math.min(box.y1, other.box.y1) - Math.max(box.y0, other.box.y0),
              Math.min(box.z1, other.box.z1) - Math.max(box.z0, other.box.z0),
            )
            // decking overhangs its frame by an inch, over the stringers' heads
            expect(into, `${id} in ${other.id}`).toBeLessThanOrEqual(other.role === 'decking' ? 32 : 1)
          }
        }
      }),
      { numRuns: 25 },
    )
    expect(built).toBeGreaterThan(5)
  })
})
