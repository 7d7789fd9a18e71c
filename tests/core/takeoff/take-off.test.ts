import { describe, expect, it } from 'vitest'
import { frameDeck } from '../../../core/frame/index.ts'
import type { Job } from '../../../core/job/index.ts'
import { layOut } from '../../../core/layout/index.ts'
import { type Takeoff, takeOff } from '../../../core/takeoff/index.ts'
import { inches, psf } from '../../../core/units/index.ts'
import { heronLane } from '../../fixtures/heron-lane.ts'

function takeoffOf(job: Job): Takeoff {
  const laid = layOut(job)
  if (!laid.ok) throw new Error(JSON.stringify(laid.error))
  const framed = frameDeck(job, laid.value)
  if (!framed.ok) throw new Error(JSON.stringify(framed.error))
  return takeOff(job, framed.value)
}
const site = (change: Partial<Job['site']>): Job => ({ ...heronLane, site: { ...heronLane.site, ...change } })
const ground = (change: Partial<Job['ground']>): Job => ({
  ...heronLane,
  ground: { ...heronLane.ground, ...change },
})
const framed = (change: Partial<Job['frame']>): Job => ({
  ...heronLane,
  frame: { ...heronLane.frame, ...change },
})
const goodOf = (job: Job, sku: string) => takeoffOf(job).goods.find((good) => good.sku === sku)
const countOf = (job: Job, sku: string) => (goodOf(job, sku)?.thousandths ?? 0) / 1000
const workOf = (job: Job, rateId: string) =>
  (takeoffOf(job).tasks.find((task) => task.rateId === rateId)?.thousandths ?? 0) / 1000

describe('ledger fasteners', () => {
  // IRC 2021 Table R507.9.1.3(1), 40 psf, joists to 12 ft: lag 15, bolt 29, bolt through 1 in 24 in on centre;
  // on 279 in from 2 in to 277 in, and a second one at either end. Joists at 16 in leave free, 2-1/4 in off their faces,
  // 2 to 11-1/2, 17-1/2 to 27-1/2 and so on every 16 in, and 273-1/2 to 277; each is set as far on as it reaches:
  // at 15 in 2, 11-1/2, 26-1/2, 41-1/2 ... 161-1/2, 171-1/2, 186-1/2 ... 276-1/2, 277: 21 places
  it.each<[string, Job, string, number]>([
    ['lags every 15 in', heronLane, 'ledger-lag-1/2', 23],
    ['bolts every 29 in', site({ ledgerFastener: 'bolt' }), 'ledger-bolt-1/2', 13],
    [
      'bolts through 1 in every 24 in',
      site({ ledgerFastener: 'bolt', sheathing: 'up to 1 in' }),
      'ledger-bolt-1/2',
      15,
    ],
  ])('are counted from the table: %s', (_what, job, sku, count) => {
    expect(countOf(job, sku)).toBe(count)
  })

  it('no table covers are counted at its closest spacing, and the reason says that a designer must set them', () => {
    const lags = goodOf(site({ sheathing: 'up to 1 in' }), 'ledger-lag-1/2')
    // 7 in: 2, 9, 11-1/2, then three in each of 16 bays, 274-1/2, 277: 53 places
    expect(lags?.thousandths).toBe(55_000)
    expect(lags?.cause.rule).toContain('licensed designer')
  })

  it('follow the snow where it is more than the live load', () => {
    // 60 psf, 12 ft: lag 11 in; 2, 11-1/2, then 22-1/2, 33-1/2, 43-1/2 and so on for each two of 16 bays, 277: 27 places
    expect(countOf(site({ snowLoad: psf(60) }), 'ledger-lag-1/2')).toBe(29)
  })
})

