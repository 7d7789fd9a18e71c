import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { DEMO_JOB, setField } from '../../../core/job/index.ts'
import { feet, ticks } from '../../../core/units/index.ts'
import { TAPE_LENGTH, tapeKey, tapeStart } from '../../../renderer/state/tape-range.ts'

describe('where the tape starts', () => {
  test('the width is always on the tape, and the tape starts at a whole foot', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: feet(4), max: feet(100) }),
        fc.option(fc.integer({ min: 4, max: 90 })),
        (width, current) => {
          const start = tapeStart(ticks(width), current === null ? null : feet(current))
          expect(start % feet(1)).toBe(0)
          expect(start).toBeLessThanOrEqual(width)
          expect(start + TAPE_LENGTH).toBeGreaterThanOrEqual(width)
        },
      ),
    )
  })

  test('it stays where it is while the width is well on it', () => {
    expect(tapeStart(feet(26), feet(12))).toBe(feet(12))
    expect(tapeStart(feet(31), feet(12))).not.toBe(feet(12))
  })
})

test('two statements that differ only in width share one tape; another depth has its own', () => {
  expect(tapeKey(setField(DEMO_JOB, 'size.width', '18 ft'))).toBe(tapeKey(DEMO_JOB))
  expect(tapeKey(setField(DEMO_JOB, 'size.depth', '12 ft'))).not.toBe(tapeKey(DEMO_JOB))
})
