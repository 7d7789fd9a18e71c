import { beforeAll, describe, expect, it } from 'vitest'
import { type CutJob, type Infeasible, type LpEngine, planCuts } from '../../../core/cutting/index.ts'
import { type Cents, feet, inches, ticks } from '../../../core/units/index.ts'
import { loadHighs } from '../../../main/workers/lp/index.ts'
import { jobOf, pointAt, runOf, stockOf } from './jobs.ts'

let engine: LpEngine
beforeAll(async () => {
  engine = await loadHighs()
})

function refusal(job: CutJob): Infeasible {
  const result = planCuts(job, engine)
  if (result.ok) throw new Error('a plan was found')
  return result.error
}

const twelve = stockOf({ 12: 1748 })

describe('a job that no order can do', () => {
  it('names a piece longer than any board, and the stock length that would do', () => {
    const error = refusal(jobOf({ stock: twelve, pieces: [{ id: 'j', mark: 'J7', length: inches(145) }] }))
    expect(error.subject).toBe('J7')
    expect(error.message).toContain(`12'-1"`)
    expect(error.help).toContain('14 ft')
    expect(error.help).toContain('shorter by 1"')
  })

  it('counts the end trims against the board', () => {
    const error = refusal(
      jobOf({ stock: twelve, endTrim: inches(0.5), pieces: [{ id: 'j', mark: 'J7', length: feet(12) }] }),
    )
    expect(error.message).toContain(`11'-11"`)
    expect(error.help).toContain('14 ft')
  })

  it('names a run with too wide a gap between joints, the stock and the bearing that would help', () => {
    const error = refusal(
      jobOf({ stock: twelve, runs: [runOf('front beam', 2, feet(22), [pointAt(feet(6))])] }),
    )
    expect(error.subject).toBe('front beam')
    expect(error.message).toContain(`between 6'-0" and 22'-0"`)
    expect(error.help).toContain('16 ft')
    expect(error.help).toContain('post or another bearing')
  })

  it('says so where a run may not have the joints that its stock asks for', () => {
    const error = refusal(
      jobOf({ stock: twelve, runs: [runOf('rim', 1, feet(22), [pointAt(feet(11))], { maxJoints: 0 })] }),
    )
    expect(error.subject).toBe('rim')
    expect(error.help).toContain('22 ft')
    expect(error.help).toContain('more joints allowed')
  })

  it('says so where a required stagger leaves too few joint points', () => {
    const error = refusal(
      jobOf({ stock: twelve, runs: [runOf('beam', 2, feet(22), [pointAt(feet(11), { cap: 1 })])] }),
    )
    expect(error.subject).toBe('beam')
    expect(error.help).toContain('One more place for a joint')
  })

  it('says which piece finds no board where the yard has too few', () => {
    const few = twelve.map((option) => ({ ...option, supply: 1 }))
    const pieces = ['J1', 'J2'].map((mark) => ({ id: mark, mark, length: feet(10) }))
    const error = refusal(jobOf({ stock: few, pieces }))
    expect(error.subject).toBe('J1')
    expect(error.message).toContain('do not suffice')
    expect(error.help).toContain('More boards')
  })

  it('says so where no stock is left at all', () => {
    const error = refusal(
      jobOf({ stock: twelve, onlyStock: [], pieces: [{ id: 'j', mark: 'J1', length: feet(1) }] }),
    )
    expect(error.message).toContain('No board can be had')
  })

  it('says so where the pieces need more different lengths than are allowed', () => {
    const stock = stockOf({ 8: 1000, 12: 1748 }).map((option) => ({ ...option, supply: 1 }))
    const pieces = ['J1', 'J2'].map((mark) => ({ id: mark, mark, length: feet(8) }))
    expect(refusal(jobOf({ stock, pieces, maxLengths: 1 })).message).toContain('1 different stock length')
  })

  it('says so where no order keeps neighbours apart', () => {
    const run = runOf('decking', 3, feet(22), [pointAt(feet(11))], { neighboursApart: true })
    expect(refusal(jobOf({ stock: twelve, runs: [run] })).subject).toBe('decking')
  })

  it('asks for nothing where nothing is to be cut', () => {
    const result = planCuts(jobOf({ stock: [], endTrim: ticks(0), handling: 0 as Cents }), engine)
    expect(result).toMatchObject({ ok: true, value: { cost: 0, boards: [], status: 'proven optimal' } })
  })
})
