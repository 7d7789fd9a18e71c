import { describe, expect, it } from 'vitest'
import { basisWords, costWords, proofWords, type Sized, unchangedWords } from '../../../core/sizing/index.ts'
import { cents } from '../../../core/units/index.ts'

const sized: Sized = {
  changes: [],
  statement: {},
  costBefore: cents(400_000),
  beforeAtMost: false,
  costAfter: cents(390_000),
  atMost: false,
  failingBefore: [],
  reasons: [],
  byCalculation: [],
  remaining: [],
  work: { ways: 1_000, checked: 20, priced: 2, proven: true, basis: 'tables' },
}

describe('what is said of the cost of sizes', () => {
  it('is that cost alone where the plans behind it are searched to their end', () => {
    expect(costWords(sized)).toBe('$4,000.00 → $3,900.00, $100.00 less.')
  })

  it('says "at most" where they are not, and that the estimate may come out lower', () => {
    const words = costWords({ ...sized, atMost: true })
    expect(words).toContain('at most $3,900.00')
    expect(words).toContain('may come out a little lower')
  })

  it('knows no cost before where the job as stated has no price', () => {
    expect(costWords({ ...sized, costBefore: null })).toBe('$3,900.00.')
  })

  it('calls no sizes the cheapest where others were not ruled out', () => {
    const open = { ...sized.work, proven: false }
    for (const words of [proofWords(open), unchangedWords(open)])
      expect(words).not.toMatch(/are the cheapest/)
    expect(proofWords(open)).toContain('may not be the cheapest')
    expect(unchangedWords(sized.work)).toContain('are the cheapest')
  })

  it('says of a cost before that is not searched to its end that it is at most so much', () => {
    expect(costWords({ ...sized, beforeAtMost: true })).toContain('at most $4,000.00 → $3,900.00')
  })

  it('asks for an official or a designer where a calculation stands alone, and only there', () => {
    expect(basisWords(sized)).toBe('')
    const words = basisWords({ ...sized, work: { ...sized.work, basis: 'calculation' } })
    expect(words).toContain('by calculation alone')
    expect(words).toContain('licensed designer')
  })
})
