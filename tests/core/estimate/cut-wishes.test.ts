import { describe, expect, test } from 'vitest'
import { estimate } from '../../../core/estimate.ts'
import type { Estimate } from '../../../core/estimate-types.ts'
import { DEMO_JOB, type JobStatement, type JsonValue, setField } from '../../../core/job/index.ts'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { feet } from '../../../core/units/index.ts'
import { whyJoints } from '../../../core/why-joints.ts'
import { wishPrice } from '../../../core/wish-price.ts'
import { loadEngine } from '../../../main/workers/lp/index.ts'

const engine = await loadEngine()
const known = new Map()

function wishing(path: string, value: JsonValue, statement: JobStatement = DEMO_JOB): JobStatement {
  return setField(statement, `cutting.${path}`, value)
}

function made(statement: JobStatement): Estimate {
  const result = estimate(statement, SAMPLE_BOOK, engine, { known })
  if (!result.ok) throw new Error(JSON.stringify(result.faults))
  return result.estimate
}

function planOf({ plans }: Estimate, size: string) {
  const found = plans.find(({ product }) => product.size === size)
  if (found === undefined) throw new Error(`no plan of ${size}`)
  return found.plan
}

function jointsOf({ plans }: Estimate, runId: string) {
  return plans.flatMap(({ plan }) => plan.joints).filter((joint) => joint.runId === runId)
}

const asItIs = made(DEMO_JOB)

describe('a run held in one piece', () => {
  const held = made(wishing('onePiece', 'beam b1'))

  test('has no joint, and the others are planned as cheaply as then can be', () => {
    expect(jointsOf(asItIs, 'run-beam-front').length).toBeGreaterThan(0)
    expect(jointsOf(held, 'run-beam-front')).toEqual([])
    expect(planOf(held, '2x12').status).toBe('proven optimal')
  })

  test('costs what the explanation of its joints says it would', () => {
    const joint = whyJoints(asItIs, SAMPLE_BOOK, engine, { only: (run) => run === 'run-beam-front' }).find(
      ({ kind }) => kind === 'made',
    )
    const price = wishPrice(DEMO_JOB, wishing('onePiece', 'Beam B1'), SAMPLE_BOOK, engine, { known })
    if (!price.ok || joint?.kind !== 'made') throw new Error('not priced')
    expect(price.lumber).toBe(joint.inOnePiece?.most)
    expect(price.lumber).toBe(planOf(held, '2x12').cost - planOf(asItIs, '2x12').cost)
    expect(price.within).toBe(0)
    // the other way round it saves as much
    const back = wishPrice(wishing('onePiece', 'Beam B1'), DEMO_JOB, SAMPLE_BOOK, engine, { known })
    expect(back).toMatchObject({ ok: true, lumber: -price.lumber })
  })

  test('says at each of its points that it is held', () => {
    const reasons = whyJoints(held, SAMPLE_BOOK, engine, { only: (run) => run === 'run-beam-front' })
    expect(reasons.map(({ kind, message }) => `${kind}: ${message}`)).toContain(
      'refused: No joint at post 2 (Beam B1): The run is held in one piece, as you wish.',
    )
  })

  test('that no board is long enough for is told, with what would help', () => {
    const price = wishPrice(DEMO_JOB, wishing('onePiece', 'Decking'), SAMPLE_BOOK, engine, { known })
    expect(price).toEqual({ ok: false, message: expect.stringMatching(/^Decking is .* 24 ft would do/) })
  })

  test('that the deck does not have is a fault at the field', () => {
    const result = estimate(wishing('onePiece', 'Beam B9'), SAMPLE_BOOK, engine)
    expect(result).toMatchObject({
      ok: false,
      faults: [{ path: 'cutting.onePiece', message: 'no run of this deck is called "Beam B9"' }],
    })
  })
})

describe('stock lengths', () => {
  test('to do without are not bought, of no other size', () => {
    const without = made(wishing('doWithout', '2x10: 14, 16'))
    const lengths = planOf(without, '2x10').order.map(({ length }) => length)
    expect(lengths).not.toContain(feet(14))
    expect(lengths).not.toContain(feet(16))
    expect(planOf(without, '5/4x6').order.map(({ length }) => length)).toContain(feet(16))
    expect(planOf(without, '2x10').cost).toBeGreaterThan(planOf(asItIs, '2x10').cost)
  })

  test('are bought no more often than wished', () => {
    const before = planOf(asItIs, '2x10').order.find(({ length }) => length === feet(14))?.count ?? 0
    expect(before).toBeGreaterThan(3)
    const few = made(wishing('atMost', '2x10: 3 of 14'))
    expect(planOf(few, '2x10').order.find(({ length }) => length === feet(14))?.count ?? 0).toBeLessThan(4)
  })

  test('all left out leave a sentence and no total', () => {
    const none = made(wishing('doWithout', '6x6: 8, 10, 12, 14, 16, 18, 20'))
    expect(none.pricing).toBeNull()
    expect(none.priceFaults[0]).toMatchObject({
      message: expect.stringContaining('is among those to do without'),
      fix: 'Take one of them back under "Lengths to do without".',
    })
  })
})

describe('other objectives', () => {
  test('fewest joints joints no framing that boards are long enough for, and costs no less', () => {
    const few = made(wishing('objective', 'fewest joints'))
    for (const size of ['2x10', '2x12'] as const) {
      expect(planOf(few, size).joints).toEqual([])
      expect(planOf(few, size).cost).toBeGreaterThanOrEqual(planOf(asItIs, size).cost)
    }
    expect(planOf(few, '2x12').why).toContain('Chosen for fewest joints')
  })

  test('least waste buys no more feet, fewest lengths no more lengths, than the cheapest order', () => {
    const feetOf = (each: Estimate) =>
      each.plans.flatMap(({ plan }) => plan.order).reduce((sum, line) => sum + line.count * line.length, 0)
    const lengthsOf = (each: Estimate) => each.plans.flatMap(({ plan }) => plan.order).length
    const small = setField(setField(DEMO_JOB, 'size.width', '12 ft 6 in'), 'size.depth', '9 ft')
    const cheapest = made(small)
    expect(feetOf(made(wishing('objective', 'least waste', small)))).toBeLessThanOrEqual(feetOf(cheapest))
    expect(lengthsOf(made(wishing('objective', 'fewest lengths', small)))).toBeLessThan(lengthsOf(cheapest))
  })

  test('least cost as both is what a job without a wish has', () => {
    const stated = wishing('objectiveThen', 'least cost', wishing('objective', 'least cost'))
    expect(made(stated).plans).toEqual(asItIs.plans)
  })
})
