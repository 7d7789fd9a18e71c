import { describe, expect, it } from 'vitest'
import { footingLoads } from '../../../core/checks/index.ts'
import { design } from '../../../core/design.ts'
import { carriers } from '../../../core/frame/index.ts'
import { centreOf, countOf, deckOf, lengthOf, ofRole } from './joint-decks.ts'

// Hand sums for 14 ft × 26 ft, ledger, middle beam centred 13 ft out, front beam 2 ft behind the rim's face; 2-ply
// beams, 2x12 joists at 16 in from the left. Lap: IRC 2021 R502.6.1, 3 in at least, centred on the beam; the second run
// stands one thickness further right, end joists are butted (common practice, no source).

describe('joists lapped over a middle beam', () => {
  const lapped = deckOf('deep-lapped')
  const { frame } = lapped

  it('run 1-1/2 in past the centre of the beam from either side', () => {
    // ledger 1-1/2 in, beam at 156: 156 − 1.5 + 1.5; from the beam to the rim: 312 − 1.5 − 156 + 1.5
    expect(lengthOf(frame, 'J1')).toBe(156)
    expect(lengthOf(frame, 'J1b')).toBe(156)
    const [one, other] = ['J1', 'J1b'].map((mark) => frame.members.find((member) => member.mark === mark))
    expect(((one?.box.y1 ?? 0) - (other?.box.y0 ?? 0)) / 32).toBe(3)
    expect((one?.box.x1 ?? 0) / 32).toBe((other?.box.x0 ?? 0) / 32)
  })

  it('stand at every spacing, and one thickness further right beyond the beam', () => {
    const joists = ofRole(frame, 'joist')
    const first = joists.filter(({ box }) => box.y0 < 32 * 12).map(centreOf)
    const second = joists.filter(({ box }) => box.y0 >= 32 * 12).map(centreOf)
    const tens = Array.from({ length: 10 }, (_, i) => 16 * (i + 1))
    expect(first).toEqual(tens)
    // the first bay beyond would be 17.5 − 0.75 = 16.75 in: one more stands 3 in from the end joist
    expect(second).toEqual([3.75, ...tens.map((at) => at + 1.5)])
  })

  it('leave the end joists butted in one line', () => {
    expect(lengthOf(frame, 'E1')).toBe(156)
    expect(lengthOf(frame, 'E1b')).toBe(312 - 1.5 - 156)
    const [first, second] = ofRole(frame, 'end joist').filter(({ box }) => box.x0 === 0)
    expect(first?.box.y1).toBe(second?.box.y0)
  })

  it('take three nails a lap, plates and nails at the butts, one tie a line and beam, one hanger at the ledger', () => {
    expect(countOf(frame, 'joist lap')).toBe(10)
    expect(countOf(frame, 'joist splice')).toBe(2)
    // 10 lines, 2 end joists and the one more, over either beam
    expect(countOf(frame, 'uplift tie')).toBe(2 * 13)
    expect(countOf(frame, 'joist hanger')).toBe(10)
    const plates = lapped.takeoff.goods.find(({ sku }) => sku === 'joist-splice-plate')
    expect(plates?.thousandths).toBe(4000)
    const nails = lapped.takeoff.goods.find(({ sku }) => sku === 'nail-10d-common')
    expect(nails?.cause.rule).toContain('joist lap: 30 nails')
  })

  it('shorten the blocks over the beam by a thickness', () => {
    // 16 − 3 = 13; beside the end joists 16 − 3.75 − 1.5 and 167.25 − 161.5 − 1.5; a bay of 1-1/2 in gets none
    const over = ofRole(frame, 'blocking').filter(({ mark }) => mark.startsWith('KM'))
    expect(over.map(({ length }) => length / 32)).toEqual([10.75, ...Array<number>(9).fill(13), 4.25])
  })

  it('move their marks on the front rim with them', () => {
    const rim = carriers(lapped, []).find(({ mark }) => mark === 'R1')
    const at = (mark: string) => (rim?.marks.find((one) => one.mark === mark)?.at ?? 0) / 32
    expect([at('J11'), at('J1b'), at('J2b')]).toEqual([3, 16.75, 32.75])
  })

  it('are each checked by their own span: to the beam, and from it', () => {
    const spans = lapped.checks.filter(({ title }) => title === 'Joist span')
    // clear: 156 − 1.5 − 1.5, and 288 − 156 less half a beam at either end
    expect(spans.map(({ governing }) => (governing?.demand.value ?? 0) / 32)).toEqual([153, 129])
    const joints = lapped.checks.find(({ id }) => id === 'joist-joints')
    expect(joints?.status).toBe('passes')
    expect(joints?.governing?.clause).toBe('R502.6.1')
  })

  it('load the middle beam from both sides: half of either span', () => {
    // (154.5 + 132) ÷ 2 = 143.25 in of deck; an end post with 12 in of overhang and half of 48 in carries 36 in of beam
    const loads = footingLoads(lapped.job, lapped.layout, frame)
    const end = frame.footings.find(({ postId }) => postId === 'post-middle-1')
    expect(loads.find(({ footingId }) => footingId === end?.id)?.area).toBeCloseTo((36 * 143.25) / 144, 6)
  })

  it('are mirrored where they are laid out from the right', () => {
    const mirrored = deckOf('deep-lapped', { layoutFrom: 'right' }).frame
    const centres = (members: readonly { readonly box: { x0: number; x1: number } }[]) =>
      members.map(({ box }) => (box.x0 + box.x1) / 64).sort((a, b) => a - b)
    expect(centres(ofRole(mirrored, 'joist'))).toEqual(
      centres(ofRole(frame, 'joist'))
        .map((x) => 168 - x)
        .sort((a, b) => a - b),
    )
  })
})

