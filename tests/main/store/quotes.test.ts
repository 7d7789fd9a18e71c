import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { cents } from '../../../core/units/index.ts'
import type { KeptQuote } from '../../../main/store/index.ts'
import { FIRST, mustOpen, NOON, temporaryFolder } from './temporary-store.ts'

const folder = temporaryFolder()

const quote = (jobId: string, number: number, revision: number): KeptQuote => ({
  jobId,
  number,
  revision,
  date: '2026-11-25',
  sentAt: NOON.toISOString(),
  price: cents(1_234_567),
  madeFrom: '{"kept":"as sent"}',
  pdf: Uint8Array.from([37, 80, 68, 70, 0, 255]),
})

describe('quotes that were sent', () => {
  test('are numbered through all jobs, revised within one, and come back byte for byte', () => {
    const file = join(folder, 'numbers.db')
    const store = mustOpen(file)
    for (const id of ['job-1', 'job-2']) store.jobs.create({ ...FIRST, id, statement: {} })
    expect(store.quotes.next('job-1')).toEqual({ number: 1, revision: 1 })
    expect(store.quotes.add(quote('job-1', 1, 1))).toBe(true)
    expect(store.quotes.next('job-1')).toEqual({ number: 1, revision: 2 })
    expect(store.quotes.next('job-2')).toEqual({ number: 2, revision: 1 })
    expect(store.quotes.add(quote('job-2', 2, 1))).toBe(true)
    expect(store.quotes.add(quote('job-1', 1, 2))).toBe(true)
    store.close()
    const again = mustOpen(file)
    expect(again.quotes.list('job-1').map(({ number, revision }) => [number, revision])).toEqual([
      [1, 1],
      [1, 2],
    ])
    expect(again.quotes.read('job-1', 1)).toEqual(quote('job-1', 1, 1))
    expect(again.quotes.read('job-1', 3)).toBe(null)
    again.close()
  })

  test('a number that another copy of the program has given meanwhile is given to nobody else', () => {
    const file = join(folder, 'two.db')
    const store = mustOpen(file)
    for (const id of ['job-1', 'job-2']) store.jobs.create({ ...FIRST, id, statement: {} })
    const other = mustOpen(file)
    expect(store.quotes.next('job-1')).toEqual(other.quotes.next('job-2'))
    expect(other.quotes.add(quote('job-2', 1, 1))).toBe(true)
    expect(store.quotes.add(quote('job-1', 1, 1))).toBe(false)
    expect(store.quotes.next('job-1')).toEqual({ number: 2, revision: 1 })
    expect(store.quotes.list('job-1')).toEqual([])
    other.close()
    store.close()
  })
})
