import { describe, expect, it } from 'vitest'
import { designed } from '../../fixtures/designed.ts'
import { apart, corners } from '../../fixtures/shapes-apart.ts'

// Joists at 16 in from the left: beside the right end joist a bay of inches is left. A post 3-1/2 in thick stands in it
// against the end joist, and of what is then left behind it the leg of its hold-down asks for 3 in. By hand, in inches.

function built(width: number) {
  const made = designed({
    size: { width: `${width} in`, depth: '10 ft', height: '48 in' },
    frame: { joists: { size: '2x10', spacing: '16 in' } },
    guard: { where: 'all open edges' },
  })
  const { checks, guard, frame } = made
  return {
    frame,
    posts: guard?.members.filter(({ role }) => role === 'guard post') ?? [],
    held: checks.find(({ id }) => id === 'guard-hold-downs'),
    check: checks.find(({ id }) => id === 'guard-posts'),
  }
}

describe('posts in a last bay too narrow for the leg of a hold-down', () => {
  it('are told with what is left behind them and how much farther out their edge would have to be', () => {
    // the last joist ends at 112-3/4, the end joist begins at 118-1/2: 5-3/4 less 3-1/2
    const { held } = built(120)
    expect(held?.message).toContain('leaves 2 1/4 in behind GP1, GP2, GP3, where a leg needs 3 in')
    expect(held?.remedy).toContain('move the right edge at GP1, GP2, GP3 out by 3/4 in')
    expect(held?.status).toBe('outside scope')
  })

  it('find their wood once the edge is so much farther out', () => {
    expect(built(120.75).held).toBeUndefined()
    expect(built(120.5).held).toBeDefined()
  })
})

describe('posts in a last bay narrower than themselves', () => {
  it('are named as standing in the joist, and nothing covers them', () => {
    // the last joist ends at 96-3/4, a post against the end joist begins at 96-1/2
    const { check, held } = built(101.5)
    expect(check?.status).toBe('outside scope')
    expect(check?.message).toContain('GP1, GP2, GP3 would stand in a joist')
    expect(held?.remedy).toContain('out by 3 1/4 in')
    expect(built(104.75).held).toBeUndefined()
  })

  it.each(Array.from({ length: 65 }, (_, i) => 112.5 + i / 4))(
    'stand in no wood %d in from the left unless they are named',
    (width) => {
      const { frame, posts, check } = built(width)
      const lumber = frame.members.filter(({ role }) =>
        ['joist', 'end joist', 'rim', 'ledger', 'blocking'].includes(role),
      )
      const inside = posts.filter((post) => lumber.some((one) => apart(corners(one), corners(post)) < -2))
      for (const { mark } of inside)
        expect(check?.message, mark).toMatch(new RegExp(`${mark}\\b.* would stand in a joist`))
      if (inside.length === 0) expect(check?.message).not.toContain('would stand in')
    },
  )
})
