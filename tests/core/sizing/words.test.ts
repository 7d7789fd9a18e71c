import { describe, expect, it } from 'vitest'
import { costWords, proofWords, type Sized, unchangedWords } from '../../../core/sizing/index.ts'
import { cents } from '../../../core/units/index.ts'

const sized: Sized = {
  changes: [],
  statement: {},
  costBefore: cents(400_000),
  costAfter: cents(390_000),
  atMost: false,
  failingBefore: [],
  reasons: [],
  remaining: [],
  work: { ways: 1_000, checked: 20, priced: 2, proven: true },
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
})
