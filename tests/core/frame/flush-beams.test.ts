import { describe, expect, it } from 'vitest'
import { footingLoads } from '../../../core/checks/index.ts'
import { design } from '../../../core/design.ts'
import { middleBeamList } from '../../../core/job/index.ts'
import { framingPlan } from '../../../core/papers/index.ts'
import { countOf, deckOf, lengthOf, ofRole } from './joint-decks.ts'

// Hand sums by `trade.md`'s rule that a flush beam takes half of its thickness from each joist that meets it, and all of
// it where it stands in the rim's place; post = height − decking − beam − (ground + projection) − stand-off.

describe('a flush front beam', () => {
  const flush = deckOf('flush-front')
  const { frame } = flush

  it('stands in the rim’s place, outer face on the edge, its top level with the joists’ tops', () => {
    expect(ofRole(frame, 'rim')).toEqual([])
    const plies = ofRole(frame, 'beam ply')
    expect(plies.map(({ length }) => length / 32)).toEqual([192, 192])
    expect(plies.map(({ box }) => box.y1 / 32)).toEqual([142.5, 144])
    // 42 − 1 in of decking; a 2x12 is 11-1/4 in deep
    expect(plies.map(({ box }) => [box.z0 / 32, box.z1 / 32])).toEqual([
      [29.75, 41],
      [29.75, 41],
    ])
  })

  it('takes its thickness off joists and end joists', () => {
    // 144 − 1.5 − 3, and 144 − 3 for an end joist that laps the ledger
    expect(lengthOf(frame, 'J1')).toBe(139.5)
    expect(lengthOf(frame, 'E1')).toBe(141)
  })

  it('makes the posts longer by a joist’s depth', () => {
    // 42 − 1 − 11.25 − 4 − 1; dropped: less 9.25
    expect(frame.posts.map(({ length }) => length / 32)).toEqual([24.75, 24.75, 24.75])
    const dropped = design({
      size: { width: '16 ft', depth: '12 ft', height: '42 in' },
      frame: { beams: { front: { posts: 3 } } },
    })
    expect(dropped.ok && dropped.value.frame.posts[0]?.length).toBe(15.5 * 32)
  })

  it('has a hanger at each joist’s other end too, an angle at each end joist’s, no tie and no block', () => {
    expect(countOf(frame, 'joist hanger')).toBe(2 * 11)
    expect(countOf(frame, 'end joist angle')).toBe(2 * 2)
    expect(countOf(frame, 'uplift tie')).toBe(0)
    expect(ofRole(frame, 'blocking')).toEqual([])
    const nails = flush.takeoff.goods.find(({ sku }) => sku === 'nail-10d-common')
    // 8 face nails of a hanger for a 2x10
    expect(nails?.cause.rule).toContain(`joist hanger: ${22 * 8} nails`)
  })

  it('lets no joist reach past it, and is checked by the span of its joists and what its hangers carry', () => {
    const of = (start: string) => flush.checks.filter(({ id }) => id.startsWith(start))
    expect(of('joist-cantilever')).toEqual([])
    expect(of('joist-restraint').map(({ status }) => status)).toEqual(['passes'])
    expect(of('beam-span-front').map(({ governing }) => governing?.clause)).toEqual(['Table R507.5(1)'])
    expect(of('hanger-load')).toHaveLength(1)
    expect((of('joist-span')[0]?.governing?.demand.value ?? 0) / 32).toBe(139.5)
  })

  it('carries half of the joists and what lies on itself', () => {
    // 139.5 ÷ 2 + 3 = 72.75 in; an end post with 12 in and half of 84 in carries 54 in of beam
    const [end] = footingLoads(flush.job, flush.layout, frame)
    expect(end?.area).toBeCloseTo((54 * 72.75) / 144, 6)
  })

  it('says how deep the deck is there', () => {
    expect(frame.layoutNotes.join(' ')).toContain('12 1/4 in under the top of the decking')
  })

  it('is drawn as seen from above', () => {
    const ply = framingPlan(flush).primitives.find(({ id }) => id === 'beam-front-ply-1')
    expect(ply).toMatchObject({ stroke: 'solid' })
  })
})

describe('a flush middle beam', () => {
  const { frame, checks } = deckOf('flush-middle')

  it('has joists hung on both sides, each shorter by half of it', () => {
    // 144 − 1.5 − 1.5; 288 − 1.5 − 144 − 1.5
    expect(['J1', 'J1b', 'E1', 'E1b'].map((mark) => lengthOf(frame, mark))).toEqual([141, 141, 142.5, 141])
    expect(countOf(frame, 'joist hanger')).toBe(10 + 2 * 10)
    expect(countOf(frame, 'end joist angle')).toBe(2 + 2 * 2)
    // over the dropped front beam alone
    expect(countOf(frame, 'uplift tie')).toBe(12)
  })

  it('has joists on one line on either side, spliced by nothing', () => {
    expect(countOf(frame, 'joist lap') + countOf(frame, 'joist splice')).toBe(0)
    const [one, other] = ['J4', 'J4b'].map((mark) => frame.members.find((member) => member.mark === mark))
    expect(one?.box.x0).toBe(other?.box.x0)
  })

  it('is judged by calculation, for the table is for joists from one side', () => {
    expect(checks.find(({ id }) => id === 'beam-span-middle')?.status).toBe('calculated only')
  })

  it('is stated beam by beam', () => {
    expect(middleBeamList("8'; 16' flush; 20' dropped").map(({ set }) => set)).toEqual([
      'dropped',
      'flush',
      'dropped',
    ])
  })
})

describe('what no flush beam can be', () => {
  const faultsOf = (statement: unknown) => {
    const made = design(statement)
    return made.ok ? [] : made.error.map(({ path }) => path)
  }
  const size = { width: '16 ft', depth: '12 ft', height: '42 in' }

  it('is shallower than its joists', () => {
    expect(faultsOf({ size, frame: { beams: { front: { set: 'flush', size: '2x8' } } } })).toEqual([
      'frame.beams.front.size',
    ])
  })

  it('lies along an edge at an angle', () => {
    const shape = { outline: "0, 0; 16', 0; 16', 8'; 12', 12'; 0, 12'" }
    expect(
      faultsOf({ shape, size: { height: '42 in' }, frame: { beams: { front: { set: 'flush' } } } }),
    ).toEqual(['frame.beams.front.set'])
  })

  it('has a setback of its own', () => {
    const shape = { setbacks: '3: 18 in' }
    expect(faultsOf({ size, shape, frame: { beams: { front: { set: 'flush' } } } })).toEqual([
      'shape.setbacks',
    ])
  })

  it('stands at the rear of a free deck, where its posts would stand in the wall', () => {
    const site = { attachment: 'freestanding' }
    expect(faultsOf({ size, site, frame: { beams: { rear: { set: 'flush' } } } })).toEqual([
      'frame.beams.rear.set',
    ])
  })
})
