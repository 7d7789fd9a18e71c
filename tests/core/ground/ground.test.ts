import { describe, expect, it } from 'vitest'
import { designJob } from '../../../core/design.ts'
import { costDesign, estimate } from '../../../core/estimate.ts'
import type { Design } from '../../../core/estimate-types.ts'
import {
  concreteOrder,
  footingSchedule,
  foundOff,
  measuredPosts,
  soilCautions,
  tubePlan,
} from '../../../core/ground/index.ts'
import { DEMO_JOB, type Job, setField } from '../../../core/job/index.ts'
import { type PriceBook, SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { feet, inches } from '../../../core/units/index.ts'
import { engine } from '../../fixtures/engine.ts'
import { heronLane } from '../../fixtures/heron-lane.ts'

function designed(job: Job): Design {
  const made = designJob(job, [])
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value
}

const planned = designed(heronLane)

describe('the hole schedule', () => {
  const rows = footingSchedule(planned)

  it('gives each hole its levels, its concrete and its load', () => {
    expect(rows.map(({ number }) => number)).toEqual([1, 2, 3, 4])
    const second = rows[1]
    if (second === undefined) throw new Error('no second hole')
    // by hand: a tube of 12 in, 32 in long, on a base of 20 in, 8 in thick, at 150 lb per cu ft
    expect(second.cubicFeet).toBeCloseTo((Math.PI / 4) * (1 * (32 / 12) + (20 / 12) ** 2 * (8 / 12)), 9)
    expect(second.carries?.ownWeight).toBeCloseTo(second.cubicFeet * 150, 6)
    expect(second.bottomLevel).toBe(second.groundLevel - inches(36))
    // by hand: 40 + 10 psf on its area, over a circle 20 in across
    const { carries } = second
    if (carries === null) throw new Error('no load')
    expect(carries.load).toBeCloseTo(carries.area * 50, 9)
    expect(carries.pressure).toBeCloseTo(carries.load / ((Math.PI / 4) * (20 / 12) ** 2), 6)
    expect(carries.pressureWithOwnWeight).toBeGreaterThan(carries.pressure)
  })

  it('shares out the deck beyond the middle of the joists among the posts', () => {
    const area = rows.reduce((sum, row) => sum + (row.carries?.area ?? 0), 0)
    // by hand: from the middle between ledger face and beam to the rim: (162 − 24 − 1.5) ÷ 2 + 24 in, 23.5 ft long
    expect(area).toBeCloseTo((((162 - 24 - 1.5) / 2 + 24) / 12) * 23.5, 6)
  })
})

describe('form tubes', () => {
  it('come from the lengths that are sold: two of 32 in are not in one of 4 ft', () => {
    const tubes = tubePlan(planned, SAMPLE_BOOK, engine)
    if (tubes === null || !tubes.ok) throw new Error('no plan')
    // by hand: four pieces of 4 ft at $3.85 a foot
    expect([tubes.value.plan.boards.length, tubes.value.plan.cost, tubes.value.plan.status]).toEqual([
      4,
      4 * 1540,
      'proven optimal',
    ])
  })

  it('share a piece where they are short, and are butted where they are long', () => {
    const shallow = { ...heronLane, site: { ...heronLane.site, frostDepth: inches(24) } }
    const deep = { ...heronLane, site: { ...heronLane.site, frostDepth: inches(60) } }
    const boards = (job: Job) => {
      const tubes = tubePlan(designed(job), SAMPLE_BOOK, engine)
      if (tubes === null || !tubes.ok) throw new Error('no plan')
      return [tubes.value.plan.boards.length, tubes.value.butted]
    }
    // 24 + 4 − 8 = 20 in: two from a piece; 60 + 4 − 8 = 56 in: a piece and 8 in of another, which holds all four
    expect(boards(shallow)).toEqual([2, false])
    expect(boards(deep)).toEqual([5, true])
  })
})

describe('concrete', () => {
  const without: PriceBook = {
    ...SAMPLE_BOOK,
    goods: SAMPLE_BOOK.goods.filter(({ sku }) => sku !== 'concrete-ready-mix'),
  }
  const wide = designed({
    ...heronLane,
    ground: { ...heronLane.ground, base: inches(40), baseThickness: inches(20) },
  })

  it('is bags where a book has no ready-mix', () => {
    expect(concreteOrder(planned, without)).toMatchObject({
      readyMix: null,
      cheaper: 'bags',
      bought: 'bags',
      breakEven: null,
    })
  })

  it('costs what its bags and hours, or its yards, fee and hours, cost', () => {
    const { bags, readyMix, breakEven } = concreteOrder(planned, SAMPLE_BOOK)
    // by hand, at the sample prices: 27 bags at $6.42; 14.196 cu ft at 0.18 h and $60 an hour
    expect([bags.count, bags.material, bags.hours, bags.labour]).toEqual([27, 17_334, 2_555, 15_330])
    // 15.6 cu ft with waste are 0.58 cu yd, a yard is the least: $186, nine missing yards at $45, 0.7 h of two at $60
    expect(readyMix).toMatchObject({
      yards: 1_000,
      missing: 9_000,
      shortLoadFee: 40_500,
      material: 18_600 + 40_500,
      labour: 8_400,
      total: 18_600 + 40_500 + 8_400,
    })
    expect(breakEven).toBeGreaterThan(27)
  })

  it('is cheaper by the truck beyond the break-even, and by bags below it', () => {
    const small = concreteOrder(planned, SAMPLE_BOOK)
    const large = concreteOrder(wide, SAMPLE_BOOK)
    expect([small.cheaper, large.cheaper]).toEqual(['bags', 'ready-mix'])
    expect(small.breakEven).toBeGreaterThan(small.cubicFeet)
    expect(large.breakEven).toBeLessThanOrEqual(large.cubicFeet)
  })
})

/** Cost of a job with all its lumber. */
function costOf(job: Job): number {
  const { pricing } = costDesign(designed(job), SAMPLE_BOOK, engine)
  return pricing?.totals.cost ?? 0
}

describe('a hole that was found off its place', () => {
  const options = (dx: number, dy: number, barred = false) =>
    new Map(
      foundOff(planned, SAMPLE_BOOK, engine, { post: 2, dx: inches(dx), dy: inches(dy), barred }).map(
        (one) => [one.kind, one],
      ),
    )

  it('serves where the beam still lies on the post: a 6x6 has 1-1/4 in beside two plies', () => {
    const kept = options(3, 1.25).get('keep')
    expect(kept).toMatchObject({ cannot: '', edit: { 'ground.moved': `2: 3"` } })
    expect(kept?.checks.every(({ id }) => /front|footing/.test(id))).toBe(true)
    expect(kept?.checks.map(({ id }) => id)).toContain('beam-span-front')
    expect(options(3, 2).get('keep')?.cannot).toContain(`3/4"`)
  })

  it('is read again from what it states', () => {
    const kept = options(-3, 0).get('keep')
    const statement = setField(DEMO_JOB, 'ground.moved', kept?.edit?.['ground.moved'] ?? '')
    const result = estimate(statement, SAMPLE_BOOK, engine)
    if (!result.ok) throw new Error(JSON.stringify(result.faults))
    const { posts } = result.estimate.frame
    expect(posts[1]?.x).toBe((planned.frame.posts[1]?.x ?? 0) - inches(3))
  })

  it('takes a new anchor where its pier is wide enough, and is dug over or anew where not', () => {
    // by hand: the post's corner 3.89 in from its centre, 1 in beside it, in a tube of 6 in radius: 1.1 in to spare
    const wide = designed({
      ...heronLane,
      ground: { ...heronLane.ground, base: inches(28), baseThickness: inches(10) },
    })
    const off = { post: 2, dx: inches(0), dy: inches(1), barred: false }
    const drilled = foundOff(wide, SAMPLE_BOOK, engine, off).find(
      ({ kind }) => kind === 'drill the anchor anew',
    )
    expect([drilled?.cannot, (drilled?.cost ?? 0) > 389]).toEqual(['', true])
    // its own base is used to 95 %: an inch off loads the edge by 8 ÷ 20 more
    expect(options(0, 1).get('drill the anchor anew')?.cannot).toContain('psf on soil')
    expect(options(0, 4).get('drill the anchor anew')?.cannot).toContain('more concrete')
    expect(options(0, 4).get('shift the base')?.cost).toBeGreaterThan(0)
    expect(options(0, 4).get('dig again')?.cannot).toContain('undisturbed ground')
    expect(options(0, 40).get('dig again')?.cost).toBeGreaterThan(
      options(0, 4).get('shift the base')?.cost ?? 0,
    )
    expect(options(0, 40).get('shift the base')?.cannot).toContain('another hole')
  })

  it('leaves only the beam where the place is barred', () => {
    const barred = options(8, 0, true)
    expect([barred.get('shift the base')?.cost, barred.get('dig again')?.cost]).toEqual([null, null])
    expect(barred.get('move along the beam')).toMatchObject({
      cannot: '',
      edit: { 'ground.moved': `2: 8"`, 'ground.found': `2: move along the beam, 8" right, rock` },
    })
  })

  it('costs, whichever way is chosen, what the job then costs more', () => {
    const before = costOf(heronLane)
    for (const [dx, dy] of [
      [3, 1],
      [0, 40],
    ] as const) {
      for (const { kind, cost, edit } of options(dx, dy).values()) {
        if (edit === null || cost === null) continue
        const ground = {
          ...heronLane.ground,
          found: edit['ground.found'],
          moved: edit['ground.moved'],
        }
        expect([kind, costOf({ ...heronLane, ground }) - before]).toEqual([kind, cost])
      }
    }
  })

  it('is no question where the plan has no such post', () => {
    expect(
      foundOff(planned, SAMPLE_BOOK, engine, { post: 9, dx: inches(1), dy: inches(0), barred: false }),
    ).toEqual([])
  })
})

describe('posts measured at the piers', () => {
  const measured = (text: string) => {
    const result = estimate(setField(DEMO_JOB, 'ground.measured', text), SAMPLE_BOOK, engine)
    if (!result.ok) throw new Error(JSON.stringify(result.faults))
    return {
      found: measuredPosts(result.estimate, SAMPLE_BOOK, engine),
      drawn: result.estimate.frame.posts[0]?.length ?? 0,
    }
  }

  it('are cut from what was ordered as long as it is enough', () => {
    const { drawn } = measured('')
    expect(measured('').found).toBeNull()
    expect(measured(`1: ${drawn / 32 + 2} in`).found).toMatchObject({
      enough: true,
      posts: [{ post: 1, off: inches(2) }],
    })
    // ordered is one 8 ft post; 12 ft needs the 12 ft one at $59.60 of the sample prices
    const short = measured('1: 12 ft').found
    expect(short).toMatchObject({ enough: false, cost: 5960 })
    expect(short?.message).toContain('Buy 1 × 12 ft more, $59.60')
    expect(short?.boards.flatMap(({ posts }) => posts)).toHaveLength(4)
    expect(short?.boards.find(({ more }) => more)?.posts).toEqual([{ mark: 'P1', length: feet(12) }])
    expect(measured('1: 19 ft').found).toMatchObject({ enough: false, boards: [] })
  })
})

describe('cautions of a soil', () => {
  it('name frost where the ground holds water, and utilities always', () => {
    const of = (soil: Job['site']['soil']) =>
      soilCautions({ ...heronLane, site: { ...heronLane.site, soil } }).join(' ')
    expect(of('clay or silt')).toContain('freezes')
    expect(of('sand')).not.toContain('freezes')
    for (const soil of ['unknown', 'clay or silt', 'sand', 'sandy gravel or gravel', 'rock'] as const)
      expect(of(soil)).toContain('utilities')
  })
})
