import fc from 'fast-check'
import { expect, it } from 'vitest'
import { design } from '../../core/design.ts'
import type { Design } from '../../core/estimate-types.ts'
import { setField } from '../../core/job/index.ts'
import { drawnDeck } from './arbitrary-deck.ts'

const moves = fc.record({ post: fc.integer({ min: 1, max: 4 }), by: fc.integer({ min: -8, max: 8 }) })

function idsOfChanged(before: Design, after: Design) {
  const changed = <Thing extends { readonly id: string }>(was: readonly Thing[], is: readonly Thing[]) => {
    const old = new Map(was.map((one) => [one.id, JSON.stringify(one)]))
    return is.filter((one) => old.get(one.id) !== JSON.stringify(one)).map(({ id }) => id)
  }
  return {
    members: changed(before.frame.members, after.frame.members),
    runs: changed(before.frame.runs, after.frame.runs),
    posts: changed(before.frame.posts, after.frame.posts),
    checks: changed(before.checks, after.checks),
  }
}

it('changes nothing but the post, its beam, and what they load, where a post is moved', () => {
  let moved = 0
  fc.assert(
    fc.property(drawnDeck, moves, (statement, { post, by }) => {
      const before = design(statement)
      const after = design(setField(statement, 'ground.moved', `${post}: ${by} in`))
      if (!before.ok || !after.ok || by === 0) return
      moved += 1
      const found = before.value.frame.posts.find(({ number }) => number === post)
      if (found === undefined) throw new Error('a post that is not there was moved')
      const { beam } = found
      const { members, runs, posts, checks } = idsOfChanged(before.value, after.value)
      expect(posts).toEqual([found.id])
      expect(members).toEqual([found.id])
      expect(runs.every((id) => id === `run-beam-${beam}` || id === `beam-${beam}`)).toBe(true)
      for (const id of checks) {
        const own = id.endsWith(`-${beam}`) || id.includes(`footing-${beam}-`)
        expect(own, id).toBe(true)
      }
    }),
  )
  expect(moved).toBeGreaterThan(10)
})
