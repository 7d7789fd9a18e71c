import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
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

  it('is cut by an opening on its line, and hangs from its headers', () => {
    // an L: 20 ft by 8 ft, and 10 ft wide as far as 16 ft. The gap inside the second of two courses along its step lies
    // 2 × (5-1/2 + 1/8) − 1/16 in from the decking's edge, which overhangs by 1: 120 + 1 − 11-3/16 = 109.8125 in
    const made = design({
      version: 1,
      size: { height: '42 in' },
      shape: {
        outline: "0,0; 20',0; 20',8'; 10',8'; 10',16'; 0,16'",
        openings: '80 in, 36 in, 32 in, 36 in',
      },
      decking: { border: 2 },
      frame: { beams: { front: { setback: '12 in' } } },
    })
    if (!made.ok) throw new Error(JSON.stringify(made.error))
    const { members } = made.value.frame
    const centre = 109.8125 * 32
    const cut = members.filter(
      ({ role, box }) => role === 'joist' && box.x0 < centre && box.x1 > centre && box.y1 - box.y0 > 0,
    )
    // doubled headers, 3 in, before and after the opening from 36 to 72 in
    expect(cut.map(({ box }) => [box.y0 / 32, box.y1 / 32])).toEqual([
      [1.5, 33],
      [75, 190.5],
    ])
    expect(cut.map(({ bearings }) => bearings.filter((id) => id.startsWith('header')))).toEqual([
      ['header-1a-1'],
      ['header-1b-1'],
    ])
    expect(cut.map(({ cause }) => cause.fields[0])).toEqual(['decking.border', 'decking.border'])
  })

  it('stands on a whole tick under a gap of odd ticks', () => {
    // a gap of 21/32 in: its middle is half a tick off the tape's marks
    const made = design({ decking: { border: 1, gap: '21/32 in' } })
    if (!made.ok) throw new Error(JSON.stringify(made.error))
    const under = made.value.frame.members.filter(({ cause }) => cause.fields[0] === 'decking.border')
    const joists = under.filter(({ role }) => role === 'joist')
    // 5-1/2 + 21/64 − 1 in from the left edge: 4 53/64, of which the tape has 4 27/32 or 4 13/16
    expect(joists.length).toBeGreaterThan(1)
    for (const { box } of joists) expect(Number.isInteger(box.x0)).toBe(true)
    const first = Math.min(...joists.map(({ box }) => (box.x0 + box.x1) / 64))
    expect(Math.abs(first - (4 + 53 / 64))).toBeLessThanOrEqual(1 / 64)
  })
})
