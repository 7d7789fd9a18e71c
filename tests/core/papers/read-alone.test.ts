import { describe, expect, test } from 'vitest'
import { design } from '../../../core/design.ts'
import { type Carrier, carriers } from '../../../core/frame/index.ts'
import { footingScheduleTable, type PaperTable } from '../../../core/papers/index.ts'
import { markingTable, markingTables } from '../../../core/papers/tables/marking-table.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
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

  test('tables of the marks are split by what the joists meet, so that none is mostly empty, and no mark is lost', () => {
    for (const file of ['l-shape.json', 'wrap-hip.json', 'largest.json']) {
      const deck = CATALOGUE.find((one) => one.file === file)
      const all = carriers(designOf(deck?.job ?? {}), [])
      const tables = markingTables(all)
      const split = tables.flatMap(({ rows }) => rows)
      expect(split).toEqual(markingTable(all).rows)
      for (const { columns, rows } of tables) {
        const cells = rows.flatMap((row) => columns.map(({ key }) => row[key] ?? ''))
        const empty = cells.filter((cell) => cell === '').length
        expect(empty / cells.length).toBeLessThan(1 / 3)
        // and nothing stands in a column that was left out
        for (const row of rows)
          for (const key of Object.keys(row)) expect(columns.map((column) => column.key)).toContain(key)
      }
    }
  })

  test('a board that runs away from the house has a rear and a front end, and no left one', () => {
    const wrap = CATALOGUE.find((one) => one.file === 'wrap-hip.json')
    const made = designOf(wrap?.job ?? {})
    const ends = new Map(carriers(made, []).map(({ mark, from }) => [mark, from]))
    // L1 and R1 run along the house, L2 and R2 away from it
    expect(['L1', 'R1', 'L2', 'R2'].map((mark) => ends.get(mark))).toEqual(['left', 'left', 'rear', 'rear'])
    const [first] = carriers(made, []).find(({ mark }) => mark === 'R2')?.marks ?? []
    const rim = made.frame.members.find(({ mark }) => mark === 'R2')
    const joist = made.frame.members.find(({ id }) => id === first?.memberId)
    expect(first?.at).toBe(Math.round((joist?.box.y0 ?? 0) - (rim?.box.y0 ?? 0)))
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
