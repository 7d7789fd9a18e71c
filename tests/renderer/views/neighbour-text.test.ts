import { expect, test } from 'vitest'
import { cents, feet } from '../../../core/units/index.ts'
import { type Here, neighbourText } from '../../../renderer/views/tape/neighbour-text.ts'
import { rowAt } from '../../fixtures/compare-rows.ts'

const here: Here = { width: feet(23.5), depth: feet(13.5), amount: 942_900, basis: 'price' }

test('a narrower neighbour is told with its joints and what it saves', () => {
  const row = rowAt(feet(20), { price: cents(821_500) })
  expect(neighbourText(row, here)).toEqual({ text: `20'-0": no framing joints, −$1,214`, saves: true })
})

test('a wider one is told with what the added area costs', () => {
  const row = rowAt(feet(24), { framingJoints: 2, price: cents(949_000) })
  expect(neighbourText(row, here)).toEqual({ text: `24'-0": +$61 for 6.8 sq ft`, saves: false })
})

test('where an owner builds, cost is compared and not price', () => {
  const row = rowAt(feet(22), { cost: cents(580_000) })
  expect(neighbourText(row, { ...here, basis: 'cost', amount: 600_000 }).text).toBe(
    `22'-0": no framing joints, −$200`,
  )
})
