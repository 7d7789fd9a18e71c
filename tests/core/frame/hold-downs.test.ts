import { describe, expect, it } from 'vitest'
import { houseHoldDowns } from '../../../core/frame/index.ts'
import { houseHoldDownWords } from '../../../core/papers/build/house-hold-downs.ts'
import { designed } from '../../fixtures/designed.ts'

function framed(width: number, spacing: number, zones = '') {
  const made = designed({
    shape: { outline: `0, 0; ${width}, 0; ${width}, 144; 0, 144`, zones, seams: 'flush' },
    size: { height: '60 in' },
    frame: { joists: { spacing }, beams: { front: { setback: 12 } } },
    decking: { size: '2x6' },
  })
  return made
}

/** How far the far side of each hold-down lies from the deck's end beside it, inches. */
function reaches(width: number, spacing: number, zones = '') {
  return houseHoldDowns(framed(width, spacing, zones).frame).map(
    ({ end, place: { x0, x1 } }) => (end === 'left' ? x1 : width * 32 - x0) / 32,
  )
}

describe('hold-downs to the house, IRC 2021 R507.9.2', () => {
  it('stand at the ends of the deck in whatever order its parts along the wall are stated', () => {
    // joists 12 in from either end, 3/4 in of them and 2-1/2 in beyond
    const atEnds = [12 + 0.75 + 2.5, 12 + 0.75 + 2.5]
    for (const zones of ['', '0, 0, 96, 144: away', '96, 0, 60, 144: away', '144, 0, 96, 144: away'])
      expect(reaches(240, 12, zones), zones).toEqual(atEnds)
  })

  it('are told by the check where joists 24 in apart keep them farther from the deck’s end than 24 in', () => {
    const said = (spacing: number) =>
      framed(240, spacing).checks.find(({ id }) => id === 'lateral-load')?.remedy ?? ''
    // 24 in to the joist's middle, 3/4 in of it and 2-1/2 in beside it
    expect(reaches(240, 24)).toEqual([27.25, 27.25])
    expect(said(24)).toContain('At J1 it reaches 2\'-3 1/4", J9 it reaches 2\'-3 1/4" from the deck’s end')
    expect(said(16)).not.toContain('from the deck’s end')
  })

  it('are said to be at the end of the ledger where a lone joist leaves one to the end joist', () => {
    expect(houseHoldDownWords(framed(48, 24))).toBe(
      'J1, 1\'-10 1/2" from the left end of its wall’s ledger to its middle; E2, at the right end',
    )
  })

  it('have their places at a wall at an angle too, where joists end off the grid', () => {
    const made = designed({
      shape: { outline: '0, 0; 240, 31; 240, 160; 0, 160', walls: '1' },
      size: { height: '60 in' },
      guard: { where: 'all open edges' },
      ground: { base: '14 in' },
    })
    expect(houseHoldDowns(made.frame)).toHaveLength(2)
  })
})
