import { expect, test } from 'vitest'
import { auditPlan, type CutJob, planCuts } from '../../../core/cutting/index.ts'
import { cents, ticks } from '../../../core/units/index.ts'
import { engine } from '../../fixtures/engine.ts'

test('a window over one point that allows no joint backs the price that its point is given', () => {
  const member = (id: string) => ({ id, mark: id })
  const run = { minSupports: 0, minPiece: ticks(0), maxJoints: null, neighboursApart: false }
  const job: CutJob = {
    id: 'job',
    label: 'job',
    kerf: ticks(0),
    endTrim: ticks(0),
    stock: [
      { id: 'a', length: ticks(11), price: cents(13), supply: null, offcut: false },
      { id: 'left', length: ticks(7), price: cents(0), supply: 1, offcut: true },
    ],
    pieces: [],
    runs: [
      {
        ...run,
        id: 'r',
        label: 'r',
        members: [member('r2')],
        length: ticks(8),
        points: [{ at: ticks(3), label: 'at 3', cost: cents(0), lap: ticks(0), cap: null, excess: null }],
        supports: [ticks(0), ticks(3), ticks(8)],
        windows: [{ points: [0], cap: 0 }],
      },
      { ...run, id: 's', label: 's', members: [member('s1')], length: ticks(3), points: [], supports: [] },
    ],
    handling: cents(0),
    perCut: cents(0),
    keep: null,
    objectives: ['least cost'],
  }
  const plan = planCuts(job, engine)
  if (!plan.ok) throw new Error(plan.error.message)
  expect(plan.value).toMatchObject({ cost: 13, bound: 13, joints: [], status: 'proven optimal' })
  expect(auditPlan(job, plan.value)).toEqual([])
})
