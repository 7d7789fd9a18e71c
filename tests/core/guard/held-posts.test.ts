import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { apart, corners } from '../../fixtures/shapes-apart.ts'

// IRC 2021 R507.10: the load of a guard post reaches more than one joist. One block beside a post that stands beside a
// joist, blocks in two bays elsewhere; found here from the places of posts and wood, not from the plan's own list.

/** Where two slanting edges leave no room for a block between a corner's two posts, or a border's cut joists none. */
const TOLD: { readonly [file: string]: readonly string[] } = {
  'clipped-any-angle.json': ['GP4'],
  'picture-frame-two.json': ['GP3'],
}

describe.each(CATALOGUE)('the posts of the guard round $file', ({ file, job }) => {
  const made = design({ ...job, guard: { ...(job as { guard?: object }).guard, where: 'all open edges' } })
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  const { frame, stairs, guard, checks } = made.value
  const members = guard?.members ?? []
  const posts = members.filter(({ role, id }) => role === 'guard post' && !id.startsWith('stair'))
  const blocks = [...frame.members, ...members].filter(
    ({ role, id }) => (role === 'blocking' || role === 'guard blocking') && !id.startsWith('stair'),
  )
  const held = new Map(guard?.backing.map(({ post, blocks: own }) => [post, own]))
  const told = TOLD[file] ?? []

  it('are each touched by a block, and by those alone that are said to hold them', () => {
    for (const post of posts) {
      if (told.includes(post.mark)) continue
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
    expect(bare.map(({ mark }) => mark)).toEqual(told)
    const caution = checks.find(({ id }) => id === 'guard-posts')?.remedy ?? ''
    expect(caution.includes('No room for all blocks')).toBe(told.length > 0)
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
