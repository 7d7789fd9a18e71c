import { describe, expect, test } from 'vitest'
import { BESIDE, type CostedLine, type Costing, costJob, isBegun } from '../../../core/costing/index.ts'
import { type JobStatement, setField } from '../../../core/job/index.ts'
import { jobOf, UNDER_WAY } from './worked-costing.ts'

function costingOf(statement: JobStatement): Costing {
  const job = jobOf(statement)
  const { estimate: lines, price, hourly } = job.costing
  return costJob(job, { lines, price, hourly })
}

function lineOf(costing: Costing, what: string): CostedLine {
  const line = costing.groups.flatMap(({ lines }) => lines).find((one) => one.line.what === what)
  if (line === undefined) throw new Error(`no line ${what}`)
  return line
}

describe('a job under way beside its estimate, worked by hand', () => {
  const costing = costingOf(UNDER_WAY)

  test('adds what was bought of a line and takes off what went back', () => {
    // 9 × $23.49 = $211.41; $214.00 − $46.98 = $167.02; −$44.39 is −21.00 % of it
    expect(lineOf(costing, '2x10, 16 ft')).toMatchObject({
      estimated: 21_141,
      bought: 7000,
      actual: 16_702,
      difference: -4439,
      share: -2100,
      unusable: 1,
      left: 1,
      done: true,
      open: 0,
    })
  })

  test('leaves open what the estimate holds and nobody bought yet, at the estimated price', () => {
    // 17 − 10 = 7 at $2.39
    expect(lineOf(costing, 'Hanger')).toMatchObject({ bought: 10_000, open: 1673, openQuantity: 7000 })
    expect(lineOf(costing, 'Permit')).toMatchObject({ actual: 0, open: 35_000 })
  })

  test('pays worker hours at the loaded rate, and leaves none open once they are used up', () => {
    // 13.75 h × $45 = $618.75 against 11.5 h × $45 = $517.50
    expect(lineOf(costing, 'Set joists')).toMatchObject({
      worked: 13_750,
      actual: 61_875,
      estimated: 51_750,
      difference: 10_125,
      open: 0,
    })
    expect(costing.hours).toEqual({ estimated: 11_500, worked: 13_750, open: 0 })
  })

  test('keeps what was bought beside the estimate in a group of its own', () => {
    const beside = costing.groups.find(({ group }) => group === BESIDE)
    expect(beside?.lines).toHaveLength(1)
    expect(beside).toMatchObject({ estimated: 0, actual: 1999, share: null, open: 0 })
  })

  test('sums by part with the tax on material, to the cent', () => {
    // estimated: 211.41 + 40.63 = 252.04, tax 15.12; bought: 167.02 + 25.00 + 19.99 = 212.01, tax 12.72
    // to come: 16.73 of hangers; tax of 228.74 is 13.72, so 1.00 of it is to come
    expect(costing.material).toMatchObject({ estimated: 25_204, actual: 21_201, open: 1673, likely: 22_874 })
    expect(costing.tax).toMatchObject({ estimated: 1512, actual: 1272, open: 100 })
    // 252.04 + 15.12 + 517.50 + 350 = 1,134.66; 212.01 + 12.72 + 618.75 = 843.48; 16.73 + 1.00 + 350 = 367.73
    expect(costing.direct).toMatchObject({
      estimated: 113_466,
      actual: 84_348,
      open: 36_773,
      likely: 121_121,
    })
  })

  test('says what the price leaves: as estimated, and as it will likely be', () => {
    // 1,620.94 − 1,134.66 and 1,620.94 − 1,211.21
    expect(costing.left).toEqual({ price: 162_094, estimated: 48_628, likely: 40_973 })
  })

  test('counts boards bought, unusable and left', () => {
    // one of seven that stayed: 14.29 %
    expect(costing.boards).toEqual({ bought: 7, unusable: 1, left: 1, unusableShare: 1429 })
  })
})

describe('what is open', () => {
  test('is nothing once the job is finished', () => {
    const costing = costingOf(setField(UNDER_WAY, 'costing.finished', '2026-04-20'))
    expect(costing.finished).toBe(true)
    expect(costing.direct).toMatchObject({ open: 0, actual: 84_348, likely: 84_348 })
    expect(costing.hours.open).toBe(0)
  })

  test('is the rest of the sum where a purchase does not tell its quantity', () => {
    const costing = costingOf(
      setField(UNDER_WAY, 'costing.bought', [
        { line: 'good-hanger', amount: '$30' },
        { line: 'other-permit', amount: '$410' },
      ]),
    )
    // 40.63 − 30.00; the permit was dearer than estimated
    expect(lineOf(costing, 'Hanger')).toMatchObject({ bought: null, open: 1063 })
    expect(lineOf(costing, 'Permit')).toMatchObject({ open: 0, difference: 6000 })
  })

  test('is the rest of a task’s hours, and of its sum where somebody was paid for part of it', () => {
    const half = setField(UNDER_WAY, 'costing.worked', [{ line: 'labour-task-joist', hours: 4 }])
    // 7.5 h × $45
    expect(lineOf(costingOf(half), 'Set joists')).toMatchObject({ open: 33_750, openQuantity: 7500 })
    const paid = setField(half, 'costing.bought', [{ line: 'labour-task-joist', amount: '$200' }])
    // 517.50 − 180.00 − 200.00
    expect(lineOf(costingOf(paid), 'Set joists')).toMatchObject({ actual: 38_000, open: 13_750 })
  })

  test('is all of a line whose goods all went back', () => {
    const costing = costingOf(
      setField(UNDER_WAY, 'costing.bought', [
        { line: 'good-hanger', quantity: 17, amount: '$40.63' },
        { line: 'good-hanger', quantity: -17, amount: '-$40.63' },
      ]),
    )
    expect(lineOf(costing, 'Hanger')).toMatchObject({ bought: 0, actual: 0, open: 4063 })
  })
})