describe('goods', () => {
  it('of one kind stand on one line, with every joint that asks for them in the reason', () => {
    const { goods } = takeoffOf(heronLane)
    expect(new Set(goods.map((good) => good.sku)).size).toBe(goods.length)
    const nails = goods.find((good) => good.sku === 'nail-16d-common')
    for (const joint of ['post base', 'post cap', 'rim into joist end', 'block'])
      expect(nails?.cause.rule).toContain(joint)
  })

  it('take pounds of nails from counts: 68 + 16 + 190 hanger nails, 92 % of 129 to the pound, 5 % lost', () => {
    expect(goodOf(heronLane, 'nail-10d-1-1/2')?.thousandths).toBe(
      Math.ceil((274 / (129 * 0.92)) * 1.05 * 1000),
    )
  })

  it.each<[string, string, number, number]>([
    // 4 × 12 at bases, 4 × 16 at caps, 3 × 19 into the rim, 2 × 3 into the ledger, 4 × 18 in blocks
    ['16d', 'nail-16d-common', 48 + 64 + 57 + 6 + 72, 45],
    // 8 in the face of each of 17 hangers
    ['10d', 'nail-10d-common', 136, 65],
    // two rows along 282 in at 16 in: 2 × 18 between the two plies
    ['10d box', 'nail-10d-box', 36, 86],
  ])('take %s nails by joint', (_name, sku, count, perPound) => {
    expect(goodOf(heronLane, sku)?.thousandths).toBe(Math.ceil((count / (perPound * 0.92)) * 1.05 * 1000))
  })

  it('nail two faces of a three-ply beam and one of a double rim', () => {
    const pounds = (job: Job) => countOf(job, 'nail-10d-box')
    const { front, rear } = heronLane.frame.beams
    expect(pounds(framed({ beams: { front: { ...front, plies: 3 }, rear } }))).toBeCloseTo(
      2 * pounds(heronLane),
      2,
    )
    expect(pounds(framed({ rimPlies: 2 }))).toBeCloseTo(2 * pounds(heronLane), 2)
  })

  it('coat both ends of every member with preservative, 20 sq ft a quart', () => {
    // 39 joists, blocks and so on of 2x10, two of 2x12, four 6x6, 28 whole boards and one ripped to 5 1/4 in
    const squareInches = 2 * ((17 + 2 + 1 + 1 + 18) * 13.875 + 2 * 16.875 + 4 * 30.25 + 28 * 5.5 + 5.25)
    expect(goodOf(heronLane, 'end-cut-preservative')?.thousandths).toBe(
      Math.ceil((squareInches / 144 / 20) * 1000),
    )
  })

  it('put two screws in each course at each joist: 29 × 19 × 2, 5 % lost', () => {
    expect(countOf(heronLane, 'screw-deck-2-1/2')).toBe(1158)
  })

  it('take longer screws for thicker boards', () => {
    const job = { ...heronLane, decking: { ...heronLane.decking, size: '2x6' as const } }
    expect([countOf(job, 'screw-deck-2-1/2'), countOf(job, 'screw-deck-3')]).toEqual([0, 1158])
  })

  it('leave the ledger’s out for a freestanding deck', () => {
    const skus = takeoffOf(site({ attachment: 'freestanding' })).goods.map((good) => good.sku)
    expect(skus.filter((sku) => /ledger|hanger|angle|hold-down/.test(sku))).toEqual([])
  })

  it('need no preservative where the wood is not treated', () => {
    expect(countOf(framed({ treatment: 'untreated' }), 'end-cut-preservative')).toBe(0)
    expect(countOf(heronLane, 'end-cut-preservative')).toBeGreaterThan(0)
  })

  it('ask for a tube of an uncommon diameter by name', () => {
    expect(countOf(ground({ tube: inches(11.5) }), 'form-tube-11.5in')).toBe(16)
  })
})

describe('form tubes', () => {
  it.each([
    [36, 8, 16, '32 in: one from each piece'],
    [20, 8, 8, '16 in: three from a piece, two pieces'],
    [52, 8, 16, '48 in: a piece each'],
    [60, 8, 20, '56 in: a piece each and 8 in more, all four from a fifth piece'],
  ])('at %i in of frost with a base of %i in take %i ft (%s)', (frost, thickness, feet) => {
    const job = {
      ...ground({ baseThickness: inches(thickness) }),
      site: { ...heronLane.site, frostDepth: inches(frost) },
    }
    expect(countOf(job, 'form-tube-12in')).toBe(feet)
  })
})

