import { describe, expect, test } from 'vitest'
import { design } from '../../../core/design.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'

function deckOf(file: string) {
  const made = design(CATALOGUE.find((one) => one.file === file)?.job ?? {})
  if (!made.ok) throw new Error(file)
  return made.value
}
const wrap = deckOf('wrap-hip.json')
const placeOf = (mark: string, deck = wrap) => deck.takeoff.pieces.find((piece) => piece.mark === mark)?.place

describe('on a deck that goes around the house', () => {
  test('an end joist is named by the end at which it lies on the plan', () => {
    // E1 is the first of a wing that is 28 ft wide: its outer face at 28', its middle 3/4 in in; E2 ends the other at y = 0
    expect(placeOf('E1')).toBe(`end joist, right, at 27'-11 1/4" along`)
    expect(placeOf('E2')).toBe(`end joist, rear, at 3/4" from the rear edge`)
  })

  test('no place is counted from a wall that it does not lie at', () => {
    // GP9 stands at the front, 24 ft from the rear edge, on a deck that is 8 ft deep there
    expect(placeOf('GP9')).toContain('from the rear edge')
    expect(wrap.takeoff.pieces.filter(({ place }) => place.includes('from the wall'))).toEqual([])
  })

  test('posts that stand one behind the other have a second measure', () => {
    // posts 6 to 9 of the left beam stand 1 ft in, 5 ft 6 in apart or less
    const places = ['P6', 'P7', 'P8', 'P9'].map((mark) => placeOf(mark))
    for (const place of places) expect(place).toMatch(/^post at 1'-0" along, [\d'" /-]+ from the rear edge$/)
    expect(new Set(places).size).toBe(4)
  })

  test('blocks of both wings are told by their middles', () => {
    const told = wrap.takeoff.pieces.flatMap(({ place }) => (place.startsWith('block over') ? [place] : []))
    expect(told.length).toBeGreaterThan(4)
    for (const place of told) expect(place).toMatch(/^block over the beam, its middle at /)
  })

  test('a block’s place is not rounded to the inch: GP4 is 1 1/2" of rim and half of 3 1/2" in from the front', () => {
    const post = wrap.guard?.members.find(({ mark }) => mark === 'GP4')
    const middle = post === undefined ? 0 : (post.box.y0 + post.box.y1) / 2
    expect(middle % 32).not.toBe(0)
    expect(placeOf('GP4')).toMatch(/\/\d+" from the rear edge$/)
  })
})

test('the two end joists of a rectangle are its left and its right one', () => {
  const deck = deckOf('rectangle-24-by-14.json')
  expect(placeOf('E1', deck)).toMatch(/^end joist, left, at 3\/4" along/)
  expect(placeOf('E2', deck)).toMatch(/^end joist, right, at 23'-11 1\/4" along/)
})
