import { describe, expect, it } from 'vitest'
import { endWords, runPieceEnds } from '../../../core/papers/cutting/cut-ends.ts'

type Member = Parameters<typeof runPieceEnds>[0]

const board = {
  length: 6400,
  ends: [-4500, 4500],
  lay: { part: 'field', zone: 'zone-1', row: 3, degrees: 45, alongJoists: false },
} as unknown as Member

describe('cut ends', () => {
  it('are told in words by the side they are on', () => {
    expect(endWords(undefined)).toBe('')
    expect(endWords([0, 0])).toBe('')
    expect(endWords([2250, 0])).toBe('left 22.5°')
    expect(endWords([0, -4500])).toBe('right 45°')
    expect(endWords([4500, 4500])).toBe('both 45°, alike')
    expect(endWords([-4500, 4500])).toBe('both 45°, opposed')
    expect(endWords([3000, 4500])).toBe('left 30°, right 45°')
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
