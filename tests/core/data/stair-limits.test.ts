import { describe, expect, it } from 'vitest'
import { type CodeLimit, DCA_LIMITS, IRC_LIMITS, STAIR_LIMITS } from '../../../core/data/index.ts'

const limits: readonly CodeLimit[] = [
  ...Object.values(IRC_LIMITS),
  ...Object.values(STAIR_LIMITS),
  ...Object.values(DCA_LIMITS),
]

describe('the limits of the code for stairs and guards', () => {
  it('are named once each, with a clause, and say what was read where unless they are from memory', () => {
    expect(new Set(limits.map(({ id }) => id)).size).toBe(limits.length)
    for (const { id, source } of limits) {
      expect(source.clause, id).not.toBe('')
      expect(source.note === 'Not read.', id).toBe(source.confidence === 'from memory')
    }
  })

  // IRC R311.7 and R312 as quoted in public pages, AWC DCA 6 as quoted in the Georgia amendments of 2015
  it.each([
    [STAIR_LIMITS.riserVariation, 0.375],
    [STAIR_LIMITS.guardOpening, 4],
    [STAIR_LIMITS.stairGuardOpening, 4.375],
    [STAIR_LIMITS.handrailLow, 34],
    [STAIR_LIMITS.handrailHigh, 38],
    [STAIR_LIMITS.treadLoad, 300],
    [DCA_LIMITS.cutStringerSpan, 72],
    [DCA_LIMITS.closedStringerSpan, 159],
    [DCA_LIMITS.guardHoldDown, 1800],
  ])('$id', (limit, value) => {
    expect(limit).toMatchObject({ value, source: { confidence: 'verified' } })
  })
})
