import { describe, expect, it } from 'vitest'
import type { JoistPlace } from '../../../core/frame/joist-places.ts'
import { underFaults } from '../../../core/frame/under-joists.ts'

// Joists 1-1/2 in thick are 48/32 in.

const joist = (centre: number, low: number, high: number, under?: JoistPlace['under']) => {
  const stretch = { low, high, lowEdge: 0, highEdge: 2 }
  const place: JoistPlace = {
    centre,
    end: false,
    part: { left: stretch, right: stretch },
    startsAt: null,
    endsAt: null,
    trimmer: false,
    headers: [null, null],
    laps: [false, false],
    joints: [null, null],
    run: 1,
    continues: null,
    ...(under === undefined ? {} : { under }),
  }
  return { place }
}

describe('a joist that the decking asks for', () => {
  it('is refused at its field where it would stand in the one beside it', () => {
    expect(underFaults([joist(100, 0, 900), joist(147, 0, 900, 'border')], 48)).toEqual([
      {
        path: 'decking.border',
        message: 'a joist under the end of boards at a border would stand in the one beside it',
        fix: 'make that part of the deck wider, take another number of courses, or leave the border out',
      },
    ])
    expect(
      underFaults([joist(147, 0, 900, 'breaker'), joist(100, 0, 900)], 48).map(({ path }) => path),
    ).toEqual(['decking.breakers'])
  })

  it('stands face to face with another, or on the line of one that ends before it', () => {
    expect(underFaults([joist(100, 0, 900), joist(148, 0, 900, 'border')], 48)).toEqual([])
    expect(underFaults([joist(100, 0, 400), joist(100, 400, 900, 'border')], 48)).toEqual([])
  })
})
