import { beforeAll, describe, expect, it } from 'vitest'
import { auditPlan, type LpEngine, planCuts } from '../../../core/cutting/index.ts'
import { loadHighs } from '../../../main/workers/lp/index.ts'
import { type DeckClass, deckJob } from './deck-of-four-posts.ts'

/**
 * Least cost of the lumber in cents at five widths, worked by an independent method (integer programs with gap 0,
 * not this program) for the project's worked example. Columns: width in inches, then a class each, framing joints.
 */
const LEAST: readonly [width: number, costs: Readonly<Record<DeckClass, number>>, framingJoints: number][] = [
  [238, { '2x10': 41_798, '2x12': 8_438, '6x6': 3_975, '5/4x6': 80_910 }, 0],
  [240, { '2x10': 41_798, '2x12': 8_438, '6x6': 3_975, '5/4x6': 84_858 }, 0],
  [264, { '2x10': 46_690, '2x12': 10_846, '6x6': 3_975, '5/4x6': 92_050 }, 4],
  [282, { '2x10': 49_616, '2x12': 11_597, '6x6': 3_975, '5/4x6': 97_776 }, 5],
  [288, { '2x10': 49_649, '2x12': 11_597, '6x6': 3_975, '5/4x6': 101_408 }, 4],
]

let engine: LpEngine
beforeAll(async () => {
  engine = await loadHighs()
})

describe.each(LEAST)('a deck %d inches wide', (width, costs, framingJoints) => {
  it.each(Object.entries(costs) as [DeckClass, number][])(
    '%s costs %d cents at the least, proven and audited',
    (product, least) => {
      const job = deckJob(product, width)
      const result = planCuts(job, engine)
      expect(result.ok && auditPlan(job, result.value)).toEqual([])
      expect(result).toMatchObject({
        ok: true,
        value: { cost: least, bound: least, status: 'proven optimal' },
      })
    },
  )

  it(`has ${framingJoints} framing joints in its cheapest frame`, () => {
    const joints = (['2x10', '2x12'] as const).map((product) => {
      const result = planCuts(deckJob(product, width), engine)
      return result.ok ? result.value.joints.length : Number.NaN
    })
    expect(joints.reduce((sum, count) => sum + count, 0)).toBe(framingJoints)
  })
})
