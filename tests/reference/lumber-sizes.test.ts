/**
 * Sources: dressed dry sizes of DOC PS 20 and section areas of NDS Supplement Table 1B, read in public tables;
 * densities recomputed from the formula of the NDS Supplement.
 */
import { describe, expect, it } from 'vitest'
import { boardFeetThousandths, type LumberSize, poundsPerFoot, sectionOf } from '../../core/data/index.ts'
import { feet, toInches } from '../../core/units/index.ts'

describe('lumber sizes of PS 20', () => {
  it.each<[LumberSize, number, number, number, number]>([
    // size, dressed thickness and width (in), area (sq in), board feet per foot
    ['2x4', 1.5, 3.5, 5.25, 0.6667],
    ['2x6', 1.5, 5.5, 8.25, 1],
    ['2x8', 1.5, 7.25, 10.875, 1.3333],
    ['2x10', 1.5, 9.25, 13.875, 1.6667],
    ['2x12', 1.5, 11.25, 16.875, 2],
    ['4x4', 3.5, 3.5, 12.25, 1.3333],
    ['4x6', 3.5, 5.5, 19.25, 2],
    ['6x6', 5.5, 5.5, 30.25, 3],
    ['8x8', 7.5, 7.5, 56.25, 5.3333],
    ['5/4x6', 1, 5.5, 5.5, 0.625],
  ])('%s is %d × %d in, %d sq in, %d board feet a foot', (size, thickness, depth, area, boardFeet) => {
    const section = sectionOf(size)
    expect([toInches(section.thickness), toInches(section.depth)]).toEqual([thickness, depth])
    expect(toInches(section.thickness) * toInches(section.depth)).toBe(area)
    expect(boardFeetThousandths(size, feet(1)) / 1000).toBeCloseTo(boardFeet, 3)
  })

  it.each<[LumberSize, number, number]>([
    ['2x10', 3.6, 4.08],
    ['2x12', 4.37, 4.96],
    ['6x6', 7.84, 8.89],
    ['5/4x6', 1.43, 1.62],
  ])('%s of Southern Pine weighs %d lb a foot seasoned, %d freshly treated', (size, seasoned, fresh) => {
    expect(poundsPerFoot(size, 'SP', 'seasoned')).toBeCloseTo(seasoned, 2)
    expect(poundsPerFoot(size, 'SP', 'freshlyTreated')).toBeCloseTo(fresh, 2)
  })
})
