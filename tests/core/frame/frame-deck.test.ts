import { describe, expect, it } from 'vitest'
import { type Frame, frameDeck, type Member } from '../../../core/frame/index.ts'
import type { BeamSpec, Job } from '../../../core/job/index.ts'
import { layOut } from '../../../core/layout/index.ts'
import { inches, toInches } from '../../../core/units/index.ts'
import { heronLane } from '../../fixtures/heron-lane.ts'

function tryFrame(job: Job) {
  const laid = layOut(job)
  if (!laid.ok) throw new Error(JSON.stringify(laid.error))
  return frameDeck(job, laid.value)
}
function frameOf(job: Job): Frame {
  const framed = tryFrame(job)
  if (!framed.ok) throw new Error(JSON.stringify(framed.error))
  return framed.value
}
const framed = (change: Partial<Job['frame']>): Job => ({
  ...heronLane,
  frame: { ...heronLane.frame, ...change },
})
const sized = (change: Partial<Job['size']>): Job => ({
  ...heronLane,
  size: { ...heronLane.size, ...change },
})
const grounded = (change: Partial<Job['ground']>): Job => ({
  ...heronLane,
  ground: { ...heronLane.ground, ...change },
})
const freestanding: Job = { ...heronLane, site: { ...heronLane.site, attachment: 'freestanding' } }
const withFront = (change: Partial<BeamSpec>, job = heronLane): Job => ({
  ...job,
  frame: { ...job.frame, beams: { ...job.frame.beams, front: { ...job.frame.beams.front, ...change } } },
})
const lengths = (frame: Frame, role: Member['role']) => [
  ...new Set(frame.members.filter((member) => member.role === role).map((member) => toInches(member.length))),
]
const runOf = (frame: Frame, id: string) => frame.runs.find((run) => run.id === id)
const countOf = (frame: Frame, kind: string) =>
  frame.connectors.filter((one) => one.kind === kind).reduce((sum, one) => sum + one.count, 0)

describe('rims', () => {
  it('shorten joists and end joists alike when double', () => {
    const frame = frameOf(framed({ rimPlies: 2 }))
    expect(lengths(frame, 'joist')).toEqual([157.5])
    expect(lengths(frame, 'end joist')).toEqual([159])
    expect(runOf(frame, 'run-rim-front')?.memberIds).toEqual(['rim-front-1', 'rim-front-2'])
  })

  it('are never jointed twice at one joist when double; a single one has no such limit', () => {
    expect(runOf(frameOf(framed({ rimPlies: 2 })), 'run-rim-front')).toMatchObject({
      cap: 1,
      capPreferred: false,
    })
    expect(runOf(frameOf(heronLane), 'run-rim-front')?.cap).toBeNull()
  })

  it('refuse a joint at a joist so close to the end that the piece would split', () => {
    // 83 in wide: the closing joist stands 3 3/4 in from the end
    const run = runOf(frameOf(withFront({ posts: 2 }, sized({ width: inches(83) }))), 'run-rim-front')
    expect(run?.refused.map((point) => [point.label, toInches(point.at)])).toContainEqual(['J5', 79.25])
    expect(run?.points.map((point) => toInches(point.at))).toEqual([16, 32, 48, 64])
  })
})

describe('a freestanding deck', () => {
  const frame = frameOf(freestanding)

  it('has no ledger, two rims and joists as long as the depth less both', () => {
    expect(lengths(frame, 'ledger')).toEqual([])
    expect(lengths(frame, 'joist')).toEqual([159])
    expect(lengths(frame, 'end joist')).toEqual([159])
    expect(
      frame.members.filter((member) => member.role === 'rim').map((rim) => [rim.id, toInches(rim.box.y0)]),
    ).toEqual([
      ['rim-rear-1', 0],
      ['rim-front-1', 160.5],
    ])
  })

  it('stands on two rows of posts, numbered from the house outward and from left to right', () => {
    expect(frame.posts.map((post) => [post.number, post.id, toInches(post.y)])).toEqual([
      [1, 'post-rear-1', 24],
      [2, 'post-rear-2', 24],
      [3, 'post-rear-3', 24],
      [4, 'post-rear-4', 24],
      [5, 'post-front-1', 138],
      [6, 'post-front-2', 138],
      [7, 'post-front-3', 138],
      [8, 'post-front-4', 138],
    ])
  })

  it('is tied once per joist line and beam, and has no hangers, angles or hold-downs at a house', () => {
    expect(countOf(frame, 'uplift tie')).toBe(38)
    expect(['joist hanger', 'end joist angle', 'hold-down'].map((kind) => countOf(frame, kind))).toEqual([
      0, 0, 0,
    ])
  })

  it('overhangs its decking at the rear too, without a wall gap', () => {
    const courses = frame.members.filter((member) => member.role === 'decking')
    expect(toInches(courses[0]?.box.y0 ?? 0)).toBe(-1)
    expect(toInches(courses.at(-1)?.box.y1 ?? 0)).toBe(163)
  })
})

