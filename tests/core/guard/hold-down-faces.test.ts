import { describe, expect, it } from 'vitest'
import { sectionOf } from '../../../core/data/index.ts'
import { design } from '../../../core/design.ts'
import type { Member } from '../../../core/frame/index.ts'
import { heldOf } from '../../../core/papers/order/held-lines.ts'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { inches } from '../../../core/units/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { paperSource } from '../../fixtures/paper-source.ts'
import { corners, type Place } from '../../fixtures/shapes-apart.ts'
import { inside } from '../catalogue/inside.ts'

// AWC DCA 6 fixes a guard post's hold-down to the side of a joist or of a block that lies along its bolts. Found here from
// the places of posts and wood: a side counts where a line of 3 in along the bolts, 1/2 in beside the post and behind
// what stands tight against it, lies in one piece of wood.

const ROLES = new Set([
  'joist',
  'end joist',
  'rim',
  'ledger',
  'header',
  'hip',
  'beam ply',
  'blocking',
  'guard blocking',
  'landing beam',
  'landing joist',
])

function madeOf(job: object) {
  const made = design({ ...job, guard: { ...(job as { guard?: object }).guard, where: 'all open edges' } })
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value
}

describe.each(CATALOGUE)('the hold-downs of posts round $file', ({ job }) => {
  const made = madeOf(job)
  const { frame, stairs, guard, checks } = made
  const members = guard?.members ?? []
  const wood = [...frame.members, ...stairs.flatMap((one) => one.members), ...members].filter(
    ({ role, cause }) =>
      ROLES.has(role) && (role === 'guard blocking' || cause.fields[0] !== 'decking.border'),
  )
  const marks = (guard?.stretches ?? []).flatMap(({ edge, behind, posts }) =>
    posts.flatMap(({ id, at }) => {
      const post = members.find((one) => one.id === id)
      if (post === undefined) throw new Error(id)
      const level = wood.filter(({ box }) => box.z1 <= edge.top && box.z1 > edge.top - inches(2))
      const thick = sectionOf(made.job.guard.postSize).thickness
      const spot = (along: number, back: number): Place => [
        edge.near.x + along * edge.along.x - back * edge.out.x,
        edge.near.y + along * edge.along.y - back * edge.out.y,
      ]
      const inner = behind + thick
      const isIn = (along: number, back: number) => (one: Member) => inside(corners(one), spot(along, back))
      const tight = level.some(isIn(at, inner + 8))
      const from = inner + (tight ? inches(1.5) : 0) + 8
      const isFace = (side: number) =>
        level.some((one) =>
          [0, 0.5, 1, 1.5, 2, 2.5].every((back) =>
            isIn(at + side * (thick / 2 + inches(0.5)), from + inches(back))(one),
          ),
        )
      return isFace(1) || isFace(-1) ? [] : [post.mark]
    }),
  )

  it('find a joist or a block each, or are named, left to a designer and not bought', () => {
    const check = checks.find(({ id }) => id === 'guard-hold-downs')
    for (const mark of marks) expect(check?.message, mark).toMatch(new RegExp(`\\b${mark}\\b`))
    if (check !== undefined) expect(check.status).toBe('outside scope')
  })
})

it('at a square corner the post of the edge that joists run into stands beside one', () => {
  const made = madeOf(CATALOGUE.find(({ file }) => file === 'rectangle-24-by-14.json')?.job ?? {})
  const front = made.guard?.stretches.find(({ edge }) => edge.side === 'front')
  // joists at 16 in from the outer face of the end joist: the next one's centre at 16 in; half a post and half a joist
  // less is 13-1/2 in. The other post stands in the corner: two plies of rim, 3 in, and half a post.
  expect(front?.posts[0]).toMatchObject({ at: inches(13.5), onJoist: true })
  const left = made.guard?.stretches.find(({ edge }) => edge.side === 'left')
  const ends = [left?.posts[0]?.at, (left?.edge.length ?? 0) - (left?.posts.at(-1)?.at ?? 0)]
  expect(ends).toContain(inches(4.75))
  // rails between the two end at its face, 1-1/2 in of end joist and 3-1/2 in from the corner
  expect(front?.bays[0]?.from).toBe(inches(5))
})

it('where a hip takes the corner, the order holds what two posts there need', () => {
  const job = CATALOGUE.find(({ file }) => file === 'wrap-hip.json')?.job ?? {}
  const source = paperSource(job, SAMPLE_BOOK, { quick: true })
  const check = source.estimate.checks.find(({ id }) => id === 'guard-hold-downs')
  expect(check?.message).toContain('GP7, GP17')
  const held = heldOf(source.estimate)
  expect(held.lines.get('good-guard-hold-down')?.thousandths).toBe(2000)
  expect(held.holds.some(({ what }) => what.includes('GP7') && what.includes('GP17'))).toBe(true)
})

describe.each(CATALOGUE)('the rails round $file', ({ job }) => {
  it('end at posts, or the check of the guard names the post past which they reach', () => {
    const { guard, checks } = madeOf(job)
    const posts = guard?.members.filter(({ role }) => role === 'guard post') ?? []
    const loose = (guard?.stretches ?? []).flatMap(({ edge, behind, bays, posts: own }) =>
      bays.flatMap(({ from, to }) => {
        const ends = [from - inches(0.5), to + inches(0.5)].map((along): Place => {
          const back = behind + inches(1.75)
          return [
            edge.near.x + along * edge.along.x - back * edge.out.x,
            edge.near.y + along * edge.along.y - back * edge.out.y,
          ]
        })
        if (ends.every((end) => posts.some((post) => inside(corners(post), end)))) return []
        const last = to < (own[0]?.at ?? 0) ? own[0] : own.at(-1)
        return posts.filter(({ id }) => id === last?.id).map(({ mark }) => mark)
      }),
    )
    const told = checks.find(({ id }) => id === 'guard-rail-ends')
    for (const mark of loose) expect(told?.message, mark).toMatch(new RegExp(`reach past .*\\b${mark}\\b`))
    expect(told?.status).toBe(loose.length === 0 ? undefined : 'outside scope')
  })
})

it('rails that end short of a post that stands turned are not bought before somebody has drawn what holds them', () => {
  const job = CATALOGUE.find(({ file }) => file === 'clipped-corner.json')?.job ?? {}
  const source = paperSource(
    { ...job, guard: { ...(job as { guard?: object }).guard, where: 'all open edges' } },
    SAMPLE_BOOK,
    { quick: true },
  )
  const check = source.estimate.checks.find(({ id }) => id === 'guard-rail-ends')
  expect(check?.message).toMatch(/^Rails GR\d+-\d+a, GR\d+-\d+b reach past GP5, /)
  const held = heldOf(source.estimate)
  const hold = held.holds.find(({ what }) => what.startsWith('Ends of the guard’s rails: '))
  expect(hold).toBeDefined()
  const boards = source.estimate.pricing.lines.filter(
    ({ id, label }) => label.startsWith('2x4') && held.lines.get(id)?.by.includes(hold?.name ?? '') === true,
  )
  expect(boards.length).toBeGreaterThan(0)
})
