import { expect, test } from 'vitest'
import { makeSheets } from '../../../core/papers/sheets/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { paperSource } from '../../fixtures/paper-source.ts'

const source = paperSource(CATALOGUE.find(({ file }) => file === 'high-stairs-landing.json')?.job ?? {})
const told = JSON.stringify(makeSheets(source, ['checks']))

test('the reviewer is told what the checks that pass stand on, not that a table decides them all', () => {
  expect(told).not.toContain('every check is decided by a table')
  const read = source.estimate.checks.filter(({ basis }) => basis === 'table, verified').length
  expect(read).toBeLessThan(source.estimate.checks.length)
  expect(told).toContain(
    `Of ${source.estimate.checks.length} checks ${read} are decided by a value of a table`,
  )
})

test('recalled values, parts in no table, and snow and frost that no one is named for are each told', () => {
  expect(told).toMatch(/from memory, which were not compared: [^"]*Guard posts[^"]*Stringers/)
  expect(told).toMatch(/not in the tables, told under Remarks: [^"]*Landing/)
  expect(told).toContain('On ground snow of 0 psf, nobody named as its source')
  expect(told).toContain('On a frost depth of 36 in, nobody named as its source')
})
