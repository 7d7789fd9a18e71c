import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { feet } from '../../../core/units/index.ts'
import type { StoredOffcut } from '../../../shared/contract/index.ts'
import { FIRST, mustOpen, NOON, temporaryFolder } from './temporary-store.ts'

const folder = temporaryFolder()
const offcut = (id: string, ft: number, size: '2x8' | '2x10' = '2x10'): StoredOffcut => ({
  id,
  product: { size, species: 'SP', grade: 'No.2', treatment: 'treated' },
  length: feet(ft),
  fromJob: `'); DROP TABLE offcuts; --`,
  addedAt: NOON.toISOString(),
})

describe('the rack', () => {
  test('keeps offcuts over a restart, by product and longest first, foreign text as it is', () => {
    const file = join(folder, 'kept.db')
    const store = mustOpen(file)
    store.offcuts.add([offcut('a', 4), offcut('b', 7), offcut('c', 9, '2x8')])
    store.close()
    const again = mustOpen(file)
    expect(again.offcuts.list()).toEqual([offcut('b', 7), offcut('a', 4), offcut('c', 9, '2x8')])
    expect(again.offcuts.remove(['a', 'nothing'])).toBe(1)
    expect(again.offcuts.list().map(({ id }) => id)).toEqual(['b', 'c'])
    again.close()
  })

  test('takes the offcuts of a job once, and gives out those it used', () => {
    const store = mustOpen(join(folder, 'taken.db'))
    store.jobs.create({ ...FIRST, statement: {} })
    store.offcuts.add([offcut('a', 4), offcut('b', 7)])
    const cut = { jobId: FIRST.id, cutAt: NOON.toISOString(), used: ['b'], left: [offcut('new', 5)] }
    expect(store.offcuts.takeFromJob(cut)).toBe(true)
    expect(store.offcuts.list().map(({ id }) => id)).toEqual(['new', 'a'])
    expect(store.offcuts.takeFromJob({ ...cut, left: [offcut('twice', 5)] })).toBe(false)
    expect(store.offcuts.list().map(({ id }) => id)).toEqual(['new', 'a'])
    expect(store.offcuts.remove(['b'])).toBe(0)
    expect(store.offcuts.listFor(FIRST.id).map(({ id }) => id)).toEqual(['b', 'a'])
    expect(store.offcuts.listFor('another').map(({ id }) => id)).toEqual(['new', 'a'])
    store.close()
  })

  test('is left as it was where one of several offcuts cannot be written', () => {
    const store = mustOpen(join(folder, 'whole.db'))
    expect(() => store.offcuts.add([offcut('a', 4), offcut('a', 7)])).toThrow()
    expect(store.offcuts.list()).toEqual([])
    store.close()
  })
})
