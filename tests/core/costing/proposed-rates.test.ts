import { describe, expect, test } from 'vitest'
import { type FinishedJob, proposedRates, withRate } from '../../../core/costing/index.ts'
import { setField } from '../../../core/job/index.ts'
import { readPriceBook, SAMPLE_BOOK, writePriceBook } from '../../../core/pricing/index.ts'
import { jobOf, UNDER_WAY } from './worked-costing.ts'

const finished = jobOf(setField(UNDER_WAY, 'costing.finished', '2026-04-20'))
const [line] = finished.costing.estimate.filter(({ rate }) => rate === 'joist')
if (line === undefined) throw new Error('no task of the rate joist')

/** A job of so many board feet of joists, under such conditions, that took so many worker hours. */
function job(name: string, boardFeet: number, factor: number, hours: number): FinishedJob {
  const count = { count: boardFeet * 1000, factor: factor * 10_000 }
  return {
    name,
    costing: {
      finished: '2026-04-20',
      estimate: [{ ...line, ...count } as (typeof finished.costing.estimate)[number]],
      worked: [{ date: '', line: 'labour-task-joist', what: '', who: '', thousandths: hours * 1000 }],
    },
  }
}

const { workers, crewHours } = SAMPLE_BOOK.rates.find(({ id }) => id === 'joist') ?? {
  workers: 0,
  crewHours: 0,
}

describe('rates proposed by finished jobs, worked by hand', () => {
  test('are the hours by quantity, freed of the conditions of the job', () => {
    const [proposed, ...others] = proposedRates([finished], SAMPLE_BOOK)
    expect(others).toEqual([])
    // 13.75 worker hours ÷ (200 board feet × 1.15) = 0.0597826 worker hours each, by a crew of so many
    expect(proposed).toMatchObject({
      rate: 'joist',
      estimated: 11_500,
      worked: 13_750,
      now: crewHours,
      proposed: Math.round(5978.26 / workers),
    })
    expect(proposed?.jobs).toHaveLength(1)
  })

  test('weigh each job by its quantity, and tell how far the jobs lie apart', () => {
    const [proposed] = proposedRates([job('Small', 100, 1, 10), job('Large', 300, 1.5, 30)], SAMPLE_BOOK)
    // 40 h ÷ (100 + 450) = 0.0727272; by themselves 0.1 and 30 ÷ 450 = 0.0666667
    expect(proposed).toMatchObject({
      proposed: Math.round(7272.72 / workers),
      least: Math.round(6666.67 / workers),
      greatest: Math.round(10_000 / workers),
    })
  })

  test('come out again: estimated by the proposed rate, the jobs take the hours that they took', () => {
    const jobs = [job('A', 120, 1.25, 9), job('B', 410, 1, 25.5)]
    const [proposed] = proposedRates(jobs, SAMPLE_BOOK)
    const hours = jobs.map(({ costing }) =>
      costing.estimate.map((one) => (one.count * one.factor * (proposed?.proposed ?? 0) * workers) / 1e12),
    )
    expect(hours.flat().reduce((sum, one) => sum + one, 0)).toBeCloseTo(34.5, 1)
  })

  test('need a finished job with hours on the task: one under way, or without hours, teaches nothing', () => {
    expect(proposedRates([jobOf(UNDER_WAY)], SAMPLE_BOOK)).toEqual([])
    expect(
      proposedRates([{ ...finished, costing: { ...finished.costing, worked: [] } }], SAMPLE_BOOK),
    ).toEqual([])
  })
})

describe('a proposed rate taken into the book', () => {
  test('is the one thing that changes, says how many jobs it comes from, and is read again', () => {
    const taken = withRate(SAMPLE_BOOK, 'joist', 2989, 3)
    const rates = taken?.rates.map(({ confidence, ...rate }) => [rate.id, rate.crewHours, confidence])
    expect(rates).toEqual(
      SAMPLE_BOOK.rates.map(({ id, crewHours: hours, confidence }) =>
        id === 'joist' ? [id, 2989, 'from 3 finished jobs'] : [id, hours, confidence],
      ),
    )
    if (taken === null) throw new Error('not taken')
    expect(readPriceBook(writePriceBook(taken))).toEqual({ ok: true, value: taken })
  })

  test('is none where the book has no such rate', () => {
    expect(withRate(SAMPLE_BOOK, 'no-such-rate', 10, 1)).toBeNull()
  })
})
