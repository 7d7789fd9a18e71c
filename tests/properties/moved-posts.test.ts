import fc from 'fast-check'
import { expect, it } from 'vitest'
import { design } from '../../core/design.ts'
import type { Design } from '../../core/estimate-types.ts'
import { setField } from '../../core/job/index.ts'
import { cutJobs, SAMPLE_BOOK } from '../../core/pricing/index.ts'
import { drawnDeck } from './arbitrary-deck.ts'

const moves = fc.record({ post: fc.integer({ min: 1, max: 4 }), by: fc.integer({ min: -8, max: 8 }) })

function changed<Thing extends { readonly id: string }>(
  was: readonly Thing[],
  is: readonly Thing[],
): string[] {
  const old = new Map(was.map((one) => [one.id, JSON.stringify(one)]))
  const gone = was.filter(({ id }) => !is.some((one) => one.id === id)).map(({ id }) => id)
  return [...gone, ...is.filter((one) => old.get(one.id) !== JSON.stringify(one)).map(({ id }) => id)]
}

function idsOfChanged(before: Design, after: Design) {
  const cutJobsOf = ({ job, frame, takeoff }: Design) => cutJobs({ job, frame, takeoff }, SAMPLE_BOOK).classes
  return {
    members: changed(before.frame.members, after.frame.members),
    runs: changed(before.frame.runs, after.frame.runs),
    posts: changed(before.frame.posts, after.frame.posts),
    footings: changed(before.frame.footings, after.frame.footings),
    joistGroups: changed(before.frame.joistGroups, after.frame.joistGroups),
    pieces: changed(before.takeoff.pieces, after.takeoff.pieces),
    cutting: changed(
      cutJobsOf(before).map(({ cutJob }) => cutJob),
      cutJobsOf(after).map(({ cutJob }) => cutJob),
    ),
    checks: changed(before.checks, after.checks),
  }
}

it('changes nothing but the post, its beam, its spans’ cuts, and what they load, where a post is moved', () => {
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
      const is = idsOfChanged(before.value, after.value)
      expect(is.posts).toEqual([found.id])
      expect(is.members).toEqual([found.id])
      expect(is.footings).toEqual([`footing-${beam}-${found.id.split('-').at(-1)}`])
      expect(is.joistGroups).toEqual([])
      expect(after.value.frame.connectors).toEqual(before.value.frame.connectors)
      expect(is.runs.every((id) => id === `run-beam-${beam}` || id === `beam-${beam}`)).toBe(true)
      // what is cut: the post itself on uneven ground, and where its beam's plies may be jointed
      expect(is.pieces.filter((id) => !id.includes(found.id))).toEqual([])
      const mayChange = [before.value.job.frame.beams[beam].size, before.value.job.frame.postSize]
      for (const id of is.cutting)
        expect(
          mayChange.some((size) => id.includes(size)),
          id,
        ).toBe(true)
      for (const id of is.checks) {
        const own = id.endsWith(`-${beam}`) || id.includes(`footing-${beam}-`)
        expect(own, id).toBe(true)
      }
    }),
  )
  expect(moved).toBeGreaterThan(10)
})
