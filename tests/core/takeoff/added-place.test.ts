import { expect, test } from 'vitest'
import { design } from '../../../core/design.ts'
import { printLength, ticks } from '../../../core/units/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'

test('a piece of guard or landing is told by its place, not by its own mark again', () => {
  const deck = CATALOGUE.find(({ file }) => file === 'high-stairs-landing.json')
  const made = design(deck?.job ?? {})
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  const { takeoff, guard } = made.value
  const added = takeoff.pieces.filter(({ place }) => /^(guard|landing) /.test(place))
  expect(added.length).toBeGreaterThan(40)
  for (const { mark, place } of added) expect(place).not.toContain(mark)
  // the first post where the plan of the guard has it, to the fraction that a tape shows
  const first = guard?.members.find(({ role }) => role === 'guard post')
  if (first === undefined) throw new Error('the deck has a guard')
  const along = ticks((first.box.x0 + first.box.x1) / 2)
  const place = added.find(({ memberId }) => memberId === first.id)?.place
  expect(place?.startsWith(`guard post, its middle ${printLength(along)} along, `)).toBe(true)
  expect(added.some(({ place: one }) => one === 'guard rail, stretch 1, bay 1')).toBe(true)
})
