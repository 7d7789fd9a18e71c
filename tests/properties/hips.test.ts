import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { design } from '../../core/design.ts'
import type { Member } from '../../core/frame/index.ts'

type Place = readonly [number, number]

/** A deck round a corner of the house, or free: wings of one depth, each as long as it is. Inches. */
const decks = fc.record({
  wing: fc.integer({ min: 60, max: 150 }),
  along: fc.integer({ min: 60, max: 240 }),
  down: fc.integer({ min: 60, max: 240 }),
  setback: fc.integer({ min: 6, max: 24 }),
  spacing: fc.constantFrom(12, 16, 24),
  rimPlies: fc.constantFrom(1, 2),
  right: fc.boolean(),
  free: fc.boolean(),
})
type Deck = typeof decks extends fc.Arbitrary<infer D> ? D : never

function stated({ wing, along, down, setback, spacing, rimPlies, right, free }: Deck) {
  const [w, d] = [wing + along, wing + down]
  const outline: readonly Place[] = right
    ? [
        [0, down],
        [along, down],
        [along, 0],
        [w, 0],
        [w, d],
        [0, d],
      ]
    : [
        [0, 0],
        [wing, 0],
        [wing, down],
        [w, down],
        [w, d],
        [0, d],
      ]
  return {
    version: 1,
    size: { height: 72 },
    site: { attachment: free ? 'freestanding' : 'ledger' },
    ground: { base: '16 in' },
    shape: {
      outline: outline.map((corner) => corner.join(', ')).join('; '),
      walls: free ? '' : right ? '1, 2' : '2, 3',
      zones: `${right ? along : 0}, 0, ${wing}, ${down}: along`,
      seams: 'hip',
    },
    frame: {
      joists: { spacing },
      rimPlies,
      beams: { front: { size: '2x10', setback, posts: 5 }, rear: { size: '2x10', setback, posts: 5 } },
    },
  }
}

function corners({ plan, box }: Member): readonly Place[] {
  const places = plan ?? [
    { x: box.x0, y: box.y0 },
    { x: box.x1, y: box.y0 },
    { x: box.x1, y: box.y1 },
    { x: box.x0, y: box.y1 },
  ]
  return places.map(({ x, y }) => [x, y])
}

/** How far two convex pieces lie in each other, by the axis that parts them best. */
function overlap(a: readonly Place[], b: readonly Place[]): number {
  const reach = [a, b].flatMap((shape) =>
    shape.map(([ax, ay], i) => {
      const [bx, by] = shape[(i + 1) % shape.length] as Place
      const long = Math.hypot(bx - ax, by - ay)
      if (long === 0) return Number.POSITIVE_INFINITY
      const on = (other: readonly Place[]) => other.map(([x, y]) => (x * -(by - ay) + y * (bx - ax)) / long)
      const [one, two] = [on(a), on(b)]
      return Math.min(Math.max(...one), Math.max(...two)) - Math.max(Math.min(...one), Math.min(...two))
    }),
  )
  return Math.min(...reach)
}

describe('a deck with a hip at its corner', () => {
  it('is framed with no piece in another, each joist on two supports, its decking as large as it', () => {
    let built = 0
    fc.assert(
      fc.property(decks, (deck) => {
        const made = design(stated(deck))
        if (!made.ok) {
          for (const { path, message, fix } of made.error)
            expect(path !== '' && message !== '' && fix !== '').toBe(true)
          return
        }
        built += 1
        const { frame, layout } = made.value
        expect(frame.hips).toHaveLength(1)
        for (const { id, role, bearings } of frame.members)
          if (role === 'joist') expect(bearings.length, id).toBeGreaterThan(1)
        const solid = frame.members.filter(({ role }) => role !== 'decking' && role !== 'post')
        const near = (a: Member, b: Member) =>
          a.box.x0 < b.box.x1 &&
          b.box.x0 < a.box.x1 &&
          a.box.y0 < b.box.y1 &&
          b.box.y0 < a.box.y1 &&
          a.box.z0 < b.box.z1 - 1 &&
          b.box.z0 < a.box.z1 - 1
        solid.forEach((one, i) => {
          for (const other of solid.slice(i + 1))
            if (near(one, other))
              expect(overlap(corners(one), corners(other)), `${one.id} in ${other.id}`).toBeLessThan(2)
        })
        // boards and the gaps beside them: within an inch along all edges, and half a gap along the hip
        const boards = frame.members.filter(({ role }) => role === 'decking')
        const laid = boards.reduce((sum, board) => {
          const shape = corners(board)
          const twice = shape.reduce((all, [x, y], i) => {
            const [nx, ny] = shape[(i + 1) % shape.length] as Place
            return all + x * ny - nx * y
          }, 0)
          return sum + Math.abs(twice) / 2 / 1024 + board.length / 32 / 8
        }, 0)
        const around = 4 * (deck.wing + Math.max(deck.along, deck.down)) * 2
        expect(Math.abs(laid - layout.areaSquareFeet * 144)).toBeLessThan(around)
      }),
      { numRuns: 12 },
    )
    expect(built).toBeGreaterThan(4)
  })
})
