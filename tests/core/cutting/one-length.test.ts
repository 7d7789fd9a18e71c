import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { KnapsackTable } from '../../../core/cutting/bound/knapsack-table.ts'
import { readyBound } from '../../../core/cutting/bound/ready-prices.ts'
import { buildProblem } from '../../../core/cutting/model/build-problem.ts'
import { costsInCents } from '../../../core/cutting/model/costs.ts'
import { fillBoards } from '../../../core/cutting/solve/fill-boards.ts'
import { fillExactly } from '../../../core/cutting/solve/fill-exactly.ts'
import { tableFor } from '../../../core/cutting/solve/generate.ts'
import { feet, ticks } from '../../../core/units/index.ts'
import { jobOf, stockOf } from './jobs.ts'

const CAPACITY = 30
const PRICE = 700

/** Fewest boards of 30 ft for pieces of these lengths, no kerf, by trying every board for every piece in turn. */
function fewestBoards(lengths: readonly number[]): number {
  let best = lengths.length
  const place = (at: number, rooms: readonly number[]): void => {
    if (rooms.length >= best) return
    const length = lengths[at]
    if (length === undefined) {
      best = rooms.length
      return
    }
    rooms.forEach((room, board) => {
      if (room >= length) place(at + 1, rooms.with(board, room - length))
    })
    place(at + 1, [...rooms, CAPACITY - length])
  }
  place(0, [])
  return best
}

const lengthLists = fc
  .array(fc.integer({ min: 4, max: 28 }), { minLength: 1, maxLength: 9 })
  .map((list) => list.sort((a, b) => b - a))

function problemOf(lengths: readonly number[]): {
  problem: Parameters<typeof readyBound>[0]
  costs: Parameters<typeof readyBound>[1]
} {
  const built = buildProblem(
    jobOf({
      kerf: ticks(0),
      stock: stockOf({ [CAPACITY]: PRICE }),
      pieces: lengths.map((length, k) => ({ id: `p${k}`, mark: `P${k}`, length: feet(length) })),
    }),
  )
  if (!built.ok) throw new Error(built.error.message)
  return { problem: built.value, costs: costsInCents(built.value) }
}

describe('one stock length', () => {
  test('prices made without a program never prove more than trying every board finds', () => {
    fc.assert(
      fc.property(lengthLists, (lengths) => {
        const { problem, costs } = problemOf(lengths)
        const bound = readyBound(problem, costs, tableFor(problem), lengths.length * PRICE)
        expect(bound.cents).toBeLessThanOrEqual(fewestBoards(lengths) * PRICE)
        const plan = fillBoards(problem, costs)
        expect(plan?.cost).toBeGreaterThanOrEqual(fewestBoards(lengths) * PRICE)
      }),
    )
  })

  test('filling board after board in every way finds the fewest boards, and no plan of fewer', () => {
    fc.assert(
      fc.property(lengthLists, (lengths) => {
        const { problem, costs } = problemOf(lengths)
        const fewest = fewestBoards(lengths)
        expect(fillExactly(problem, costs, [], fewest)?.cost).toBe(fewest * PRICE)
        expect(fillExactly(problem, costs, [], fewest - 1)).toBeNull()
      }),
    )
  })

  test('boards filled widest piece first are filled again where what is left over does not suffice', () => {
    // 17 + 13, 16 + 14 and 12 + 10 + 8 make 30 each; 17 + 12 first, one over, would leave 61 ft for two boards
    const { problem, costs } = problemOf([17, 16, 14, 13, 12, 10, 8])
    expect(fillExactly(problem, costs, [], 3)?.cost).toBe(3 * PRICE)
  })

  test('three pieces over half a board need three boards, which no prices by the foot prove', () => {
    // hand sum: 16 + 16 + 16 = 48 ft on boards of 30 ft is 1.6 boards by the foot
    const { problem, costs } = problemOf([16, 16, 16])
    expect(readyBound(problem, costs, tableFor(problem), 3 * PRICE).cents).toBe(3 * PRICE)
  })

  test('boards filled one by one as full as can be are the fewest where all of them come out full', () => {
    // 20 + 10, 18 + 12 and 11 + 9 + 10 make 30 each
    const { problem, costs } = problemOf([20, 18, 12, 11, 10, 10, 9])
    expect(fillBoards(problem, costs)?.cost).toBe(3 * PRICE)
  })

  test('a table asked about some boards only says of them what the whole table says', () => {
    const lists = fc.uniqueArray(
      fc.record({
        width: fc.integer({ min: 2, max: 40 }),
        limit: fc.integer({ min: 1, max: 5 }),
        profit: fc.integer({ min: 0, max: 60 }),
      }),
      { minLength: 1, maxLength: 8, selector: (entry) => entry.width },
    )
    const ends = fc.array(fc.integer({ min: 20, max: 60 }), { minLength: 1, maxLength: 3 })
    fc.assert(
      fc.property(lists, ends, (list, capacities) => {
        const items = list.sort((a, b) => b.width - a.width)
        const longest = Math.max(...capacities)
        const table = (): KnapsackTable =>
          new KnapsackTable(
            items.map((item) => item.width),
            items.map((item) => item.limit),
            longest,
          )
        const profits = items.map((item) => item.profit)
        const whole = table()
        const part = table()
        const beside: number[] = []
        whole.fill(profits, false, (item) => {
          for (const end of capacities) beside.push(whole.value[end - (items[item]?.width ?? 0)] ?? 0)
        })
        const seen: number[] = []
        const look = (item: number): void => {
          for (const end of capacities) seen.push(part.value[end - (items[item]?.width ?? 0)] ?? 0)
        }
        part.fill(profits, false, look, capacities)
        expect(seen).toEqual(beside)
        for (const end of capacities) {
          expect(part.value[end]).toBe(whole.value[end])
          const filling = part.trace(0, end)
          let worth = 0
          let width = 0
          filling.items.forEach((item, k) => {
            worth += (filling.counts[k] ?? 0) * (profits[item] ?? 0)
            width += (filling.counts[k] ?? 0) * (items[item]?.width ?? 0)
            expect(filling.counts[k]).toBeLessThanOrEqual(items[item]?.limit ?? 0)
          })
          expect(worth).toBe(whole.value[end])
          expect(width).toBeLessThanOrEqual(end)
        }
      }),
    )
  })
})
