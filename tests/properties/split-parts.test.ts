import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { design } from '../../core/design.ts'
import type { Design } from '../../core/estimate-types.ts'
import type { Member } from '../../core/frame/index.ts'
import type { JobStatement } from '../../core/job/index.ts'

/** A deck of one part, and the same with a part of it named as framed the same way: nothing is framed differently. */
const decks = fc.record({
  width: fc.integer({ min: 144, max: 384 }),
  depth: fc.integer({ min: 120, max: 216 }),
  /** where it is split, a share of its width or depth */
  at: fc.integer({ min: 35, max: 65 }),
  spacing: fc.constantFrom(12, 16, 24),
  layoutFrom: fc.constantFrom('left', 'right'),
  attachment: fc.constantFrom('ledger', 'freestanding'),
})
type Deck = typeof decks extends fc.Arbitrary<infer D> ? D : never

function stated(deck: Deck, shape: object): JobStatement {
  const { width, depth, spacing, layoutFrom, attachment } = deck
  return {
    // named by its corners, for a rectangle's posts are counted otherwise than those of parts
    shape: { outline: `0, 0; ${width}, 0; ${width}, ${depth}; 0, ${depth}`, ...shape },
    size: { height: '60 in' },
    site: { attachment },
    frame: {
      joists: { spacing, layoutFrom, longest: 240 },
      beams: { front: { setback: 18, posts: 5 }, rear: { setback: 18, posts: 5 } },
    },
    ground: { base: '16 in' },
  }
}

const asPlaced = ({ role, product, box, length }: Member) =>
  `${role} ${product.size} ${length} ${box.x0} ${box.x1} ${box.y0} ${box.y1} ${box.z0}`

function lengthOf({ frame }: Design, role: Member['role']): number {
  return frame.members.filter((one) => one.role === role).reduce((sum, { length }) => sum + length, 0) / 32
}

describe('a deck split in two parts framed the same way', () => {
  it('changes nothing but at the seam, where they lie side by side', () => {
    let tried = 0
    fc.assert(
      fc.property(decks, (deck) => {
        const seam = Math.round((deck.width * deck.at) / 100)
        const plain = design(stated(deck, {}))
        const zones = `${seam}, 0, ${deck.width - seam}, ${deck.depth}: away`
        const split = design(stated(deck, { zones }))
        if (!plain.ok || !split.ok) return
        tried += 1
        // a joist within a bay of the seam may give way to the end joist there; blocks stand between joists
        const away = ({ box }: Member) => Math.abs((box.x0 + box.x1) / 64 - seam) > deck.spacing + 3
        const kept = ({ frame }: Design) =>
          frame.members.filter((one) => ['joist', 'end joist'].includes(one.role) && away(one)).map(asPlaced)
        expect(kept(split.value).sort()).toEqual(kept(plain.value).sort())
        // what runs along the deck is cut in two there, and as long; the end joist laps the ledgers' ends
        for (const role of ['rim', 'beam ply'] as const)
          expect(lengthOf(split.value, role), role).toBeCloseTo(lengthOf(plain.value, role), 6)
        expect(
          Math.abs(lengthOf(split.value, 'ledger') - lengthOf(plain.value, 'ledger')),
        ).toBeLessThanOrEqual(3)
        expect(lengthOf(split.value, 'decking')).toBeCloseTo(lengthOf(plain.value, 'decking'), 6)
      }),
    )
    expect(tried).toBeGreaterThan(20)
  })

  it('changes nothing but at the seam, where joists of both end there, on a beam or hung from one', () => {
    let tried = 0
    fc.assert(
      fc.property(decks, fc.constantFrom('single', 'flush'), (deck, seams) => {
        const seam = Math.round((deck.depth * deck.at) / 100)
        const plain = design(stated(deck, {}))
        const zones = `0, ${seam}, ${deck.width}, ${deck.depth - seam}: away`
        const split = design(stated(deck, { zones, seams }))
        if (!plain.ok || !split.ok) return
        tried += 1
        const beam = split.value.frame.beams.find(({ y }) => y === seam * 32)
        const ofBeam = ({ bearings, id }: Member) =>
          beam?.plyIds.includes(id) === true ||
          beam?.postIds.includes(id) === true ||
          bearings.includes(beam?.id ?? '')
        // all that does not meet the seam's beam stands where it stood, decking and blocks left out
        const rest = ({ frame }: Design) =>
          frame.members
            .filter(
              (one) => !['decking', 'blocking', 'joist', 'end joist'].includes(one.role) && !ofBeam(one),
            )
            .map(asPlaced)
            .sort()
        expect(rest(split.value)).toEqual(rest(plain.value))
        // each line of joists is cut there: as long as before, less the beam that it hangs from
        const lines = (made: Design) => {
          const sums = new Map<number, number>()
          for (const { role, box, length } of made.frame.members)
            if (role === 'joist' || role === 'end joist')
              sums.set(box.x0, (sums.get(box.x0) ?? 0) + length / 32)
          return sums
        }
        const whole = lines(plain.value)
        const cut = lines(split.value)
        expect([...cut.keys()].sort()).toEqual([...whole.keys()].sort())
        for (const [x, length] of whole) expect(length - (cut.get(x) ?? 0)).toBe(seams === 'flush' ? 3 : 0)
      }),
    )
    expect(tried).toBeGreaterThan(10)
  })
})
