import { expect, test } from 'vitest'
import { design } from '../../../core/design.ts'
import { boltedPosts } from '../../../core/guard/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'

const high = CATALOGUE.find(({ file }) => file === 'high-stairs-landing.json')?.job ?? {}
const made = design({ ...high, guard: { where: 'where needed', postSpacing: '60 in' } })
if (!made.ok || made.value.guard === null) throw new Error('the deck has stairs and a guard')
const deck = made.value
const posts = made.value.guard.stairs.flatMap((one) => boltedPosts(deck, one))
const boltsOf = (mark: string) => posts.find((one) => one.mark === mark)?.bolts?.map((at) => at / 32)

// 9 ft in 14 risers: 7.714 in on 10-1/4 in, slope 0.7526, a 2x12 14.080 in deep measured plumb; treads 1 in thick with
// 7/8 in of nosing past riser boards of 1 in; the uppermost run 7/8 in shorter, for the deck's boards reach 1 in over: the
// flight is 60-5/8 in long. A post reaches 18 in under the line of the nosings
test('a post in a flight is bolted 2 in off the stringer’s lower edge, square to it, and 1-1/2 in under the notch over it', () => {
  // its middle 30-5/16 in from the head of seven risers, halfway from 1-3/4 in to 58-7/8, over the third tread: lower edge
  // 1.411 + 1 + 14.080 = 16.491 in under the nosings; 2 in square to the edge, 4 diameters of a 1/2 in bolt (NDS 2018
  // 12.5.1, from memory), are 2 × 1.2516 = 2.503 plumb, so 18 − 16.491 + 2.503 = 4.012; the tread's underside
  // 3 × 7.714 − 1 = 22.143 over the foot, the post's end 54 − 29.3125 × 0.7526 − 18 = 13.939 over it:
  // 22.143 − 1.5 − 13.939 = 6.704, 215 of 1/32 in
  expect(boltsOf('SG1-2')).toEqual([4, 6.71875])
})

test('the last post of a flight stands on the ground or the landing: its bolts are between that and the lowest tread', () => {
  // 7.714 − 1 − 1.5 = 5.214 in
  expect(boltsOf('SG1-3')).toEqual([2, 5.21875])
})

test('the bolts of a post are never nearer than 2 in to one another: else a designer is asked', () => {
  expect(posts.length).toBeGreaterThan(8)
  for (const { bolts } of posts) if (bolts !== null) expect(bolts[1] - bolts[0]).toBeGreaterThanOrEqual(64)
})
