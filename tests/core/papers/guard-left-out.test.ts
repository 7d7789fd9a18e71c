import { describe, expect, test } from 'vitest'
import { makeSheets } from '../../../core/papers/index.ts'
import { paperSource } from '../../fixtures/paper-source.ts'
import { type StatedJob, smallJob } from '../../fixtures/worked-job.ts'

const quoteOf = (job: StatedJob): string => JSON.stringify(makeSheets(paperSource(job), ['quote']))

const size = (height: string) => ({ size: { width: '11 ft 10 in', depth: '8 ft', height } })

// IRC 2021 R312.1.1: a guard where the drop is more than 30 in
describe('a quote without a guard', () => {
  const told = 'The building code asks for a guard here'

  test('says that the code asks for one where the deck is high', () => {
    expect(quoteOf(smallJob('11 ft 10 in', size('44 in')))).toContain(told)
  })

  test('says nothing of it where the deck is low or the guard is in the price', () => {
    expect(quoteOf(smallJob('11 ft 10 in', size('24 in')))).not.toContain(told)
    const guarded = smallJob('11 ft 10 in', { ...size('44 in'), guard: { where: 'where needed' } })
    expect(quoteOf(guarded)).not.toContain(told)
  })
})
