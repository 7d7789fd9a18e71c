import { describe, expect, test } from 'vitest'
import { cents, feet, inches, ticks } from '../../../core/units/index.ts'
import { gridAround } from '../../../renderer/state/size-grid-actions.ts'
import { jumpsOf, shadeOf } from '../../../renderer/views/site/size-shades.ts'
import { rowAt } from '../../fixtures/compare-rows.ts'

describe('the shade of a size', () => {
  test('goes from the cheapest to the dearest in five steps', () => {
    const shade = shadeOf([5000, 6000, 5500])
    expect([5000, 5199, 5200, 5500, 5999, 6000].map(shade)).toEqual([0, 0, 1, 2, 4, 4])
  })
  test('is one for all where all cost the same', () => {
    expect(shadeOf([5000, 5000])(5000)).toBe(0)
  })
})

test('jumps are the steps that cost clearly more than the middle one, in the order of the widths', () => {
  const costs = [100, 110, 140, 150, 160, 200, 210]
  const rows = costs.map((cost, n) => rowAt(ticks(feet(12) + n * inches(6)), { cost: cents(cost * 100) }))
  expect(jumpsOf(rows, 5).map(({ to, more }) => [to.width, more])).toEqual([
    [feet(13), 3000],
    [ticks(feet(14) + inches(6)), 4000],
  ])
  expect(jumpsOf(rows, 1).map(({ more }) => more)).toEqual([4000])
})

test('the grid around a size holds the size itself and stays within what a deck can be', () => {
  const step = feet(1)
  const middle = gridAround({ width: feet(20), depth: feet(12) }, step)
  expect(middle).toEqual({
    width: { from: feet(16), to: feet(24), step },
    depth: { from: feet(8), to: feet(16), step },
  })
  const small = gridAround({ width: feet(5), depth: ticks(feet(4) + inches(6)) }, step)
  expect(small.width.from).toBe(feet(4))
  expect(small.depth.from).toBe(ticks(feet(4) + inches(6)))
})
