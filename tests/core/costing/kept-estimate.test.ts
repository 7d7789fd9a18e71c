import { describe, expect, test } from 'vitest'
import { costJob, heldAgainst, keptEstimate } from '../../../core/costing/index.ts'
import { setField, statedEntries } from '../../../core/job/index.ts'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { cents, priceOf } from '../../../core/units/index.ts'
import { paperSource } from '../../fixtures/paper-source.ts'
import { smallJob } from '../../fixtures/worked-job.ts'
import { jobOf } from './worked-costing.ts'

const { estimate } = paperSource(smallJob('18 ft'))
const kept = keptEstimate(estimate, SAMPLE_BOOK)

describe('the estimate that a job is begun on', () => {
  test('has every line with its own amount, and the hours of all work, those of joints too', () => {
    expect(kept.lines.map(({ line, thousandths, price }) => [line, priceOf(thousandths, price)])).toEqual(
      estimate.pricing.lines.map(({ id, amount }) => [id, amount]),
    )
    const hours = kept.lines.reduce((sum, line) => sum + line.hours, 0)
    // lines are to 1/1000 h, the total to 1/100
    expect(Math.abs(hours / 10 - estimate.pricing.totals.workerHours)).toBeLessThan(2)
    expect(kept.lines.some(({ line, hours: own }) => line.startsWith('joint-') && own > 0)).toBe(true)
  })

  test('comes to the direct cost of the estimate, and leaves of the price what is not direct cost', () => {
    const costing = costJob(estimate.job, kept)
    const { direct, price } = estimate.pricing.totals
    expect(costing.direct).toMatchObject({ estimated: direct, actual: 0, open: direct, likely: direct })
    expect(costing.left).toEqual({ price, estimated: price - direct, likely: price - direct })
  })

  test('is read again from the job as it was written', () => {
    const statement = setField({}, 'costing.estimate', statedEntries('kept lines', kept.lines))
    expect(jobOf(statement).costing.estimate).toEqual(kept.lines)
  })

  test('stays when prices and rates change after; without one the job is held against today’s', () => {
    const dearer = { ...SAMPLE_BOOK, labourRate: cents(SAMPLE_BOOK.labourRate + 1000) }
    const { lines, ...costs } = kept
    const costing = { ...estimate.job.costing, ...costs, estimate: lines }
    const begun = { ...estimate, job: { ...estimate.job, costing } }
    expect(heldAgainst(begun, dearer)).toEqual(kept)
    expect(heldAgainst(estimate, dearer).hourly).toBe(SAMPLE_BOOK.labourRate + 1000)
  })
})
