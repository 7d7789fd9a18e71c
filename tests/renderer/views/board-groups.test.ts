import { describe, expect, test } from 'vitest'
import type { CutPlan } from '../../../core/cutting/index.ts'
import { type BoardOrder, groupBoards } from '../../../renderer/views/boards/board-groups.ts'

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
    expect(
      groupBoards(plan, { byMark: true }).map(({ boards }) => boards.map(({ number }) => number)),
    ).toEqual([[1, 2], [3]])
  })

  test('stand by length, by number, or by what is left of them', () => {
    const of = (number: number, length: number, offcut: number) => ({
      ...board(number, ['A']),
      length,
      offcut,
    })
    const mixed = { boards: [of(1, 4608, 30), of(2, 6144, 10), of(3, 5376, 900)] } as unknown as CutPlan
    const numbers = (order: BoardOrder) =>
      groupBoards(mixed, { order }).map(({ boards }) => boards[0]?.number)
    expect(numbers('length')).toEqual([2, 3, 1])
    expect(numbers('number')).toEqual([1, 2, 3])
    expect(numbers('left')).toEqual([3, 1, 2])
  })
})