describe('lines for which nothing is written down', () => {
  test('are counted with what they hold: a finished job without them looks cheaper than it was', () => {
    // the permit alone: the boards, the hangers and the joists have something
    expect(costingOf(UNDER_WAY).untouched).toEqual({ count: 1, estimated: 35_000 })
    const told = [{ line: 'other-permit', done: true }]
    expect(costingOf(setField(UNDER_WAY, 'costing.lines', told)).untouched).toEqual({
      count: 0,
      estimated: 0,
    })
  })
})

describe('what names no line of the estimate', () => {
  test('is counted by its own words, the same words together', () => {
    const costing = costingOf(
      setField(UNDER_WAY, 'costing.bought', [
        { line: 'good-gone', what: 'Hanger for a 2x8', quantity: 2, amount: '$4' },
        { what: ' Hanger for a 2x8 ', amount: '$2' },
        { line: 'good-gone', amount: '$1' },
      ]),
    )
    expect(lineOf(costing, 'Hanger for a 2x8')).toMatchObject({ planned: false, actual: 600 })
    expect(lineOf(costing, 'good-gone')).toMatchObject({ planned: false, actual: 100 })
  })

  test('is work where hours are booked on a line of goods', () => {
    const costing = costingOf(
      setField(UNDER_WAY, 'costing.worked', [{ line: 'good-hanger', hours: 2, what: 'Fetching hangers' }]),
    )
    expect(lineOf(costing, 'Fetching hangers')).toMatchObject({
      line: { part: 'labour', group: BESIDE },
      worked: 2000,
      actual: 9000,
    })
    expect(lineOf(costing, 'Hanger').worked).toBe(0)
  })
})

describe('hours booked on all work of a stage', () => {
  const works = [3, 2, 1].map((hours, n) => ({
    line: `labour-${n}`,
    group: 'labour',
    what: `Work ${n}`,
    part: 'labour',
    quantity: hours,
    unit: 'worker hour',
    price: 45,
    hours,
    stage: n === 2 ? 'decking' : 'frame',
  }))
  const booked = (hours: number, line: string) =>
    costingOf({ costing: { hourly: 45, estimate: works, worked: [{ line, hours }] } })

  test('go to its tasks by the hours that each was estimated at', () => {
    // 10 h by 3 to 2
    const costing = booked(10, 'stage-frame')
    expect(lineOf(costing, 'Work 0')).toMatchObject({ worked: 6000, actual: 27_000 })
    expect(lineOf(costing, 'Work 1')).toMatchObject({ worked: 4000, actual: 18_000 })
    expect(lineOf(costing, 'Work 2')).toMatchObject({ worked: 0, actual: 0 })
  })

  test('lose nothing to rounding: the greatest remainder takes what is left', () => {
    // 0.001 h by 3 to 2: 0.0006 and 0.0004
    const costing = booked(0.001, 'stage-frame')
    expect(lineOf(costing, 'Work 0').worked).toBe(1)
    expect(lineOf(costing, 'Work 1').worked).toBe(0)
  })

  test('stand beside the estimate where it has no such stage', () => {
    expect(lineOf(booked(2, 'stage-guard'), 'stage-guard')).toMatchObject({ planned: false, worked: 2000 })
  })
})

test('an owner’s hours cost nothing and nothing is left of a price', () => {
  const job = jobOf(setField(UNDER_WAY, 'builder', 'owner'))
  const costing = costJob(job, {
    ...job.costing,
    lines: job.costing.estimate,
    hourly: jobOf({}).costing.hourly,
  })
  expect(costing.left).toBeNull()
  expect(lineOf(costing, 'Set joists')).toMatchObject({ actual: 0, worked: 13_750 })
})

test('a job is begun once it says so, or anything that it took', () => {
  expect(isBegun(jobOf({}))).toBe(false)
  expect(isBegun(jobOf({ costing: { begun: '2026-04-01' } }))).toBe(true)
  expect(isBegun(jobOf({ costing: { bought: [{ what: 'Tarp', amount: 5 }] } }))).toBe(true)
})
