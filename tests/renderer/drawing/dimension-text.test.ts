import { expect, test } from 'vitest'
import type { Primitive } from '../../../core/papers/index.ts'
import {
  ALONE,
  nearestUpright,
  placeOfText,
  placeOfUprightText,
  placesInChains,
} from '../../../renderer/drawing/dimension-text.ts'

test('a text stands in the middle of a line that has room for it', () => {
  expect(placeOfText(`7'-2"`, [100, 260], ALONE)).toEqual({ at: 180, anchor: 'middle' })
})

test('where its line is too short it stands beyond the end of the chain, never over the line, and amid a chain nowhere', () => {
  const short = (isFirst: boolean, isLast: boolean) => placeOfText(`1'-0"`, [100, 122], { isFirst, isLast })
  expect(short(true, false)).toEqual({ at: 93, anchor: 'end' })
  expect(short(false, true)).toEqual({ at: 129, anchor: 'start' })
  expect(short(false, false)).toBeNull()
})

test('a chain has its first and its last dimension, wherever it begins, and one apart is both', () => {
  const part = (id: string, x1: number, x2: number, offset: number): Primitive => ({
    kind: 'dimension',
    id,
    layer: 'dimensions',
    x1,
    y1: 8,
    x2,
    y2: 8,
    offset,
    text: '',
  })
  const chain = [part('a', 168, 180, 15), part('b', 180, 228, 15), part('c', 228, 240, 15)]
  const places = placesInChains([...chain, part('whole', 240, 300, 29)])
  expect(places.get('a')).toEqual({ isFirst: true, isLast: false })
  expect(places.get('b')).toEqual({ isFirst: false, isLast: false })
  expect(places.get('c')).toEqual({ isFirst: false, isLast: true })
  expect(places.get('whole')).toEqual(ALONE)
})

test('an upright text is turned where its line has room for it, on the outer side where it is a little short, and level where not', () => {
  // 9 letters of 5.6 px and 6 px clear of the ticks: 56.4 px; 0.7 of the letters: 35.3 px
  expect(placeOfUprightText(`1'-8 5/8"`, [300, 357])).toBe('beside')
  expect(placeOfUprightText(`1'-8 5/8"`, [300, 355])).toBe('outside')
  expect(placeOfUprightText(`1'-8 5/8"`, [300, 335])).toBe('level')
})

test('upright dimensions of a small drawing stand off what can be moved, and those of a large one to scale', () => {
  // 17 in are 544 ticks: at 0.05 px a tick 27.2 px, at 0.06 px more than the 30 px that are kept
  expect(nearestUpright(0.05)).toBeCloseTo(2.8)
  expect(nearestUpright(0.06)).toBe(0)
})