describe('joists butted over middle beams', () => {
  const { frame, checks } = deckOf('deep-butted')

  it('meet at the centre of each beam, in three pieces that make up the whole', () => {
    // beams at 96 and 180 in of 288: 96 − 1.5, 84, 288 − 180 − 1.5
    expect(['J1', 'J1b', 'J1c'].map((mark) => lengthOf(frame, mark))).toEqual([94.5, 84, 106.5])
    expect(['E1', 'E1b', 'E1c'].map((mark) => lengthOf(frame, mark))).toEqual([96, 84, 106.5])
    expect(
      new Set(['J3', 'J3b', 'J3c'].map((mark) => frame.members.find((m) => m.mark === mark)?.box.x0)).size,
    ).toBe(1)
  })

  it('take a pair of plates at every butt', () => {
    // 8 joists and 2 end joists over 2 beams
    expect(countOf(frame, 'joist splice')).toBe(20)
    expect(countOf(frame, 'joist lap')).toBe(0)
    expect(countOf(frame, 'uplift tie')).toBe(30)
  })

  it('bear on half of the beam each', () => {
    const bearing = checks.find(({ id }) => id === 'joist-bearing')
    expect((bearing?.governing?.capacity?.value ?? 0) / 32).toBe(1.5)
  })
})

describe('the choice', () => {
  it('keeps a joist whole where the longest to be had holds it', () => {
    // 20 ft deep: 240 − 3 = 237 in; 26 ft deep with boards of 26 ft: 312 − 3 = 309 in
    expect(lengthOf(deckOf('rectangle-deep').frame, 'J1')).toBe(237)
    expect(lengthOf(deckOf('deep-lapped', { longest: '26 ft' }).frame, 'J1')).toBe(309)
    expect(lengthOf(deckOf('deep-lapped', { overMiddle: 'one piece' }).frame, 'J1')).toBe(309)
  })

  it('laps a joist that would come whole, where that is asked', () => {
    // beam at 108 in: 108 − 1.5 + 1.5
    expect(lengthOf(deckOf('rectangle-deep', { overMiddle: 'lapped' }).frame, 'J1')).toBe(108)
  })

  it('runs lapped joists to the far face of a beam of three plies', () => {
    const beams = { beams: { front: { size: '2x12', plies: 3, setback: '24 in', posts: 4 } } }
    const thick = deckOf('deep-lapped', {}, beams).frame
    expect(lengthOf(thick, 'J1')).toBe(156 - 1.5 + 2.25)
    expect(thick.connectors.find(({ kind }) => kind === 'joist lap')?.overlap).toBe(32 * 4.5)
  })

  it('is refused where a beam of one ply gives a butt too little to bear on', () => {
    const made = design({
      size: { width: '14 ft', depth: '26 ft', height: '42 in' },
      shape: { middleBeams: '13 ft' },
      frame: { beams: { front: { plies: 1 } } },
    })
    expect(made.ok ? [] : made.error.map(({ path }) => path)).toEqual(['frame.beams.front.plies'])
  })
})
