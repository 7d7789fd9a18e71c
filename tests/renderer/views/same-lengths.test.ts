import { expect, test } from 'vitest'
import type { CutPlan, DayState, Replan } from '../../../core/cutting/index.ts'
import { sameLengths } from '../../../renderer/views/boards/day/same-lengths.ts'

const board = (number: number, stockId: string, ...lengths: readonly number[]) => ({
  number,
  stockId,
  cuts: lengths.map((length, index) => ({ pieceId: `${number} ${index}`, length })),
})
const plan = {
  boards: [board(1, 'A', 10, 4), board(2, 'A', 10, 4), board(3, 'A', 9), board(4, 'B', 7)],
} as unknown as CutPlan
const day = (...culled: readonly number[]) =>
  ({ culls: culled.map((board) => ({ board })), miscuts: [] }) as unknown as DayState
const again = (changed: readonly number[], ...boards: readonly unknown[]) =>
  ({
    changed,
    rest: { plan: { boards } },
    lying: [
      { id: 'whole A', of: 'A' },
      { id: 'left of 3', of: null },
    ],
  }) as unknown as Replan

test('boards keep their lengths whatever their marks and order, each old board once', () => {
  const rest = again([1, 2, 3], board(1, 'whole A', 4, 10), board(2, 'A', 10, 4), board(3, 'whole A', 10, 4))
  expect(sameLengths(plan, day(), rest)).toBe(2)
})

test('parts of boards, other stock and boards that stay are not among them', () => {
  expect(sameLengths(plan, day(), again([3, 4], board(1, 'left of 3', 9), board(2, 'B', 9)))).toBe(0)
  expect(sameLengths(plan, day(), again([4], board(1, 'whole A', 10, 4)))).toBe(0)
  expect(sameLengths(plan, day(), { ...again([1]), rest: null })).toBe(0)
})

test('a new board in place of a culled one is not among them', () => {
  const rest = again([1, 3], board(1, 'A', 10, 4), board(2, 'whole A', 9))
  expect(sameLengths(plan, day(), rest)).toBe(2)
  expect(sameLengths(plan, day(1), rest)).toBe(1)
})