describe('posts', () => {
  it('keep the stated inset at the ends and round the inner ones to the nearest 1/16 in', () => {
    const job = withFront({ posts: 4, inset: inches(12 + 1 / 32) }, sized({ width: inches(281) }))
    expect(frameOf(job).posts.map((post) => toInches(post.x))).toEqual([
      12.03125, 97.6875, 183.3125, 268.96875,
    ])
  })

  it('round a half up', () => {
    // centres 10, 60 1/32, 110 1/16: the middle one is half way between two sixteenths
    const job = withFront({ posts: 3, inset: inches(10) }, sized({ width: inches(120 + 1 / 16) }))
    expect(frameOf(job).posts.map((post) => toInches(post.x))).toEqual([10, 60.0625, 110.0625])
  })

  it('round their length up to 1/32 in', () => {
    const [post] = frameOf(heronLane).posts
    expect((post?.length ?? 0) / 32 - (20 + 11 / 18)).toBeGreaterThan(0)
    expect((post?.length ?? 0) / 32 - (20 + 11 / 18)).toBeLessThan(1 / 32)
  })

  it('of 4x6 turn their wide side along the beam, across it under a beam of three plies', () => {
    const sidesOf = (plies: number) => {
      const post = frameOf(withFront({ plies }, framed({ postSize: '4x6' }))).members.find(
        (one) => one.role === 'post',
      )
      return [
        toInches((post?.box.x1 ?? 0) - (post?.box.x0 ?? 0)),
        toInches((post?.box.y1 ?? 0) - (post?.box.y0 ?? 0)),
      ]
    }
    expect(sidesOf(2)).toEqual([5.5, 3.5])
    expect(sidesOf(3)).toEqual([3.5, 5.5])
  })

  it('that would have no length are a fault of the height, which says how much is missing', () => {
    const result = tryFrame(sized({ height: inches(20) }))
    expect(result.ok ? [] : result.error).toMatchObject([
      { path: 'size.height', fix: expect.stringContaining('raise the deck by at least 1 13/32"') },
    ])
  })
})

describe('footings', () => {
  it('go 12 in deep at least, however little the ground freezes', () => {
    const job = { ...heronLane, site: { ...heronLane.site, frostDepth: inches(6) } }
    expect(frameOf(job).footings.map((one) => toInches(one.depth))).toEqual([12, 12, 12, 12])
  })

  it('without a base take the hole from the tube and leave the base’s thickness out', () => {
    const [footing] = frameOf(grounded({ base: inches(0) })).footings
    expect(footing).toMatchObject({
      base: 0,
      baseThickness: 0,
      tubeLength: inches(40),
      holeDiameter: inches(16),
    })
  })

  it.each<[string, Partial<Job['ground']>, string]>([
    ['a base narrower than its tube', { base: inches(10) }, 'ground.base'],
    ['a base thicker than the hole is deep', { baseThickness: inches(40) }, 'ground.baseThickness'],
    ['a base of no thickness', { baseThickness: inches(0) }, 'ground.baseThickness'],
  ])('refuse %s', (_what, change, path) => {
    const result = tryFrame(grounded(change))
    expect(result.ok ? [] : result.error.map((fault) => fault.path)).toContain(path)
  })

  it('say when two holes run into each other', () => {
    const job = withFront({ posts: 12 })
    expect(frameOf(job).layoutNotes.filter((note) => note.includes('one trench'))).toHaveLength(11)
    expect(frameOf(heronLane).layoutNotes.join(' ')).not.toContain('trench')
  })
})

