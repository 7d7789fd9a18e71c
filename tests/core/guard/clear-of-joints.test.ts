import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import type { Design } from '../../../core/estimate-types.ts'
import type { Member } from '../../../core/frame/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'

// A joint of a rim lies at the middle of a joist's end, and a block 1-1/2 in thick is nailed along either side of that
// joist: a post 3-1/2 in wide stands clear of all of it with its middle 3/4 + 1-1/2 + 1-3/4 = 4 in off. The plates over a
// butt of end joists, or over the joint of a beam, reach 6 in either way: 6 + 1-3/4 = 7-3/4 in off. By hand, in inches.

type Place = readonly [number, number]

function built(job: object): Design {
  const made = design(job)
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value
}

function centre({ box }: Member): Place {
  return [(box.x0 + box.x1) / 64, (box.y0 + box.y1) / 64]
}

/** A joint on a board's middle line: where, which way the board goes, its upper edge, half of its thickness. */
type Joint = readonly [place: Place, way: Place, top: number, half: number]

/** From a joint to a post's middle along the board; null where the post does not stand against it. */
function along([[x, y], [ux, uy], , half]: Joint, [px, py]: Place): number | null {
  const [dx, dy] = [px - x, py - y]
  return Math.abs(Math.abs(dx * uy - dy * ux) - half - 1.75) > 0.1 ? null : Math.abs(dx * ux + dy * uy)
}

/** Least distance of a guard post from any joint of the board that it stands against. */
function nearest(made: Design, joints: readonly Joint[]): number {
  const posts = (made.guard?.members ?? []).filter(
    ({ role, id }) => role === 'guard post' && id.startsWith('guard'),
  )
  const found = joints.flatMap((joint) =>
    posts
      .filter(({ box }) => box.z0 / 32 < joint[2] && box.z1 / 32 > joint[2])
      .flatMap((post) => along(joint, centre(post)) ?? []),
  )
  return Math.min(Number.POSITIVE_INFINITY, ...found)
}

/** Where the members of runs of rims may be jointed. */
function rimJoints(made: Design) {
  return made.takeoff.runs
    .filter(({ kind }) => kind === 'rim')
    .flatMap(({ points, memberIds }) => {
      // of a doubled rim the inner ply, against which a post stands
      const rim = made.frame.members.find(({ id }) => id === memberIds.at(-1))
      if (rim === undefined) throw new Error('a run has a member')
      const { box, line } = rim
      const [a, b] = (
        line ?? [
          { x: box.x0, y: (box.y0 + box.y1) / 2 },
          { x: box.x1, y: (box.y0 + box.y1) / 2 },
        ]
      ).map(({ x, y }): Place => [x / 32, y / 32]) as [Place, Place]
      const long = Math.hypot(b[0] - a[0], b[1] - a[1])
      const way: Place = [(b[0] - a[0]) / long, (b[1] - a[1]) / long]
      // a mitred rim's long point lies before its middle line by half of what it is longer
      const lead = (rim.length / 32 - long) / 2
      return points.map(({ at }): Joint => {
        const off = at / 32 - lead
        return [[a[0] + off * way[0], a[1] + off * way[1]], way, box.z1 / 32, 0.75]
      })
    })
}

describe.each(CATALOGUE)('the guard round $file', ({ job }) => {
  it('has no post whose bolts would go through a joint of a rim', () => {
    const made = built({ ...job, guard: { ...(job as { guard?: object }).guard, where: 'all open edges' } })
    const joints = rimJoints(made)
    // slanting rims may be mitred at one end only: a quarter of an inch for what the lead above leaves out
    expect(nearest(made, joints)).toBeGreaterThanOrEqual(3.99)
  })
})

it('a rim is jointed at other joists than those beside which a guard post is bolted, and the reason is told', () => {
  const made = built({
    size: { width: '24 ft', depth: '12 ft', height: '42 in' },
    guard: { where: 'where needed' },
  })
  const rim = made.takeoff.runs.find(({ kind }) => kind === 'rim')
  const posts = made.guard?.stretches.find(({ edge }) => edge.side === 'front')?.posts ?? []
  const inner = posts.filter(({ onJoist }) => onJoist)
  expect(inner.length).toBeGreaterThan(1)
  const told = rim?.refused.filter(({ why }) => why.includes('guard post')) ?? []
  expect(told.length).toBeGreaterThanOrEqual(inner.length)
  expect(rim?.points.length).toBeGreaterThan(5)
})

it.each(Array.from({ length: 41 }, (_, i) => 96 + 3 * i))(
  'guard posts stand clear of the plates where end joists are butted %i in from the wall',
  (beam) => {
    const made = built({
      size: { width: '12 ft', depth: '26 ft', height: '48 in' },
      shape: { middleBeams: `${beam} in` },
      frame: { joists: { size: '2x12', overMiddle: 'butted' } },
      guard: { where: 'where needed' },
    })
    const top = made.frame.members.find(({ role }) => role === 'end joist')?.box.z1 ?? 0
    const butts = [0.75, 143.25].map((x) => [[x, beam], [0, 1], top / 32, 0.75] as const)
    expect(nearest(made, butts)).toBeGreaterThanOrEqual(7.75)
    for (const { posts } of made.guard?.stretches ?? [])
      for (const [i, { at }] of posts.slice(1).entries())
        expect(at - (posts[i]?.at ?? 0)).toBeLessThanOrEqual(72 * 32)
  },
)

it.each([16, 18, 20, 22, 24, 26, 28])(
  'guard posts stand clear of the posts over which a flush beam %i ft long may be jointed',
  (feet) => {
    const made = built({
      size: { width: `${feet} ft`, depth: '12 ft', height: '48 in' },
      frame: { beams: { front: { set: 'flush', posts: 5 } } },
      guard: { where: 'where needed' },
    })
    const [beam] = made.frame.beams
    const inner = made.frame.posts.filter(({ id }) => (beam?.postIds ?? []).slice(1, -1).includes(id))
    expect(inner).toHaveLength(3)
    const top = made.frame.members.find(({ role }) => role === 'beam ply')?.box.z1 ?? 0
    const joints = inner.map(({ x, y }) => [[x / 32, y / 32], [1, 0], top / 32, 1.5] as const)
    expect(nearest(made, joints)).toBeGreaterThanOrEqual(7.75)
  },
)

it('a post that has no other place than at a joint is named, and nothing covers it', () => {
  // a notch 18 in wide in the right side, its inner edge an end joist butted in the middle of that: posts at either end
  // of 18 in cannot both stand 7-3/4 in off the middle
  const made = built({
    size: { height: '48 in' },
    shape: {
      outline: '0, 0; 192, 0; 192, 100; 170, 100; 170, 118; 192, 118; 192, 216; 0, 216',
      middleBeams: '109 in',
    },
    frame: { joists: { size: '2x8', overMiddle: 'butted' }, beams: { front: { setback: '8 in', posts: 2 } } },
    ground: { base: '14 in' },
    guard: { where: 'all open edges' },
  })
  const inner = made.guard?.stretches.find(({ edge }) => edge.id === 'edge-4')
  const at = inner?.posts.map((post) => post.at / 32) ?? []
  expect(at).toEqual(at.toSorted((a, b) => a - b))
  for (const place of at) expect(place > 0 && place < 18, `${at}`).toBe(true)
  const check = made.checks.find(({ id }) => id === 'guard-posts')
  expect(check?.status).toBe('outside scope')
  expect(check?.message).toContain('The board is jointed where GP')
  expect(check?.remedy).toContain('licensed designer')
})
