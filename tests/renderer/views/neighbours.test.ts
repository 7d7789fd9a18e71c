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
}

describe('the best neighbours of a width', () => {
  test('a narrower one is named with its joints and what it saves', () => {
    const [found] = neighbours([rowAt(ft(20), { perSquareFoot: cents(2_950), price: cents(821_500) })], here)
    expect(found?.text).toBe(`20'-0": no joints, −$1,214`)
    expect(found?.saves).toBe(true)
  })

  test('a wider one is named with what the added area costs', () => {
    const [found] = neighbours([rowAt(ft(24), { perSquareFoot: cents(2_960), price: cents(949_000) })], here)
    expect(found?.text).toBe(`24'-0": +$61 for 6.8 sq ft`)
    expect(found?.saves).toBe(false)
  })

  test('none is named that costs more per square foot, fails a check, has no price or lies more than 4 ft off', () => {
    const rows = [
      rowAt(ft(23), { perSquareFoot: cents(2_990) }),
      rowAt(ft(22), { perSquareFoot: cents(2_000), failing: 1 }),
      rowAt(ft(21), { perSquareFoot: cents(2_000), fault: 'no price' }),
      rowAt(ft(19), { perSquareFoot: cents(2_000) }),
    ]
    expect(neighbours(rows, here)).toEqual([])
  })

  test('where an owner builds, cost is compared and not price', () => {
    const owner: Here = { ...here, basis: 'cost', amount: 600_000 }
    const [found] = neighbours(
      [rowAt(ft(22), { perSquareFoot: cents(2_000), cost: cents(580_000), framingJoints: 1 })],
      owner,
    )
    expect(found?.text).toBe(`22'-0": 1 joint, −$200`)
  })
})
