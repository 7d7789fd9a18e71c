import { describe, expect, test } from 'vitest'
import { cents, feet } from '../../../core/units/index.ts'
import { type Here, neighbours } from '../../../renderer/views/tape/neighbours.ts'
import { ft, rowAt } from '../rows.ts'

const here: Here = {
  width: feet(23.5),
  depth: feet(13.5),
  amount: 942_900,
  perSquareFoot: 2_972,
  basis: 'price',
  whole: false,
}
const jointed = { fitsStock: false, framingJoints: 2 } as const

describe('the neighbours of a width that are named', () => {
  test('where the present width is jointed, the nearest that is not, with what it saves', () => {
    const rows = [
      rowAt(ft(19.5), { price: cents(800_000) }),
      rowAt(ft(20), { perSquareFoot: cents(2_950), price: cents(821_500) }),
      rowAt(ft(22), { ...jointed, perSquareFoot: cents(3_000) }),
    ]
    const [found, ...more] = neighbours(rows, here)
    expect(found?.text).toBe(`20'-0": no framing joints, −$1,214`)
    expect(found?.saves).toBe(true)
    expect(more).toEqual([])
  })

  test('a wider one at a low of the curve, with what the added area costs', () => {
    const rows = [
      rowAt(ft(24), { ...jointed, perSquareFoot: cents(2_960), price: cents(949_000) }),
      rowAt(ft(24.5), { ...jointed, perSquareFoot: cents(3_010) }),
    ]
    const [found] = neighbours(rows, here)
    expect(found?.text).toBe(`24'-0": +$61 for 6.8 sq ft`)
    expect(found?.saves).toBe(false)
  })

  test('a width is no low of the curve before the width after it is known', () => {
    expect(neighbours([rowAt(ft(24), { ...jointed, perSquareFoot: cents(2_960) })], here)).toEqual([])
  })

  test('none that costs more per square foot, fails a check, has no price or lies more than 4 ft off', () => {
    const rows = [
      rowAt(ft(19), { perSquareFoot: cents(2_000) }),
      rowAt(ft(21), { ...jointed, perSquareFoot: cents(2_000), fault: 'no price' }),
      rowAt(ft(22), { ...jointed, perSquareFoot: cents(2_000), failing: 1 }),
      rowAt(ft(23), { ...jointed, perSquareFoot: cents(2_990) }),
    ]
    expect(neighbours(rows, here)).toEqual([])
  })

  test('where an owner builds, cost is compared and not price', () => {
    const owner: Here = { ...here, basis: 'cost', amount: 600_000 }
    const [found] = neighbours([rowAt(ft(22), { cost: cents(580_000) })], owner)
    expect(found?.text).toBe(`22'-0": no framing joints, −$200`)
  })
})
