import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'

// 16 ft by 12 ft on a ledger, joists at 16 in from the left: 11 inner joists and two end joists, 12 bays; ledger's face
// at 1-1/2 in, the beam's middle 24 in inside the front, at 120 in.

function blocksOf(frame: object, depth = '12 ft') {
  const made = design({
    version: 1,
    size: { width: '16 ft', depth, height: '44 in' },
    frame: { beams: { front: { setback: '24 in' } }, ...frame },
  })
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  const blocks = made.value.frame.members.filter(({ role }) => role === 'blocking')
  return { made: made.value, blocks, inSpan: blocks.filter(({ id }) => id.startsWith('blocking-span')) }
}

describe('blocking in the middle of a span', () => {
  it('is there where it is asked for: one in each bay, half way between its supports', () => {
    expect(blocksOf({}).inSpan).toEqual([])
    const { made, blocks, inSpan } = blocksOf({ blocking: 'over beams and mid-span' })
    expect(inSpan).toHaveLength(12)
    expect(blocks).toHaveLength(24)
    // (1.5 + 120) ÷ 2 = 60.75, a block's middle
    for (const { box } of inSpan) expect((box.y0 + box.y1) / 2 / 32).toBe(60.75)
    // 16 − 1-1/2 in, and 15-1/4 − 3/4 − 3/4 in beside the first end joist
    expect(inSpan.map(({ length }) => length / 32).slice(0, 2)).toEqual([13.75, 14.5])
    expect(made.takeoff.tasks.find(({ rateId }) => rateId === 'blocking')?.thousandths).toBe(24_000)
    expect(made.takeoff.pieces.filter(({ memberId }) => memberId.startsWith('blocking-span'))).toHaveLength(
      12,
    )
  })

  it('is left out of spans under 6 ft', () => {
    // 7 ft deep: from 1-1/2 to 60 in
    expect(blocksOf({ blocking: 'over beams and mid-span' }, '7 ft').inSpan).toEqual([])
  })
})
