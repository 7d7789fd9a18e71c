import fc from 'fast-check'
import type { DayState } from '../../core/cutting/day/index.ts'
import type { CutPlan } from '../../core/cutting/index.ts'
import { cents, share, type Ticks } from '../../core/units/index.ts'

/** How one board fared, in parts of a hundred, so that it suits any plan. */
const boardLuck = fc.record({
  bought: fc.boolean(),
  sawn: fc.constantFrom('no', 'no', 'some', 'all'),
  mishap: fc.constantFrom('none', 'none', 'none', 'short', 'lost', 'cull', 'two culls'),
  at: fc.integer({ min: 0, max: 99 }),
  long: fc.integer({ min: 1, max: 60 }),
})

export const arbitraryLuck = fc.record({
  delivered: fc.boolean(),
  boards: fc.array(boardLuck, { minLength: 12, maxLength: 12 }),
  yard: fc.option(
    fc.record({
      left: fc.option(fc.integer({ min: 0, max: 3 }), { nil: null }),
      price: fc.option(fc.integer({ min: 0, max: 50 }), { nil: null }),
    }),
    {
      nil: null,
    },
  ),
  spares: fc.constantFrom(0, 0, 0, 1),
})
export type Luck = typeof arbitraryLuck extends fc.Arbitrary<infer T> ? T : never

/** A day of that luck in the carrying out of a plan; nothing in it contradicts the plan. */
export function dayOf(plan: CutPlan, luck: Luck): DayState {
  const sawn: { board: number; pieces: 'all' | string[] }[] = []
  const miscuts: { board: number; pieceId: string; length: Ticks | null }[] = []
  const culls: { board: number; from: Ticks; to: Ticks }[] = []
  const bought: number[] = []
  plan.boards.forEach((board, index) => {
    const fate = luck.boards[index % luck.boards.length]
    if (fate === undefined) return
    if (fate.bought) bought.push(board.number)
    const count =
      fate.sawn === 'no' ? 0 : fate.sawn === 'all' ? board.cuts.length : Math.ceil(board.cuts.length / 2)
    const made = board.cuts.slice(0, count)
    const wrong = made[fate.at % Math.max(1, made.length)]
    if (wrong !== undefined && (fate.mishap === 'short' || fate.mishap === 'lost')) {
      const length = Math.floor((wrong.length * fate.at) / 100) as Ticks
      miscuts.push({
        board: board.number,
        pieceId: wrong.pieceId,
        length: fate.mishap === 'lost' || length === 0 ? null : length,
      })
    }
    const right = made.filter((cut) => !miscuts.some((miscut) => miscut.pieceId === cut.pieceId))
    if (right.length > 0) {
      sawn.push({
        board: board.number,
        pieces: right.length === board.cuts.length ? 'all' : right.map((cut) => cut.pieceId),
      })
    }
    const free = made.at(-1)?.to ?? 0
    const cull = (from: number, to: number): void => {
      if (from < to) culls.push({ board: board.number, from: from as Ticks, to: to as Ticks })
    }
    if (fate.mishap === 'cull' || fate.mishap === 'two culls') {
      const from = Math.min(board.length, free + Math.floor(((board.length - free) * fate.at) / 100))
      const to = Math.min(board.length, from + Math.ceil((board.length * fate.long) / 100))
      cull(from, to)
      if (fate.mishap === 'two culls') cull(Math.min(board.length, to + 2), Math.min(board.length, to + 3))
    }
  })
  const stockId = plan.order[0]?.stockId
  return {
    bought: luck.delivered ? 'all' : bought,
    sawn,
    miscuts,
    culls,
    yard:
      luck.yard === null || stockId === undefined
        ? []
        : [
            {
              stockId,
              left: luck.yard.left,
              price: luck.yard.price === null ? null : cents(luck.yard.price),
            },
          ],
    spares: luck.spares === 0 || stockId === undefined ? [] : [{ stockId, count: luck.spares }],
    refund: share(0),
  }
}
