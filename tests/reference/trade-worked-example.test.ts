/**
 * A deck of 23 ft 6 in × 13 ft 6 in, framed by hand, value by value.
 * Source: worked by hand from the conventions of the trade (common practice, no printed source); volumes, diagonals
 * and board feet recomputed independently of this program.
 */
import { describe, expect, it } from 'vitest'
import { frameDeck, holeSetOut } from '../../core/frame/index.ts'
import type { Job } from '../../core/job/index.ts'
import { groundAt, layOut } from '../../core/layout/index.ts'
import { takeOff } from '../../core/takeoff/index.ts'
import { printLength, ticks, toInches } from '../../core/units/index.ts'
import { heronLane } from '../fixtures/heron-lane.ts'

function layoutOf(job: Job) {
  const layout = layOut(job)
  if (!layout.ok) throw new Error(JSON.stringify(layout.error))
  return layout.value
}
const framed = frameDeck(heronLane, layoutOf(heronLane))
if (!framed.ok) throw new Error(JSON.stringify(framed.error))
const frame = framed.value
const takeoff = takeOff(heronLane, frame)

const lengthsOf = (role: string) => [
  ...new Set(
    frame.members.filter((member) => member.role === role).map((member) => printLength(member.length)),
  ),
]
const runOf = (kind: string) => frame.runs.find((run) => run.kind === kind)
const goodsOf = (sku: string) => (takeoff.goods.find((good) => good.sku === sku)?.thousandths ?? 0) / 1000

describe('the frame worked by hand', () => {
  it('has 17 joists at 16, 32, … 272 in and two end joists', () => {
    const inner = Array.from({ length: 17 }, (_, i) => 16 * (i + 1))
    expect(frame.joistCentres.map(toInches)).toEqual([0.75, ...inner, 281.25])
  })

  it.each([
    ['joist', `13'-3"`],
    ['end joist', `13'-4 1/2"`],
    ['ledger', `23'-3"`],
    ['rim', `23'-6"`],
    ['beam ply', `23'-6"`],
    ['post', `1'-8 5/8"`],
    ['decking', `23'-8"`],
  ])('makes every %s %s long', (role, length) => {
    expect(lengthsOf(role)).toEqual([length])
  })

  it('stands the posts at 12, 98, 184 and 270 in, 138 in from the wall', () => {
    expect(frame.posts.map((post) => [post.number, toInches(post.x), toInches(post.y)])).toEqual([
      [1, 12, 138],
      [2, 98, 138],
      [3, 184, 138],
      [4, 270, 138],
    ])
  })

  it('finds the ground at the posts 5 1/9 in below the datum', () => {
    for (const post of frame.posts) expect(post.ground / 32).toBeCloseTo(-46 / 9, 10)
    expect(groundAt(heronLane, 0, 0)).toBe(0)
  })

  it('joints the beam plies over posts 2 and 3 only, which leaves 8 ft 2 in and 15 ft 4 in', () => {
    const run = runOf('beam ply')
    expect(run?.points.map((point) => printLength(point.at))).toEqual([`8'-2"`, `15'-4"`])
    expect(run?.refused.map((point) => point.label)).toEqual(['post 1', 'post 4'])
    expect([run?.cap, run?.capPreferred]).toEqual([1, true])
  })

  it('blocks the first bay with 13 3/4, sixteen with 14 1/2 and the last with 7 3/4 in', () => {
    const lengths = frame.members
      .filter((member) => member.role === 'blocking')
      .map((one) => toInches(one.length))
    expect(lengths).toEqual([13.75, ...Array.from({ length: 16 }, () => 14.5), 7.75])
  })

  it('lays 29 courses, the last ripped to 5 1/4 in and the others whole', () => {
    const courses = frame.members.filter((member) => member.role === 'decking')
    expect(courses).toHaveLength(29)
    expect(courses.slice(0, -1).every((course) => course.ripTo === null)).toBe(true)
    expect(toInches(courses.at(-1)?.ripTo ?? 0)).toBe(5.25)
  })

  it('needs 40 in of tube where it stands on the ground itself, 32 in on a base 8 in thick', () => {
    expect(frame.footings.map((footing) => toInches(footing.tubeLength))).toEqual([32, 32, 32, 32])
    const bare = { ...heronLane, ground: { ...heronLane.ground, base: ticks(0) } }
    const tubes = frameDeck(bare, layoutOf(bare))
    expect(tubes.ok && tubes.value.footings.map((footing) => toInches(footing.tubeLength))).toEqual([
      40, 40, 40, 40,
    ])
  })

  it('sets out the holes by diagonals from the left corner', () => {
    expect(holeSetOut(frame, heronLane).map((hole) => printLength(hole.fromLeftCorner))).toEqual([
      `11'-6 1/2"`,
      `14'-1 1/4"`,
      `19'-2"`,
      `25'-3 1/4"`,
    ])
    // the posts stand in mirror image, so the right corner sees the same lengths the other way round
    expect(holeSetOut(frame, heronLane).map((hole) => printLength(hole.fromRightCorner))).toEqual([
      `25'-3 1/4"`,
      `19'-2"`,
      `14'-1 1/4"`,
      `11'-6 1/2"`,
    ])
    expect(printLength(frame.longDiagonal)).toBe(`27'-1 1/4"`)
  })
})

describe('the takeoff worked by hand', () => {
  it.each([
    ['joist-hanger-2x10', 17],
    ['uplift-tie', 19],
    ['end-joist-angle', 2],
    ['post-base-6x6', 4],
    ['anchor-bolt-1/2', 4],
    ['post-cap-6x6', 4],
    ['concrete-bag-80lb', 27],
  ])('counts %s: %i', (sku, count) => {
    expect(goodsOf(sku)).toBe(count)
  })

  it('has the volumes, in cubic feet', () => {
    const { volumes } = takeoff
    for (const one of volumes.concreteEach) expect(one.cubicFeet).toBeCloseTo(3.5488, 4)
    expect(volumes.concrete).toBeCloseTo(14.1953, 4)
    expect(volumes.holes).toBeCloseTo(37.699, 3)
    expect(volumes.backfill).toBeCloseTo(24.551, 3)
    expect(volumes.spoilInPlace).toBeCloseTo(13.148, 3)
    expect(volumes.spoilLoose).toBeCloseTo(16.435, 3)
    expect(volumes.bags).toBe(27)
  })

  it('has 533 1/8, 94 and 20 5/8 board feet of 2x10, 2x12 and 6x6', () => {
    const feet = Object.fromEntries(
      takeoff.boardFeet.map((one) => [one.product.size, one.thousandths / 1000]),
    )
    expect(feet).toMatchObject({ '2x10': 533.125, '2x12': 94, '6x6': 20.625 })
  })

  it('orders posts 3 in longer than they are', () => {
    const posts = takeoff.pieces.filter((piece) => piece.mark.startsWith('P'))
    expect(posts.map((piece) => printLength(piece.length))).toEqual(
      Array.from({ length: 4 }, () => `1'-11 5/8"`),
    )
  })

  it('cuts 17 joists, 2 end joists, 18 blocks and 4 posts as pieces; ledger, rim, plies and courses are runs', () => {
    expect(takeoff.pieces).toHaveLength(41)
    expect(takeoff.runs.map((run) => [run.kind, run.memberIds.length])).toEqual([
      ['ledger', 1],
      ['rim', 1],
      ['beam ply', 2],
      ['decking', 29],
    ])
  })
})
