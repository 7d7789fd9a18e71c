import { beforeAll, describe, expect, it } from 'vitest'
import type { LpEngine } from '../../core/cutting/index.ts'
import { estimate } from '../../core/estimate.ts'
import { countJoints } from '../../core/fit.ts'
import { loadHighs } from '../../main/workers/lp/highs.ts'
import { workedJob } from '../fixtures/worked-job.ts'
import { WORKED_PRICES } from '../fixtures/worked-prices.ts'

/**
 * Least cost of the lumber of the worked job in cents, boards and joints, at five widths: found by an independent
 * method (integer programs solved to a gap of 0), not by this program.
 */
const leastCosts = [
  {
    width: '19 ft 10 in',
    joints: 0,
    cost: { '2x10': 41_798, '2x12': 8_438, '6x6': 3_975, '5/4x6': 80_910 },
    all: 135_121,
  },
  {
    width: '20 ft',
    joints: 0,
    cost: { '2x10': 41_798, '2x12': 8_438, '6x6': 3_975, '5/4x6': 84_858 },
    all: 139_069,
  },
  {
    width: '22 ft',
    joints: 4,
    cost: { '2x10': 46_690, '2x12': 10_846, '6x6': 3_975, '5/4x6': 92_050 },
    all: 153_561,
  },
  {
    width: '23 ft 6 in',
    joints: 5,
    cost: { '2x10': 49_616, '2x12': 11_597, '6x6': 3_975, '5/4x6': 97_776 },
    all: 162_964,
  },
  {
    width: '24 ft',
    joints: 4,
    cost: { '2x10': 49_649, '2x12': 11_597, '6x6': 3_975, '5/4x6': 101_408 },
    all: 166_629,
  },
] as const

let engine: LpEngine
beforeAll(async () => {
  engine = await loadHighs()
})

describe.each(leastCosts)('the worked job at $width', ({ width, joints, cost, all }) => {
  it('is ordered at the least cost, class by class, and proves it', () => {
    const result = estimate(workedJob(width), WORKED_PRICES, engine)
    if (!result.ok) throw new Error(JSON.stringify(result.faults))
    const { plans, takeoff } = result.estimate
    expect(Object.fromEntries(plans.map(({ product, plan }) => [product.size, plan.cost]))).toEqual(cost)
    expect(plans.reduce((sum, { plan }) => sum + plan.cost, 0)).toBe(all)
    expect(plans.map(({ plan }) => plan.status)).toEqual(plans.map(() => 'proven optimal'))
    expect(countJoints(takeoff.runs, plans).framing).toBe(joints)
  })
})

it('finds unasked that two inches less than 20 ft save $39.48 of lumber, for every course then comes whole', () => {
  const result = estimate(workedJob('20 ft'), WORKED_PRICES, engine)
  if (!result.ok) throw new Error(JSON.stringify(result.faults))
  const found = result.estimate.nearMisses.find((miss) => miss.subject === 'Decking')
  expect(found?.over).toBe(64)
  expect(found?.suggestion).toEqual({
    field: 'size.width',
    value: 19 * 384 + 10 * 32,
    saves: 3948,
    proven: true,
  })
})
