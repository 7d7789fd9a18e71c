import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { apart, corners } from '../../fixtures/shapes-apart.ts'

// IRC 2021 R507.10: the load of a guard post reaches more than one joist. One block beside a post that stands beside a
// joist, blocks in two bays elsewhere; found here from the places of posts and wood, not from the plan's own list.

describe.each(CATALOGUE)('the posts of the guard round $file', ({ job }) => {
  const made = design({ ...job, guard: { ...(job as { guard?: object }).guard, where: 'all open edges' } })
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  const { frame, stairs, guard, checks } = made.value
  const members = guard?.members ?? []
  const posts = members.filter(({ role, id }) => role === 'guard post' && !id.startsWith('stair'))
  const blocks = [...frame.members, ...members].filter(
    ({ role, id }) => (role === 'blocking' || role === 'guard blocking') && !id.startsWith('stair'),
  )
  const held = new Map(guard?.backing.map(({ post, blocks: own }) => [post, own]))

  it('are each touched by a block, and by those alone that are said to hold them', () => {
    for (const post of posts) {
      const touching = blocks.filter(
        (block) => block.box.z1 > post.box.z0 && apart(corners(block), corners(post)) < 5,
      )
      const own = held.get(post.id) ?? []
      expect(
        touching.some(({ id }) => own.includes(id)),
        post.mark,
      ).toBe(true)
    }
  })

  it('reach a second joist: where none runs into the edge beside them, by a block in the next bay', () => {
    const bare = posts.filter(({ id }) => {
      const stands = guard?.stretches.flatMap((stretch) => stretch.posts).find((one) => one.id === id)
      const own = held.get(id) ?? []
      return own.length < (stands?.onJoist === true ? 1 : 2)
    })
    expect(bare.map(({ mark }) => mark)).toEqual([])
    const check = checks.find(({ id }) => id === 'guard-posts')
    // on a 2x8 the bolts are 7-1/4 − 4 = 3-1/4 in apart: 200 × (39 + 3-1/4) ÷ 3-1/4 = 2,600 lb of a hold-down's 1,800
    if (made.value.job.frame.joists.size === '2x8') {
      expect(check?.status).toBe('fails')
      expect(check?.message).toContain('2600 lb')
    } else expect(['passes', 'near']).toContain(check?.status)
  })

  it('stand in no block of the frame but those that are cut there for a border', () => {
    const landing = stairs.flatMap(({ members: own }) => own)
    const clashes = posts.flatMap((post) =>
      [...frame.members, ...landing]
        .filter(({ role, cause }) => role === 'blocking' && cause.fields[0] !== 'decking.border')
        .filter(({ box }) => box.z1 > post.box.z0 && box.z0 < post.box.z1)
        .filter((block) => apart(corners(block), corners(post)) < -2)
        .map(({ id }) => `${post.mark} in ${id}`),
    )
    expect(clashes).toEqual([])
  })

  it('leave out a block under a border in whose place one behind a post stands', () => {
    const own = members.filter(({ role }) => role === 'guard blocking')
    const under = frame.members.filter(({ role }) => role === 'blocking')
    const clashes = own.flatMap((one) =>
      under
        .filter((other) => !one.cause.ids.includes(other.id) && apart(corners(one), corners(other)) < -2)
        .filter(({ box }) => box.z1 > one.box.z0 && box.z0 < one.box.z1)
        .map(({ id }) => `${one.mark} in ${id}`),
    )
    expect(clashes).toEqual([])
  })
})

const CUTS = [14, 20, 26, 33, 40, 55, 70]

/** 18 ft by 14 ft, a corner cut off so many inches along the side and the front. */
function clipped(side: number, front: number, more: object) {
  const made = design({
    size: { height: '44 in' },
    shape: { outline: `0, 0; 216, 0; 216, ${168 - side}; ${216 - front}, 168; 0, 168` },
    guard: { where: 'all open edges' },
    ...more,
  })
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value
}

describe('where two edges meet at any angle', () => {
  // a steeper cut leaves the side’s end joist on one support
  it.each(
    CUTS.flatMap((side) => CUTS.filter((front) => front >= side).map((front) => [side, front] as const)),
  )('posts give way to each other’s blocks: a corner cut off by %i in and %i in', (side, front) => {
    const { guard, checks } = clipped(side, front, { frame: { joists: { spacing: '16 in' } } })
    const few = guard?.stretches.flatMap(({ posts }) =>
      posts.filter(({ id, onJoist }) => {
        const own = guard.backing.find(({ post }) => post === id)?.blocks ?? []
        return own.length < (onJoist ? 1 : 2)
      }),
    )
    expect(few).toEqual([])
    expect(checks.find(({ id }) => id === 'guard-posts')?.status).toBe('passes')
    // as far apart as before: 6 ft
    for (const { posts } of guard?.stretches ?? [])
      for (const [i, { at }] of posts.slice(1).entries())
        expect(at - (posts[i]?.at ?? 0)).toBeLessThanOrEqual(72 * 32)
  })

  it('a post behind which no place is left for its blocks is named, and nothing covers it', () => {
    // joists 24 in apart: the cut edge's post stands before the one beside the corner, its block runs across the bay behind
    const { guard, checks } = clipped(12, 18, { frame: { joists: { spacing: '24 in' } } })
    const check = checks.find(({ id }) => id === 'guard-posts')
    expect(check?.status).toBe('outside scope')
    expect(check?.message).toBe('No room for all blocks tight behind GP4.')
    expect(check?.remedy).toContain('licensed designer')
    // no size mends it, and none is kept from being chosen by it
    expect(check?.fields).toEqual(['guard.postSize', 'guard.postSpacing'])
    expect(guard?.backing.find(({ post }) => post === 'guard-post-4')?.blocks.length).toBeLessThan(2)
  })
})
