import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import type { Member } from '../../../core/frame/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { apart, corners, type Place } from '../../fixtures/shapes-apart.ts'

// No two members of a deck overlap in space: every post, rail and block of a guard against all lumber of the frame, of
// landings and of the guard itself. Decking and fascia are notched round posts; treads and stringers climb, and are no
// boxes; joists and blocks under a border are cut at posts, which the sheets say.

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

/** How deep two convex shapes lie in each other. */
const depth = (a: readonly Place[], b: readonly Place[]): number => -apart(a, b)

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