describe('beam plies', () => {
  it.each<[Job['frame']['stagger'], number, number | null, boolean]>([
    ['preferred', 2, 1, true],
    ['required', 2, 1, false],
    ['none', 2, null, false],
    ['preferred', 3, 2, true],
    ['required', 3, 2, false],
    ['preferred', 1, null, false],
  ])(
    'with stagger %s and %i plies carry at most %s joints at one post (a preference: %s)',
    (stagger, plies, cap, preferred) => {
      const run = runOf(frameOf(withFront({ plies }, framed({ stagger }))), 'run-beam-front')
      expect([run?.cap, run?.capPreferred]).toEqual([cap, preferred])
    },
  )

  it('on two posts have nowhere to be jointed', () => {
    expect(runOf(frameOf(withFront({ posts: 2 })), 'run-beam-front')?.points).toEqual([])
  })

  it('lie side by side about the centre line', () => {
    const plies = frameOf(withFront({ plies: 3 })).members.filter((member) => member.role === 'beam ply')
    expect(plies.map((ply) => [toInches(ply.box.y0), toInches(ply.box.y1)])).toEqual([
      [135.75, 137.25],
      [137.25, 138.75],
      [138.75, 140.25],
    ])
  })
})

describe('the ledger', () => {
  it('is jointed mid-bay with two whole bays on either side', () => {
    const run = runOf(frameOf(heronLane), 'run-ledger')
    // the bay between 32 and 48 in, from the ledger's end at 1 1/2 in
    expect(run?.points[0]).toMatchObject({ at: inches(38.5), label: 'between J2 and J3' })
    expect(run?.points.at(-1)).toMatchObject({ at: inches(246.5), label: 'between J15 and J16' })
    expect(run?.refused).toHaveLength(4)
  })

  it('of four bays cannot be jointed, of five in the middle one only', () => {
    const bays = (width: number) =>
      runOf(frameOf(withFront({ posts: 2 }, sized({ width: inches(width) }))), 'run-ledger')
    expect(bays(62)?.points).toHaveLength(0)
    expect(bays(78)?.points.map((point) => point.label)).toEqual(['between J2 and J3'])
  })
})

describe('decking joints', () => {
  const run = runOf(frameOf(heronLane), 'run-decking')

  it('are refused where a piece would lie on fewer than three joists', () => {
    expect(run?.refused.map((point) => point.label)).toEqual(['E1', 'J1', 'J17', 'E2'])
    expect(run?.minSupports).toBe(3)
  })

  it('are measured from the course’s end, past the overhang', () => {
    expect(run?.points[0]).toMatchObject({ label: 'J2', at: inches(33) })
  })

  it('fall on one joist in half of the courses at most, neighbours apart', () => {
    expect([run?.cap, run?.neighboursApart]).toEqual([15, true])
  })
})

describe('blocking', () => {
  it('leaves out a bay under 3 in of clear width, and says so', () => {
    // 83 in wide: the closing joist leaves a bay 1 1/2 in clear
    const frame = frameOf(withFront({ posts: 2 }, sized({ width: inches(83) })))
    const blocks = frame.members.filter((member) => member.role === 'blocking')
    expect(blocks.map((block) => toInches(block.length))).toEqual([13.75, 14.5, 14.5, 14.5, 13.75])
    expect(frame.layoutNotes).toContain('Bay 6 over beam B1 is 1 1/2" clear, under 3 in: no block there.')
  })

  it('is left out altogether where the job says none', () => {
    expect(lengths(frameOf(framed({ blocking: 'none' })), 'blocking')).toEqual([])
  })

  it('is not needed where the rim itself stands over the beam', () => {
    expect(lengths(frameOf(withFront({ setback: inches(2) })), 'blocking')).toEqual([])
  })
})

describe('hold-downs', () => {
  it('stand two, within 24 in of either end', () => {
    const frame = frameOf(heronLane)
    expect(frame.connectors.find((one) => one.kind === 'hold-down')?.at).toEqual(['joist-1', 'joist-17'])
  })
})
