import { expect, test } from 'vitest'
import { design } from '../../../core/design.ts'
import { DEMO_JOB } from '../../../core/job/index.ts'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { why } from '../../../core/why.ts'
import { thingsOf } from '../../../renderer/state/things.ts'
import { estimateOf } from '../../fixtures/engine.ts'

test('whatever can be chosen in the drawing, and every check, says why it is there', () => {
  const made = design(DEMO_JOB)
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  const estimate = estimateOf(DEMO_JOB, SAMPLE_BOOK)
  const ids = [...thingsOf(made.value), ...made.value.checks].map(({ id }) => id)
  expect(ids.length).toBeGreaterThan(60)
  expect(ids.filter((id) => why(estimate, id) === null)).toEqual([])
})
