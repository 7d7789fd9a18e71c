import { describe, expect, test } from 'vitest'
import { editDistance, nearestName } from '../../../core/job/nearest-name.ts'

describe('letters to change from one name to another', () => {
  test.each([
    ['', '', 0],
    ['abc', 'abc', 0],
    ['', 'abc', 3],
    ['abc', '', 3],
    ['widht', 'width', 1],
    ['wdth', 'width', 1],
    ['widdth', 'width', 1],
    ['wixth', 'width', 1],
    ['ab', 'ba', 1],
    // the classic example of this distance, "kitten" to "sitting"
    ['kitten', 'sitting', 3],
    // a pair swapped and then parted counts three here (optimal string alignment)
    ['ca', 'abc', 3],
  ])('%s to %s', (a, b, distance) => {
    expect(editDistance(a, b)).toBe(distance)
    expect(editDistance(b, a)).toBe(distance)
  })
})

describe('the nearest known name', () => {
  const known = ['width', 'depth', 'height', 'gap']
  test.each([
    ['widht', 'width'],
    ['WIDTH', 'width'],
    ['heigth', 'height'],
    ['gab', 'gap'],
    ['xyz', null],
    ['w', null],
    ['breadth of the deck', null],
    ['', null],
  ])('%s', (written, nearest) => {
    expect(nearestName(written, known)).toBe(nearest)
  })

  test('the earlier of two that are equally near', () => {
    expect(nearestName('cat', ['car', 'cab'])).toBe('car')
  })
})
