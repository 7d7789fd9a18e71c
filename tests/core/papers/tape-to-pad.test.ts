import { expect, test } from 'vitest'
import { makeSheets } from '../../../core/papers/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { paperSource } from '../../fixtures/paper-source.ts'

/** In sixteenths, of 29'-1 7/16". */
function sixteenths(text: string): number {
  const [, feet, inches = '0', part = '0', of = '1'] = /(\d+)'-(\d+)(?: (\d+)\/(\d+))?"/.exec(text) ?? []
  return feet === undefined ? 0 : (Number(feet) * 12 + Number(inches)) * 16 + (Number(part) * 16) / Number(of)
}

test.each([
  ['high-stairs-landing', {}],
  ['l-shape', { stairs: { kind: 'straight', side: 'front' }, size: { height: '42 in' } }],
])('the tape of %s reaches every distance to a corner of the stairs’ pad', (name, more) => {
  const source = paperSource({ ...CATALOGUE.find(({ file }) => file === `${name}.json`)?.job, ...more })
  const blocks = makeSheets(source, ['footings', 'steps']).flatMap((sheet) => sheet.blocks)
  const tools = blocks.flatMap((block) => (block.kind === 'checklist' ? block.items : []))
  const tape = sixteenths(tools.find((words) => words.startsWith('Tape')) ?? '')
  const rows = blocks.flatMap((block) =>
    block.kind === 'table' && block.table.id === 'layout-pads' ? block.table.rows : [],
  )
  expect(rows).toHaveLength(4)
  for (const { corner, left = '', right = '' } of rows)
    for (const far of [left, right]) {
      expect(sixteenths(far), far).toBeGreaterThan(0)
      expect(sixteenths(far), `${corner} ${far}`).toBeLessThanOrEqual(tape)
    }
})
