import { expect, test } from 'vitest'
import { cents, ticks } from '../../../core/units/index.ts'
import { progressWords } from '../../../renderer/state/progress-words.ts'
import { wishWords } from '../../../renderer/state/wish-words.ts'

const part = { subject: '2x10', part: 2, parts: 4, bound: 9_900, best: 10_000, lengthUnit: null }

test('progress says which part, the best so far, the least possible and how far they are apart', () => {
  expect(progressWords(part)).toBe('2x10 (2 of 4): best $100.00, at least $99.00, 1.0 % apart')
  expect(progressWords({ ...part, part: 1, parts: 1, best: null })).toBe('2x10')
  // where stock has no prices the two are lengths, and only their distance says something
  expect(progressWords({ ...part, lengthUnit: ticks(384) })).toBe(
    '2x10 (2 of 4): best and least possible 1.0 % apart',
  )
})

test('a wish says what it adds to boards, cost and price, what it saves, and what is not known', () => {
  const price = {
    ok: true,
    lumber: cents(1_183),
    cost: cents(1_532),
    price: cents(2_189),
    within: cents(0),
  } as const
  expect(wishWords(price)).toBe(
    '+$11.83 for boards and joints; +$15.32 in the whole cost, +$21.89 in the price.',
  )
  expect(wishWords({ ...price, lumber: cents(-50), price: price.cost, within: cents(7) })).toBe(
    '−$0.50 for boards and joints, to within $0.07; +$15.32 in the whole cost.',
  )
  expect(wishWords({ ...price, lumber: cents(0), cost: cents(0), price: cents(0) })).toBe(
    'It costs nothing more.',
  )
  expect(wishWords({ ok: false, message: 'No board is long enough.' })).toBe('No board is long enough.')
})
