import { expect, test } from 'vitest'
import { together, verdict } from './step.ts'
import { countPlaywright, countVitest } from './test-runs.ts'

test('a window test that passed only at the second try counts as failed', () => {
  expect(countPlaywright({ stats: { expected: 5, unexpected: 1, flaky: 2, skipped: 1 } })).toEqual({
    passed: 5,
    failed: 3,
    skipped: 1,
  })
})

test('a test that is only planned counts as skipped', () => {
  const json = {
    numPassedTests: 7,
    numFailedTests: 1,
    numPendingTests: 2,
    numTodoTests: 3,
    numFailedTestSuites: 1,
  }
  expect(countVitest(json)).toEqual({ passed: 7, failed: 1, skipped: 5 })
})

test('the gate’s sum keeps every report', () => {
  const sum = together([
    verdict(''),
    verdict('first'),
    { passed: 3, failed: 2, skipped: 1, report: 'second' },
  ])
  expect(sum).toEqual({ passed: 4, failed: 3, skipped: 1, report: 'first\nsecond' })
})
