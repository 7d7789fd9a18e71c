import { describe, expect, test } from 'vitest'
import type { CutPlan } from '../../../core/cutting/index.ts'
import { groupBoards } from '../../../renderer/views/boards/board-groups.ts'

const board = (number: number, marks: readonly string[]) => ({
  number,
  length: 6144,
  cuts: marks.map((mark) => ({ mark, length: 1000 })),
})
const plan = {
  boards: [board(1, ['A', 'B']), board(2, ['A', 'B']), board(3, ['A', 'C'])],
} as unknown as CutPlan

describe('boards drawn once', () => {
  test('are those cut to the same lengths, whatever their marks', () => {
    expect(groupBoards(plan).map(({ boards }) => boards.map(({ number }) => number))).toEqual([[1, 2, 3]])
  })

  test('of a list are those whose pieces bear the same marks too', () => {
    expect(groupBoards(plan, true).map(({ boards }) => boards.map(({ number }) => number))).toEqual([
      [1, 2],
      [3],
    ])
  })
})
