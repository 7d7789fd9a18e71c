import { expect, test } from 'vitest'
import { type DayState, replan } from '../../../core/cutting/day/index.ts'
import { type CutJob, planCuts } from '../../../core/cutting/index.ts'
import { cents, share, ticks } from '../../../core/units/index.ts'
import { engine } from '../../fixtures/engine.ts'

test('an offcut of value gives way to a cheaper board that the yard has again', () => {
  const piece = (id: string, length: number) => ({ id, mark: id, length: ticks(length) })
  const job: CutJob = {
    id: 'job',
    label: 'job',
    kerf: ticks(2),
    endTrim: ticks(0),
    stock: [
      { id: 'short', length: ticks(10), price: cents(1), supply: 1, offcut: false },
      { id: 'kept', length: ticks(16), price: cents(23), supply: null, offcut: true },
    ],
    pieces: [piece('p0', 4), piece('p1', 11), piece('p2', 5), piece('p3', 4)],
    runs: [],
    handling: cents(0),
    perCut: cents(0),
    keep: null,
    objectives: ['least cost'],
  }
  const plan = planCuts(job, engine)
  if (!plan.ok) throw new Error(plan.error.message)
  const bought = plan.value.boards.find((board) => board.stockId === 'short')
  const day: DayState = {
    bought: [],
    sawn: [{ board: bought?.number ?? 0, pieces: 'all' }],
    miscuts: [],
    culls: [],
    yard: [{ stockId: 'short', left: null, price: null }],
    spares: [],
    refund: share(0),
  }
  const again = replan(job, plan.value, day, engine)
  if (!again.ok) throw new Error(JSON.stringify(again.error))
  // by hand: two pieces of 4 fit a short board for 1 cent, and the 11 needs an offcut of 23
  expect(again.value.rest?.plan.cost).toBe(24)
  expect(again.value.buy).toMatchObject([{ stockId: 'short', count: 1, amount: 1 }])
})
