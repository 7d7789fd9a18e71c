import { describe, expect, it } from 'vitest'
import { houseHoldDowns } from '../../../core/frame/index.ts'
import { inches } from '../../../core/units/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { designed } from '../../fixtures/designed.ts'
import { apart, corners, type Place } from '../../fixtures/shapes-apart.ts'

// A hold-down to the house lies on the side of the first or the last joist in a ledger, from 1 in to 8 in off it and
// 2-1/2 in wide (from memory), on the side away from the deck's end, where somebody kneels between two joists. Guard
// posts and the blocks behind them are as deep as the joist: in its place they would stand in it.

describe.each(CATALOGUE)('the guard round $file', ({ job }) => {
  it('leaves the hold-downs to the house their places', () => {
    const made = designed({
      ...job,
      guard: { ...(job as { guard?: object }).guard, where: 'all open edges' },
    })
    const { frame, guard } = made
    const wood = [...frame.members, ...(guard?.members ?? [])].filter(({ role }) =>
      ['guard post', 'guard blocking', 'blocking', 'joist', 'header', 'hip', 'rim'].includes(role),
    )
    const clashes = houseHoldDowns(frame).flatMap(({ joist, end }) => {
      const { x0, x1, y0, y1 } = joist.box
      const ledger = frame.members.find(
        ({ role, box }) =>
          role === 'ledger' && box.x0 <= x1 + 1 && box.x1 >= x0 - 1 && box.y0 <= y1 + 1 && box.y1 >= y0 - 1,
      )
      if (ledger === undefined) throw new Error(joist.mark)
      const [near, far] = [inches(1), inches(8)]
      const wide = inches(2.5)
      const alongY = end === 'left' || end === 'right'
      const atStart = alongY
        ? ledger.box.y0 + ledger.box.y1 < y0 + y1
        : ledger.box.x0 + ledger.box.x1 < x0 + x1
      const [from, to] = alongY ? [y0, y1] : [x0, x1]
      const off = atStart ? [from + near, from + far] : [to - far, to - near]
      const inward = end === 'left' || end === 'rear'
      const [low, high] = alongY ? [x0, x1] : [y0, y1]
      const across = inward ? [high, high + wide] : [low - wide, low]
      const [a = 0, b = 0, c = 0, d = 0] = [...off, ...across]
      const place: Place[] = alongY
        ? [
            [c, a],
            [d, a],
            [d, b],
            [c, b],
          ]
        : [
            [a, c],
            [b, c],
            [b, d],
            [a, d],
          ]
      return wood
        .filter(({ box }) => box.z1 > joist.box.z0 && box.z0 < joist.box.z1)
        .filter((one) => one.id !== joist.id && apart(corners(one), place) < -2)
        .map(({ mark, role }) => `${role} ${mark} beside ${joist.mark}`)
    })
    expect(clashes).toEqual([])
  })
})

it('a block that gives way to one stands aside in the same bay, not a bay further on', () => {
  // joists at 96 in and 112 in; in the last bay the block against the post lies 7 in to 8-1/2 in from the house, where in the
  // next one the hold-down beside the joist at 112 in reaches to 9-1/2 in: 4 in further off the house
  const made = designed({
    size: { width: '120 in', depth: '10 ft', height: '48 in' },
    frame: { joists: { size: '2x10', spacing: '16 in' } },
    guard: { where: 'all open edges' },
  })
  const places = made.guard?.members
    .filter(({ role, cause }) => role === 'guard blocking' && cause.ids.includes('guard-post-1'))
    .map(({ box }) => [box.x0, box.x1, box.y0, box.y1].map((at) => at / 32))
  expect(places).toEqual([
    [112.75, 118.5, 7, 8.5],
    [96.75, 111.25, 11, 12.5],
  ])
})
