import { expect, test } from 'vitest'
import { ledgerDetail } from '../../../core/papers/details/ledger-detail.ts'
import { makeSheets } from '../../../core/papers/index.ts'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { paperSource } from '../../fixtures/paper-source.ts'

const sourceOf = (name: string, more: object = {}) =>
  paperSource({ ...CATALOGUE.find(({ file }) => file === `${name}.json`)?.job, ...more }, SAMPLE_BOOK, {
    quick: true,
  })
const marking = (source: ReturnType<typeof sourceOf>) =>
  makeSheets(source, ['marking'])
    .flatMap(({ blocks }) =>
      blocks.flatMap((block) => (block.kind === 'steps' ? block.items.map(({ text }) => text) : [])),
    )
    .join('\n')

// a lag screw of 1/2 in has a lead hole of 5/16 in for its thread and one of its own width for its shank
test('the ledger’s lag screws have their lead holes on the detail and on the marking sheet', () => {
  const source = sourceOf('wrap-hip')
  expect(ledgerDetail(source.estimate)?.notes.join(' ')).toContain('5/16 in for the thread')
  expect(marking(source)).toContain('1/2 in through the ledger')
})

// by hand: the walls meet at 8' along and 16' away, where the mitred ledgers, 1-1/2 in thick, reach 1-1/2 in past that corner
// on one face; at the other end an end joist of 1-1/2 in laps each: 28' less 1-1/2 in, and 1-1/2 in from the rear edge
test('the marking sheet says where both ends of each ledger lie', () => {
  const said = marking(sourceOf('wrap-hip'))
  expect(said).toContain(`L1 with its left end 7'-10 1/2" and its right end 27'-10 1/2" from the left edge`)
  expect(said).toContain(`L2 with its rear end 1 1/2" and its front end 16'-1 1/2" from the rear edge`)
})
