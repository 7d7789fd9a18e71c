import { expect, test } from 'vitest'
import type { Primitive } from '../../../core/papers/index.ts'
import { continued, fitsUpright, placeOfText } from '../../../renderer/drawing/dimension-text.ts'

test('a text stands in the middle of a line that has room for it', () => {
  expect(placeOfText(`7'-2"`, [100, 260], true)).toEqual({ at: 180, anchor: 'middle' })
})

test('where its line is too short it stands beyond the end of the chain, and never over the line', () => {
  expect(placeOfText(`1'-0"`, [100, 122], true)).toEqual({ at: 93, anchor: 'end' })
  expect(placeOfText(`1'-0"`, [100, 122], false)).toEqual({ at: 129, anchor: 'start' })
})

test('only the first of a chain has room for its text at its left, wherever the chain begins', () => {
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
  expect([...continued([...chain, part('whole', 240, 300, 29)])]).toEqual(['b', 'c'])
})

test('an upright text is turned where its line has room for it, and stands level where not', () => {
  // 9 letters of 5.6 px and 6 px clear of the ticks: 56.4 px
  expect(fitsUpright(`1'-8 5/8"`, [300, 357])).toBe(true)
  expect(fitsUpright(`1'-8 5/8"`, [300, 355])).toBe(false)
})
