import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import type { Member, Post } from '../../../core/frame/index.ts'
import { carriers } from '../../../core/frame/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { paperSource } from '../../fixtures/paper-source.ts'

// Decks whose beams meet in a mitre: round a house's left corner, its right one, and about a clipped corner.
const wrapped = CATALOGUE.find(({ file }) => file === 'wrap-hip.json')?.job as {
  readonly shape: object
  readonly frame: object
}
const RIGHT = {
  outline: "0, 16'; 20', 16'; 20', 0; 28', 0; 28', 24'; 0, 24'",
  walls: '1, 2',
  zones: "20', 0, 8', 16': along",
}
const CLIPPED = { outline: "0, 0; 28', 0; 28', 8'; 20', 16'; 0, 16'", walls: '1', zones: '', seams: 'single' }

const stated = (shape: object, frame: object = {}) => ({
  ...wrapped,
  shape: { ...wrapped.shape, ...shape },
  frame: { ...wrapped.frame, ...frame },
})
const planned = (shape: object) => paperSource(stated(shape) as never)

/** Along a ply, from that of its corners which lies farthest to its left. */
function alongPly({ plan, box }: Member, from: { x: number; y: number }, to: { x: number; y: number }) {
  const way = { x: to.x - from.x, y: to.y - from.y }
  const whole = Math.hypot(way.x, way.y)
  const onWay = ({ x, y }: { x: number; y: number }) => (x * way.x + y * way.y) / whole
  const shape = plan ?? [
    { x: box.x0, y: box.y0 },
    { x: box.x1, y: box.y1 },
  ]
  const start = Math.min(...shape.map(onWay))
  return (post: Pick<Post, 'x' | 'y'>) => onWay(post) - start
}

describe.each<[string, object]>([
  ['round the left corner of a house', {}],
  ['round the right corner of a house', RIGHT],
])('plies of mitred beams %s', (_name, shape) => {
  const { estimate } = planned(shape)
  const pieces = estimate.plans.flatMap(({ plan }) => plan.runPieces)
  const joints = estimate.plans.flatMap(({ plan }) => plan.joints)
  const plies = estimate.frame.members.filter(({ role }) => role === 'beam ply')
  const jointed = plies.filter(({ id }) => joints.some(({ memberId }) => memberId === id))

  it('are cut to pieces that make up each ply to its own length', () => {
    const lengths = plies.map(({ id }) =>
      pieces.filter(({ memberId }) => memberId === id).reduce((sum, { length }) => sum + length, 0),
    )
    expect(lengths).toEqual(plies.map(({ length }) => length))
    expect(new Set(lengths).size).toBeGreaterThan(2)
  })

  it('are jointed over the middle of a post, by the corners of each ply', () => {
    expect(jointed.length).toBeGreaterThan(0)
    for (const ply of jointed) {
      const beam = estimate.frame.beams.find(({ plyIds }) => plyIds.includes(ply.id))
      const along = alongPly(ply, ...(beam?.line ?? ([ply.box, ply.box] as never)))
      const posts = estimate.frame.posts
        .filter(({ id }) => beam?.postIds.slice(1, -1).includes(id))
        .map(along)
      for (const { at } of joints.filter(({ memberId }) => memberId === ply.id))
        expect(Math.min(...posts.map((post) => Math.abs(post - at))), ply.mark).toBeLessThanOrEqual(1)
    }
  })

  it('have their joints marked where the posts are marked', () => {
    const beams = carriers(estimate, estimate.plans).filter(({ id }) => id.startsWith('beam'))
    const marked = beams.flatMap(({ lines }) => lines.filter(({ label }) => label.startsWith('joint of')))
    expect(marked).toHaveLength(joints.filter(({ memberId }) => memberId.startsWith('beam')).length)
    for (const { lines } of beams) {
      const posts = lines.filter(({ label }) => label.startsWith('post')).map(({ at }) => at)
      for (const { label, at } of lines.filter((line) => line.label.startsWith('joint of')))
        expect(Math.min(...posts.map((post) => Math.abs(post - at))), label).toBeLessThanOrEqual(1)
    }
  })

  it('pass the check of their joints', () => {
    const checks = estimate.checks.filter(({ title }) => title === 'Joints of beam plies')
    expect(checks.map(({ status }) => status)).toEqual(checks.map(() => 'passes'))
  })
})

describe.each<[string, object, object]>([
  ['round a corner, staggered as a rule', {}, { stagger: 'required' }],
  ['round a corner, not staggered', {}, { stagger: 'none' }],
  ['about a clipped corner', CLIPPED, {}],
])('places for joints of mitred plies %s', (_name, shape, frame) => {
  const made = design(stated(shape, frame))
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  const { members, beams, posts, runs } = made.value.frame
  const ofPlies = runs.filter(({ kind }) => kind === 'beam ply')

  it('are over the middle of a post', () => {
    expect(ofPlies.length).toBeGreaterThan(beams.length)
    for (const { memberIds, points } of ofPlies)
      for (const id of memberIds) {
        const ply = members.find((one) => one.id === id)
        const beam = beams.find(({ plyIds }) => plyIds.includes(id))
        if (ply === undefined || beam === undefined) throw new Error('a run is of plies of a beam')
        const along = alongPly(ply, ...beam.line)
        const inner = posts.filter((post) => beam.postIds.slice(1, -1).includes(post.id)).map(along)
        for (const { at } of points)
          expect(Math.min(...inner.map((post) => Math.abs(post - at))), ply.mark).toBeLessThanOrEqual(1)
      }
  })

  const isRule = 'stagger' in frame && frame.stagger === 'required'
  if (isRule)
    it('leave a ply that goes through at each post, as the rule asks', () => {
      for (const { plyIds, postIds } of beams)
        for (const postId of postIds.slice(1, -1)) {
          const jointed = ofPlies.filter(
            ({ memberIds, points }) =>
              plyIds.includes(memberIds[0] ?? '') && points.some(({ supportId }) => supportId === postId),
          )
          expect(jointed.length).toBe(plyIds.length - 1)
        }
    })
})
