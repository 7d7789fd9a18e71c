import { describe, expect, it } from 'vitest'
import type { CutPlan } from '../../../core/cutting/index.ts'
import { estimate } from '../../../core/estimate.ts'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { feet, inches } from '../../../core/units/index.ts'
import { engine, estimateOf } from '../../fixtures/engine.ts'
import { smallJob } from '../../fixtures/worked-job.ts'

describe('the whole estimate', () => {
  it('is the same bytes for the same job and prices, whatever was estimated before', () => {
    const first = JSON.stringify(estimate(smallJob(), SAMPLE_BOOK, engine))
    estimate(smallJob('12 ft 7 in'), SAMPLE_BOOK, engine)
    expect(JSON.stringify(estimate(smallJob(), SAMPLE_BOOK, engine))).toBe(first)
  })

  it('is plain data: nothing is lost on the way through JSON', () => {
    const made = estimate(smallJob(), SAMPLE_BOOK, engine)
    expect(JSON.parse(JSON.stringify(made))).toEqual(made)
  })

  it('lists the faults of a job that is not valid, and prices nothing', () => {
    const result = estimate({ version: 1, size: { width: '-3 ft', dept: '8 ft' } }, SAMPLE_BOOK, engine)
    expect(result.ok).toBe(false)
    if (!result.ok) expect(result.faults.map((fault) => fault.path)).toEqual(['size.width', 'size.dept'])
  })

  it('shows no total where a product is not in the book, but the frame, the checks and the other plans', () => {
    const lumber = SAMPLE_BOOK.lumber.filter((entry) => entry.product.size !== '5/4x6')
    const made = estimateOf(smallJob(), { ...SAMPLE_BOOK, lumber })
    expect(made.pricing).toBeNull()
    expect(made.priceFaults.map((fault) => fault.subject)).toEqual(['5/4x6 Southern Pine No.2, treated'])
    expect(made.plans.length).toBeGreaterThan(0)
    expect(made.checks.length).toBeGreaterThan(0)
    expect(made.fit.message).toContain('Not known')
  })
})

describe('how the width sits on stock', () => {
  it('fits with decking where no run and no course has a joint', () => {
    const { fit, plans } = estimateOf(smallJob('11 ft 10 in'), SAMPLE_BOOK)
    expect(plans.flatMap(({ plan }) => plan.joints)).toEqual([])
    expect(fit).toMatchObject({ fitsStock: true, fitsWithDecking: true })
  })

  it('fits without the decking where only the courses are too long', () => {
    // 20 ft framing from whole 20s; courses of 20 ft 2 in from no board that the sample yard has
    const { fit } = estimateOf(smallJob('20 ft'), SAMPLE_BOOK)
    expect(fit).toMatchObject({ fitsStock: true, fitsWithDecking: false })
    expect(fit.message).toContain('the decking has')
  })
})

describe('near misses', () => {
  it('call out courses two inches over a 12 ft board, with what the next length costs and the size that drops it', () => {
    const { nearMisses } = estimateOf(smallJob('12 ft'), SAMPLE_BOOK)
    const courses = nearMisses.find((miss) => miss.subject === 'Decking')
    expect(courses).toMatchObject({ length: feet(12) + inches(2), stock: feet(12), over: inches(2) })
    expect(courses?.suggestion?.field).toBe('size.width')
    expect(courses?.suggestion?.value).toBe(feet(12) - inches(2))
    expect(courses?.message).toContain('At 11\'-10" wide the lumber costs')
  })

  it('save what planning the smaller deck shows: the lumber of both, planned apart, differs by it', () => {
    const { nearMisses, plans } = estimateOf(smallJob('12 ft'), SAMPLE_BOOK)
    const smaller = estimateOf(smallJob('11 ft 10 in'), SAMPLE_BOOK)
    const lumber = (of: typeof plans) => of.reduce((sum, { plan }) => sum + plan.cost, 0)
    expect(nearMisses[0]?.suggestion?.saves).toBe(lumber(plans) - lumber(smaller.plans))
  })

  it('say nothing of lengths that fit, or are more than two inches over', () => {
    expect(estimateOf(smallJob('11 ft 10 in'), SAMPLE_BOOK).nearMisses).toEqual([])
    expect(
      estimateOf(smallJob('12 ft 3 in'), SAMPLE_BOOK).nearMisses.map((miss) => miss.subject),
    ).not.toContain('Decking')
  })

  it('follow the depth where joists just miss, as the 12 ft board for 12 ft 1 in', () => {
    // joists are depth − 3 in: two inches over 8 ft at 8 ft 5 in
    const job = smallJob('11 ft 10 in', {
      size: { width: '11 ft 10 in', depth: '8 ft 5 in', height: '30 in' },
    })
    const joists = estimateOf(job, SAMPLE_BOOK).nearMisses.find((miss) => miss.subject === 'joist')
    expect(joists).toMatchObject({ length: feet(8) + inches(2), stock: feet(8), over: inches(2) })
    expect(joists?.suggestion).toMatchObject({ field: 'size.depth', value: feet(8) + inches(3) })
  })
})

