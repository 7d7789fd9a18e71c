import { expect, test } from 'vitest'
import { makeSheets, orderMessages } from '../../../core/papers/index.ts'
import { supplierOrders } from '../../../core/pricing/index.ts'
import { cents, printMoney } from '../../../core/units/index.ts'
import { paperSource } from '../../fixtures/paper-source.ts'
import { bookOfSeveral, HILL, YARD } from '../../fixtures/two-suppliers.ts'
import { smallJob } from '../../fixtures/worked-job.ts'

const book = bookOfSeveral({ [YARD]: [4000], [HILL]: [6000, 20_000] }, [
  { supplier: HILL, goods: { 'post-base-6x6': 2000 }, boards: { '30546-12': 1000 } },
])
const source = paperSource(smallJob(), book)
const sheets = makeSheets(source, ['order'])
const cells = (at: number, table: string, key: string) =>
  sheets[at]?.blocks.flatMap((block) =>
    block.kind === 'table' && block.table.id === table ? block.table.rows.map((row) => row[key]) : [],
  )

test('each supplier gets a sheet of what is bought there, with the supplier’s own codes, and nothing else', () => {
  expect(sheets.map(({ title, name }) => [title, name])).toEqual([
    [`Order 1 of 2: ${YARD}`, 'order 1'],
    [`Order 2 of 2: ${HILL}`, 'order 2'],
  ])
  expect(cells(1, 'order', 'code')).toEqual(['30546-12'])
  expect(cells(1, 'order', 'count')).toEqual(['18'])
  expect(cells(1, 'hardware', 'code')).toEqual(['H-post-base-6x6'])
  expect(cells(0, 'order', 'code')).not.toContain('30546-12')
  expect(cells(0, 'hardware', 'code')).not.toContain('H-post-base-6x6')
})

test('the orders together are everything that is bought, to the cent', () => {
  const said = sheets.map(({ blocks }) =>
    blocks.flatMap((block) =>
      block.kind === 'text' && block.text.startsWith('All of it') ? [block.text] : [],
    ),
  )
  // 18 × 10.00 + 3 × 20.00 at the hill; the yard has the rest of 1,300.47 without 18 × 15.72 + 3 × 32.75
  expect(said[1]).toEqual(['All of it by this list, before tax: $240.00'])
  expect(said[0]).toEqual([
    `All of it by this list, before tax: ${printMoney(cents(130_047 - 28_296 - 9825))}`,
  ])
  const lines = supplierOrders(source.estimate.pricing.lines, book).flatMap((order) => order.lines)
  const bought = source.estimate.pricing.lines.filter(
    ({ part, group }) => part === 'material' && group !== 'joints',
  )
  expect(lines.length).toBe(bought.length)
})

test('an order says what its delivery costs by the supplier’s terms', () => {
  const facts = sheets.map(({ blocks }) =>
    blocks.flatMap((block) =>
      block.kind === 'facts' ? block.rows.filter(([what]) => what === 'Delivery') : [],
    ),
  )
  expect(facts).toEqual([
    [['Delivery', '$40.00 by your terms']],
    [['Delivery', '$0.00 by your terms, free from $200.00 before tax']],
  ])
})

test('each supplier gets a message of its own', () => {
  const [yard, hill] = orderMessages(source)
  expect(hill?.name).toBe('order 2')
  expect(hill?.text).toMatch(/to Hill Top Lumber; prices of 2026-11-01\n18 pcs 5\/4x6.*\(30546-12\)/)
  expect(hill?.text).toContain('\n3 each Post base')
  expect(yard?.text).not.toContain('5/4x6')
})
