import { expect, test } from 'vitest'
import { makeSheets } from '../../../core/papers/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { paperSource } from '../../fixtures/paper-source.ts'

const source = paperSource(CATALOGUE.find(({ file }) => file === 'high-stairs-landing.json')?.job ?? {})
const tables = makeSheets(source, ['order']).flatMap(({ blocks }) =>
  blocks.flatMap((block) => (block.kind === 'table' ? [block.table] : [])),
)
const rowOf = (table: string, words: string) =>
  tables.find(({ id }) => id === table)?.rows.find(({ label }) => label?.startsWith(words))

// 14 posts of the deck and its landing, of which GP4 to GP7 have a block behind them: through rim 1-1/2, post 3-1/2 and
// block 1-1/2 both bolts are 8 in; the others 7 in under a hold-down and 6 in below. Eight posts beside stairs: 7 and 6.
// GP1 to GP3 and those beside stairs wait
test('carriage bolts are counted by their lengths, what can be bought apart from what waits', () => {
  const free = rowOf('hardware', 'Carriage bolt')
  expect(free?.bought).toBe('22')
  expect(free?.label).toContain(
    '(7 of 6 in, 7 of 7 in, 8 of 8 in: 8 in at GP4 to GP7; 7 in above and 6 in below at GP8 to GP14)',
  )
  const held = rowOf('hardware-held', 'Carriage bolt')
  expect(held?.bought).toBe('22')
  expect(held?.label).toContain(
    '(11 of 6 in, 11 of 7 in: 7 in above and 6 in below at GP1 to GP3; 7 in above and 6 in below beside stairs)',
  )
})

test('bolts of headers that wait are not told among those that can be bought, and the braces’ not among those that wait', () => {
  // two at either end of three braces; two through rim and two through header at each of four uprights; two in each of two posts
  expect(rowOf('hardware', 'Bolt 1/2 in')?.label).toContain('(6 of 8 in, through brace and landing post')
  expect(rowOf('hardware-held', 'Bolt 1/2 in')?.label).toMatch(/\(16 of 4 in, .*; 4 of 8 in, through header/)
})

test('anchors are counted by whether they are cast in or drilled', () => {
  // one under each of nine posts, one at each of four stringers on the pad
  const label = rowOf('hardware', 'Anchor bolt')?.label
  expect(label).toContain('9 of them cast in under posts: length to suit')
  expect(label).toContain('4 of them for the stairs’ pad: a kind that is drilled in')
})
