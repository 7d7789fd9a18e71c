import { describe, expect, test } from 'vitest'
import { footingScheduleTable, makeSheets } from '../../../core/papers/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { paperSource } from '../../fixtures/paper-source.ts'

const source = paperSource(CATALOGUE.find(({ file }) => file === 'high-stairs-landing.json')?.job ?? {})
const blocks = makeSheets(source, ['footings']).flatMap((sheet) => sheet.blocks)
const tables = blocks.flatMap((block) => (block.kind === 'table' ? [block.table] : []))

describe('the footing layout of a deck with stairs', () => {
  test('tells where the pad at their foot goes, which no string crosses', () => {
    const words = blocks.flatMap((block) =>
      block.kind === 'steps' ? block.items.map(({ text }) => text) : [],
    )
    // 4 ft by 4 ft, its near edge 36 in before the lowest riser's face, the stairs 4 ft wide at the front's left end
    expect(
      words.filter((text) => text.startsWith('The pad at the foot of the stairs, 4\'-0" × 4\'-0"')),
    ).toHaveLength(1)
  })

  test('has the schedule in two tables, which together say every figure of it for every hole', () => {
    const whole = footingScheduleTable(source.estimate)
    const parts = tables.filter(({ title }) => title === whole.title || title === 'Loads on the footings')
    expect(parts).toHaveLength(2)
    const keys = parts.flatMap(({ columns }) => columns.map(({ key }) => key))
    expect([...new Set(keys)].sort()).toEqual(whole.columns.map(({ key }) => key).sort())
    for (const { rows } of parts) expect(rows).toEqual(whole.rows)
  })
})
