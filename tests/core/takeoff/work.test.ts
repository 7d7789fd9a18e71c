import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import type { Takeoff } from '../../../core/takeoff/index.ts'

const DECK = { version: 1, size: { width: '16 ft', depth: '12 ft', height: '44 in' } } as const

function takeoffOf(statement: object): Takeoff {
  const made = design({ ...DECK, ...statement })
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value.takeoff
}

function good(takeoff: Takeoff, sku: string): number {
  return (takeoff.goods.find((one) => one.sku === sku)?.thousandths ?? 0) / 1000
}

function task(takeoff: Takeoff, rateId: string): number {
  return (takeoff.tasks.find((one) => one.rateId === rateId)?.thousandths ?? 0) / 1000
}

describe('clearing what is there', () => {
  // by hand: 100 sq ft of platform at 10 lb, 2 footings at 300 lb, 60 sq ft × 6 in of concrete at 150 lb a cu ft
  const cleared = takeoffOf({
    work: { oldDeck: 100, oldFootings: 2, slab: 60, slabThickness: '6 in', slabSteel: true },
  })

  it('weighs what leaves the place, and pays the tip by the ton', () => {
    expect(good(cleared, 'disposal-ton')).toBeCloseTo((100 * 10 + 2 * 300 + 60 * 0.5 * 150) / 2000, 2)
  })

  it('goes in trips of a trailer of 3,000 lb: 6,100 lb are three', () => {
    expect(task(cleared, 'haul-trip')).toBe(3)
  })

  it('breaks a 6 in slab in one and a half times the hours of the 4 in that the rate is for', () => {
    expect(task(cleared, 'demo-slab-mesh')).toBe(90)
    expect(task(cleared, 'demo-slab-plain')).toBe(0)
  })

  it('hauls loose soil at 75 lb a cubic foot where the job says so', () => {
    const hauled = takeoffOf({ work: { haulSpoil: true } })
    expect(good(hauled, 'disposal-ton')).toBeCloseTo((hauled.volumes.spoilLoose * 75) / 2000, 2)
  })
})

describe('what is put on and under the deck', () => {
  const finished = takeoffOf({ work: { groundCover: true, joistTape: true, coating: 2 } })

  // 16 × 12 ft: 192 sq ft
  it('fabric has 10 % for laps, gravel lies 2 in deep', () => {
    expect(good(finished, 'ground-fabric')).toBeCloseTo(192 * 1.1, 3)
    expect(good(finished, 'gravel')).toBeCloseTo(192 / 6, 3)
  })

  it('two coats of stain on 192 sq ft take 1.92 gallons at 200 sq ft each', () => {
    expect(good(finished, 'deck-stain')).toBeCloseTo(1.92, 3)
    expect(task(finished, 'stain-floor')).toBe(192)
  })

  it('a guard of wood is stained on both faces, 36 in high', () => {
    const guarded = takeoffOf({ work: { coating: 2 }, guard: { where: 'where needed' } })
    // 16 ft and twice 12 ft of guard
    expect(good(guarded, 'deck-stain')).toBeCloseTo((2 * (192 + 2 * 40 * 3)) / 200, 2)
    expect(task(guarded, 'stain-rail')).toBe(40)
  })
})

describe('delivery', () => {
  it('is counted by the weight of the order where the job asks for it', () => {
    const delivered = takeoffOf({ work: { delivery: true } })
    const pounds = delivered.weight.freshlyTreated + 80 * good(delivered, 'concrete-bag-80lb')
    expect(good(delivered, 'delivery-trip')).toBe(Math.ceil(pounds / 10_000))
    expect(good(takeoffOf({}), 'delivery-trip')).toBe(0)
  })
})

describe('hours under conditions', () => {
  const factorOf = (work: object, rateId: string, size: object = DECK.size) =>
    takeoffOf({ size, work }).tasks.find((one) => one.rateId === rateId)?.conditions?.factor

  it('are plain by default', () => {
    expect(takeoffOf({}).tasks.some((one) => one.conditions !== undefined)).toBe(false)
  })

  // factors: labour data of the project, common practice, no source
  it.each([
    [{ crew: 'alone' }, 'joist', 11_500],
    [{ crew: 'first-time owner' }, 'joist', 25_000],
    [{ crew: 'first-time owner' }, 'layout-ledger', 30_000],
    [{ access: 'slope, narrow gate or steps' }, 'joist', 11_500],
    [{ crew: 'handy owner', access: 'slope, narrow gate or steps' }, 'joist', 18_400],
    [{ weather: 'above 90 F or below 25 F' }, 'inspection', 11_500],
  ])('%j makes of %s %i ten-thousandths', (work, rateId, factor) => {
    expect(factorOf(work, rateId)).toBe(factor)
  })

  it('height counts over 8 ft, in the work above the ground, where it is asked for', () => {
    const high = { ...DECK.size, height: '9 ft' }
    expect(factorOf({ heightAndSize: true }, 'joist', high)).toBe(12_500)
    expect(factorOf({ heightAndSize: true }, 'dig-wide-medium', high)).toBeUndefined()
    expect(factorOf({ heightAndSize: true }, 'joist')).toBeUndefined()
    expect(factorOf({}, 'joist', high)).toBeUndefined()
  })
})

describe('decking laid dry or wet', () => {
  // 144 + 1 − 1/4 in to cover with 5-1/2 in boards: (144.75 + 0.125) ÷ 5.625 = 25.8; 144.75 ÷ 5.5 = 26.3
  it('takes 26 courses dry with 1/8 in gaps and 27 tight, which open to 5/32 in', () => {
    // 2.8 % of 5-1/2 in is 0.154 in, nearest 5/32 (USDA FPL-RP-489)
    expect(takeoffOf({}).decking).toEqual({
      dry: { courses: 26, gap: 4 },
      wet: { courses: 27, finalGap: 5 },
    })
  })
})
