import { expect, test } from 'vitest'
import { feet, inches } from '../../../core/units/index.ts'
import { printSpots, readSpotLines } from '../../../renderer/state/spot-text.ts'

test('spots are read one a line and printed back alike', () => {
  const text = `0", 0", 0"\n23'-6", 13'-6", -6"`
  expect(readSpotLines(text)).toEqual({
    ok: true,
    value: [
      { x: '0"', y: '0"', z: '0"' },
      { x: `23'-6"`, y: `13'-6"`, z: '-6"' },
    ],
  })
  expect(printSpots([{ x: feet(23.5), y: feet(13.5), z: inches(-6) }])).toBe(`23'-6", 13'-6", -6"`)
})

test('a line with two values is refused with its number and an example', () => {
  const read = readSpotLines('0, 0, 0\n4 ft, 2 ft')
  expect(!read.ok && read.error).toMatch(/^Line 2 has 2 values: write three/)
})

test('a value that is no length is named with its line', () => {
  const read = readSpotLines('0, far, 0')
  expect(!read.ok && read.error).toMatch(/^Line 1, “far”: /)
})
