import { describe, expect, test } from 'vitest'
import { design } from '../../../core/design.ts'
import { footingScheduleTable, type PaperTable } from '../../../core/papers/index.ts'
import { type Carrier, carriers } from '../../../core/papers/marking/carriers.ts'
import { markingTable } from '../../../core/papers/tables/marking-table.ts'
import { type StatedJob, workedJob } from '../../fixtures/worked-job.ts'

const L_SHAPE: StatedJob = {
  ...workedJob(),
  size: { height: '42 in' },
  shape: { outline: "0, 0; 24', 0; 24', 8'; 14', 8'; 14', 14'; 0, 14'" },
}

function designOf(job: StatedJob) {
  const made = design(job)
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value
}

const column = ({ rows }: PaperTable, key: string) => rows.map((row) => row[key] ?? '')

describe('what a reader who was told nothing misread', () => {
  test('the marks of two wings stand one wing after the other, each in its order, and not mixed', () => {
    const marks = column(markingTable(carriers(designOf(L_SHAPE), [])), 'mark')
    const joists = marks.filter((mark) => mark.startsWith('J'))
    expect(joists.length).toBeGreaterThan(12)
    expect(joists).toEqual(joists.toSorted((a, b) => Number(a.slice(1)) - Number(b.slice(1))))
    // the end joists stand where they are met: E1 before the first joist, the right one after the last
    expect(marks[0]).toBe('E1')
    expect(marks.at(-1)).toMatch(/^E/)
  })

  test('every mark of every carrier has its row, and once', () => {
    const all: readonly Carrier[] = carriers(designOf(L_SHAPE), [])
    const marks = column(markingTable(all), 'mark')
    expect(new Set(marks).size).toBe(marks.length)
    expect(new Set(marks)).toEqual(new Set(all.flatMap((one) => one.marks.map(({ mark }) => mark))))
  })

  test('each hole has its bags where concrete comes in bags, and none where a truck brings it', () => {
    const bagged = footingScheduleTable(designOf({ ...L_SHAPE, ground: { tube: '12 in', base: '20 in' } }))
    // 0.6 cu ft a bag: 3.55 cu ft and more are 6 bags at least
    for (const row of bagged.rows) {
      const feet = Number.parseFloat(row.concrete ?? '')
      expect(Number(row.bags)).toBeGreaterThanOrEqual(feet / 0.6 - 0.01)
      expect(Number(row.bags)).toBeLessThan(feet / 0.6 + 0.12)
    }
    const poured = footingScheduleTable(designOf({ ...L_SHAPE, ground: { concrete: 'ready-mix' } }))
    expect(poured.columns.map(({ key }) => key)).not.toContain('bags')
  })
})
