import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import { endOf, endWords, runPieceEnds } from '../../../core/papers/cutting/cut-ends.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'

type Member = Parameters<typeof runPieceEnds>[0]

const board = {
  length: 6400,
  ends: [-4500, 4500],
  lay: { part: 'field', zone: 'zone-1', row: 3, degrees: 45, alongJoists: false },
} as unknown as Member

describe('cut ends', () => {
  it('are told by the end, as sawn, and with the side of the long point, as the shape has it', () => {
    // corners by hand, in ticks, y to the front: a rim in front that is longer on its front face at the left
    const rim = {
      role: 'rim',
      box: { x0: 0, x1: 960, y0: 96, y1: 144, z0: 0, z1: 1 },
      ends: [-4500, 0],
      plan: [
        { x: 48, y: 96 },
        { x: 960, y: 96 },
        { x: 960, y: 144 },
        { x: 0, y: 144 },
      ],
    } as unknown as Member
    expect(endWords(rim)).toBe('bevel left 45° long front')
    // a joist away from the house, slanting at its rear end, longer on its right face
    const joist = {
      role: 'joist',
      box: { x0: 488, x1: 536, y0: 747, y1: 1168, z0: 0, z1: 1 },
      ends: [-4500, 0],
      plan: [
        { x: 488, y: 795 },
        { x: 488, y: 1168 },
        { x: 536, y: 1168 },
        { x: 536, y: 747 },
      ],
    } as unknown as Member
    expect(endWords(joist)).toBe('bevel rear 45° long right')
    // a board beside it, flat, whose front end is longer on the left
    const flat = {
      role: 'decking',
      box: { x0: 0, x1: 176, y0: 0, y1: 1000, z0: 0, z1: 1 },
      line: [
        { x: 88, y: 0 },
        { x: 88, y: 1000 },
      ],
      ends: [0, -4500],
      plan: [
        { x: 0, y: 0 },
        { x: 176, y: 0 },
        { x: 176, y: 824 },
        { x: 0, y: 1000 },
      ],
    } as unknown as Member
    expect(endWords(flat)).toBe('mitre front 45° long left')
    expect(endWords({ ...flat, ends: undefined } as unknown as Member)).toBe('')
    expect(endWords(flat, [0, 0])).toBe('')
  })

  it('of every member in the catalogue have a side for their long point', { timeout: 60_000 }, () => {
    for (const { job } of CATALOGUE) {
      const made = design(job)
      for (const member of made.ok ? made.value.frame.members : [])
        for (const at of [0, 1] as const)
          if ((member.ends?.[at] ?? 0) !== 0) expect(endOf(member, at).long, member.mark).not.toBeNull()
    }
  })

  it('of a jointed board are its own at its ends, and along the joist at a joint', () => {
    expect(runPieceEnds(board, { from: 0, to: 3200 } as never)).toEqual([-4500, 4500])
    expect(runPieceEnds(board, { from: 3200, to: 6400 } as never)).toEqual([4500, 4500])
  })

  it('of a straight board are square at a joint', () => {
    const straight = { length: 6400, lay: { ...board.lay, degrees: 0 } } as unknown as Member
    expect(runPieceEnds(straight, { from: 0, to: 3200 } as never)).toEqual([0, 0])
  })
})
