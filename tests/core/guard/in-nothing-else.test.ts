import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import type { Member } from '../../../core/frame/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'

// No two members of a deck overlap in space: every post, rail and block of a guard against all lumber of the frame, of
// landings and of the guard itself. Decking and fascia are notched round posts; treads and stringers climb, and are no
// boxes; joists and blocks under a border are cut at posts, which the sheets say.

type Place = readonly [number, number]

const decks = CATALOGUE.filter(({ job }) => {
  const { decking = {} } = job as { decking?: { border?: number; angle?: number; breakers?: string } }
  return (decking.border ?? 0) === 0 && decking.breakers === undefined
})

const NO_BOX: ReadonlySet<Member['role']> = new Set([
  'decking',
  'fascia',
  'tread',
  'riser',
  'stringer',
  'stair header',
  'landing decking',
  'step tread',
  'step frame',
])

function corners({ plan, box }: Member): readonly Place[] {
  return plan === undefined
    ? [
        [box.x0, box.y0],
        [box.x1, box.y0],
        [box.x1, box.y1],
        [box.x0, box.y1],
      ]
    : plan.map(({ x, y }): Place => [x, y])
}

/** How deep two convex shapes lie in each other: the least over all sides' directions. */
function depth(a: readonly Place[], b: readonly Place[]): number {
  const sides = [a, b].flatMap((shape) =>
    shape.map(([x, y], i): Place => {
      const [nx, ny] = shape[(i + 1) % shape.length] as Place
      const long = Math.hypot(nx - x, ny - y)
      return [(ny - y) / long, (x - nx) / long]
    }),
  )
  return Math.min(
    ...sides.map(([dx, dy]) => {
      const along = (shape: readonly Place[]) => shape.map(([x, y]) => x * dx + y * dy)
      const [p, q] = [along(a), along(b)]
      return Math.min(Math.max(...p) - Math.min(...q), Math.max(...q) - Math.min(...p))
    }),
  )
}

describe.each(decks)('the guard round $file', ({ job }) => {
  it('stands in nothing else', () => {
    const made = design({ ...job, guard: { ...(job as { guard?: object }).guard, where: 'all open edges' } })
    if (!made.ok) throw new Error(JSON.stringify(made.error))
    const { frame, stairs, guard } = made.value
    const own = (guard?.members ?? []).filter(
      ({ slope, role }) => slope === undefined && role !== 'guard cap',
    )
    const rest = [...frame.members, ...stairs.flatMap(({ members }) => members)].filter(
      ({ role }) => !NO_BOX.has(role),
    )
    const clashes = own.flatMap((one, i) =>
      [...rest, ...own.slice(i + 1)]
        .filter(({ box }) => box.z0 < one.box.z1 - 1 && one.box.z0 < box.z1 - 1)
        .filter((other) => depth(corners(one), corners(other)) > 2)
        .map(({ id }) => `${one.id} in ${id}`),
    )
    expect(own.length).toBeGreaterThan(10)
    expect(clashes).toEqual([])
  })
})