describe('work', () => {
  it.each<[Job['site']['soil'], string]>([
    ['unknown', 'dig-wide-medium'],
    ['clay or silt', 'dig-wide-medium'],
    ['sand', 'dig-wide-soft'],
    ['sandy gravel or gravel', 'dig-wide-hard'],
    ['rock', 'dig-rock'],
  ])('digs %s at the rate %s', (soil, rateId) => {
    expect(workOf(site({ soil }), rateId)).toBe(37.7)
  })

  it('digs a narrow hole at the dearer rate of a narrow one', () => {
    expect(workOf(ground({ base: inches(0) }), 'dig-narrow-medium')).toBeCloseTo(16.756, 3)
  })

  it('says of rock that a price should be asked for', () => {
    const task = takeoffOf(site({ soil: 'rock' })).tasks.find((one) => one.rateId === 'dig-rock')
    expect(task?.cause.rule).toContain('ask for a price')
  })

  it('bores no rock with an auger', () => {
    const rock = site({ soil: 'rock' })
    const asked = { ...rock, ground: { ...rock.ground, digging: 'machine auger' as const } }
    expect(takeoffOf(asked).tasks.map(({ rateId }) => rateId)).not.toContain('auger-machine')
    expect(workOf(asked, 'dig-rock')).toBe(37.7)
  })

  it.each([
    ['ledger-set', 23.25],
    ['hanger', 19],
    ['joist-tie', 19],
    ['rim', 23.5],
    ['beam-builtup', 94],
    ['blocking', 18],
    ['post-set', 4],
    ['layout-corner', 2],
    ['deck-trim', 27.125],
  ])('counts %s: %d', (rateId, quantity) => {
    expect(workOf(heronLane, rateId)).toBe(quantity)
  })

  it('has no task of no quantity', () => {
    const { tasks } = takeoffOf(site({ attachment: 'freestanding' }))
    expect(tasks.filter((task) => task.thousandths <= 0)).toEqual([])
    expect(tasks.map((task) => task.rateId)).not.toContain('ledger-set')
  })
})

describe('the weight of the lumber', () => {
  // 319.875 ft of 2x10, 47 of 2x12, 6.875 of 6x6 and 686 1/3 of 5/4x6; pounds a foot as lumber-sizes.test.ts reads them
  it('is that of every member by its section, seasoned and fresh from the treater', () => {
    const { weight } = takeoffOf(heronLane)
    expect(weight.seasoned).toBeGreaterThan(319.875 * 3.595 + 47 * 4.365 + 6.875 * 7.835 + 686.33 * 1.42)
    expect(weight.seasoned).toBeLessThan(319.875 * 3.605 + 47 * 4.375 + 6.875 * 7.845 + 686.34 * 1.43)
    expect(weight.freshlyTreated / weight.seasoned).toBeCloseTo(42.3 / 37.3, 2)
    expect(weight.cause.rule).toContain('from memory')
  })
})

describe('pieces', () => {
  it('lead back to their member and say where they go', () => {
    const piece = takeoffOf(heronLane).pieces.find((one) => one.mark === 'J7')
    expect(piece).toMatchObject({
      memberId: 'joist-7',
      place: `joist at 9'-4" along`,
      cause: { ids: ['joist-7'] },
    })
  })

  it('are joists cut longer by what they run wild, where the job says so', () => {
    const job = { ...heronLane, cutting: { ...heronLane.cutting, joistsWild: inches(3) } }
    const longer = takeoffOf(job).pieces.filter(({ id }) => id.includes('joist'))
    expect(longer.length).toBeGreaterThan(0)
    expect(longer.map(({ length, finished }) => length - finished)).toEqual(longer.map(() => inches(3)))
    expect(
      takeoffOf(heronLane)
        .pieces.filter(({ id }) => id.includes('joist'))
        .every(({ length, finished }) => length === finished),
    ).toBe(true)
  })

  it('carry the allowance of the job at posts alone', () => {
    const job = { ...heronLane, cutting: { ...heronLane.cutting, postAllowance: inches(5) } }
    const longer = takeoffOf(job).pieces.filter((piece) => piece.length !== piece.finished)
    expect(longer.map((piece) => [piece.mark, piece.length - piece.finished])).toEqual([
      ['P1', 160],
      ['P2', 160],
      ['P3', 160],
      ['P4', 160],
    ])
  })
})