describe('an estimate that is ended at once', () => {
  it('is made of the plans told by then, whatever smaller sizes were tried beside it', () => {
    const statement = smallJob('12 ft')
    const told = new Map<string, CutPlan>()
    const whole = estimate(statement, SAMPLE_BOOK, engine, { onPlan: (plan) => told.set(plan.jobId, plan) })
    const ended = estimate(statement, SAMPLE_BOOK, engine, { plans: told, stop: () => true })
    expect(whole.ok && whole.estimate.nearMisses.length).toBeGreaterThan(0)
    expect(ended.ok && ended.estimate.plans).toEqual(whole.ok && whole.estimate.plans)
    expect(ended.ok && ended.estimate.pricing).toEqual(whole.ok && whole.estimate.pricing)
  })

  it('calls a cap rail one, not by the id of its member', () => {
    // a cap of 12 ft 1 in along the front of a deck 12 ft 2 in wide
    const job = smallJob('12 ft 2 in', { guard: { where: 'all open edges' } })
    const caps = estimateOf(job, SAMPLE_BOOK).nearMisses.filter(({ length }) => length === inches(145))
    expect(caps.map(({ subject }) => subject)).toEqual(['guard cap'])
  })

  it('calls near misses out without a size that would drop them, which is not planned any more', () => {
    const ended = estimate(smallJob('12 ft'), SAMPLE_BOOK, engine, { stop: () => true })
    const misses = ended.ok ? ended.estimate.nearMisses : []
    expect(misses.map(({ suggestion }) => suggestion)).toEqual(misses.map(() => null))
    expect(misses.length).toBeGreaterThan(0)
  })
})

describe('what is left out', () => {
  const scopeOf = (scope: object) =>
    estimateOf(smallJob('11 ft 10 in', { scope: scope as never }), SAMPLE_BOOK)

  it('names what estimates forget, each priced or said not to be included', () => {
    const { scope } = scopeOf({ permit: { allowance: '$210' } })
    expect(scope.map((line) => line.topic)).toEqual([
      'stairs',
      'guard',
      'taking away',
      'hauling',
      'delivery',
      'permit',
      'marking',
      'flashing',
      'fasteners',
      'hire',
      'clean-up',
    ])
    expect(scope.find((line) => line.topic === 'permit')).toMatchObject({ state: 'priced', amount: 21_000 })
    for (const line of scope) {
      expect(line.message).toMatch(
        line.state === 'priced' ? /^In the price, at a cost of \$/ : /not in this price/,
      )
    }
  })

  it('counts the marking of buried services by its own field, or a sum that stands instead of it', () => {
    const marking = (job: object) =>
      estimateOf(smallJob('11 ft 10 in', job as never), SAMPLE_BOOK).scope.find((l) => l.topic === 'marking')
    expect(marking({})).toMatchObject({ state: 'not included' })
    // by hand: half an hour of one worker, at the book's wage
    expect(marking({ work: { markServices: true } })).toMatchObject({
      state: 'priced',
      amount: Math.round(0.5 * SAMPLE_BOOK.labourRate),
    })
    const stated = { work: { markServices: true }, scope: { marking: { allowance: '$40' } } }
    expect(marking(stated)).toMatchObject({ state: 'priced', amount: 4_000 })
  })

  it('gives flashing and fasteners the sum of their lines', () => {
    const { scope, pricing } = scopeOf({})
    const fasteners = pricing?.lines
      .filter((line) => line.group === 'fasteners')
      .reduce((s, line) => s + line.amount, 0)
    expect(scope.find((line) => line.topic === 'fasteners')?.amount).toBe(fasteners)
    expect(scope.find((line) => line.topic === 'flashing')?.amount).toBeGreaterThan(0)
  })

  it('says that a topic is included without a sum', () => {
    const { scope } = scopeOf({ delivery: { included: true } })
    const delivery = scope.find((line) => line.topic === 'delivery')
    expect(delivery).toMatchObject({ state: 'not included', amount: 0 })
    expect(delivery?.message).toContain('states no sum')
  })

  it('does not miss flashing on a freestanding deck', () => {
    const job = smallJob('11 ft 10 in', { site: { attachment: 'freestanding' } })
    const flashing = estimateOf(job, SAMPLE_BOOK).scope.find((line) => line.topic === 'flashing')
    expect(flashing?.message).toBe('A freestanding deck has no ledger to flash.')
  })
})
