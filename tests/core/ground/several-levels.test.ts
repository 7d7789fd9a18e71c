import { describe, expect, test } from 'vitest'
import { design } from '../../../core/design.ts'
import { layoutChecks, layoutCorners, layoutStrings } from '../../../core/ground/index.ts'
import { printLength } from '../../../core/units/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'

const made = design(CATALOGUE.find(({ file }) => file === 'largest.json')?.job ?? {})
if (!made.ok) throw new Error(JSON.stringify(made.error))
const deck = made.value
const { strings, crossings } = layoutStrings(deck)

/** Whether a place lies on a string, two feet or more from each of its free ends. */
const reaches = ({ x1, y1, x2, y2 }: (typeof strings)[number], x: number, y: number): boolean =>
  x >= Math.min(x1, x2) && x <= Math.max(x1, x2) && y >= Math.min(y1, y2) && y <= Math.max(y1, y2)

describe('the layout of a deck on several levels', () => {
  test('has strings that reach every hole that is said to lie under them', () => {
    expect(crossings.length).toBe(deck.frame.footings.length)
    for (const { number, along, fromWall, strings: named } of crossings)
      for (const name of named.split(' × '))
        expect(
          strings.some((one) => one.name === name && reaches(one, along, fromWall)),
          `hole ${number}, string ${name}`,
        ).toBe(true)
  })

  test('fastens no string to a wall beyond the end of the house', () => {
    // by hand: the house is known along the 30 ft of the first level; the third goes on to 44 ft
    const beyond = strings.filter(({ runs, x1 }) => runs === 'square to the wall' && x1 > 30 * 384)
    expect(beyond.length).toBeGreaterThan(0)
    for (const { y1 } of beyond) expect(y1).toBeGreaterThan(0)
  })

  test('measures diagonals only of crossings that both strings reach', () => {
    const [check] = layoutChecks(deck).filter(({ kind }) => kind === 'crossings')
    const names = [...(check?.what.matchAll(/(\w+) × (\w+)/g) ?? [])]
    expect(names).toHaveLength(4)
    for (const [, row, line] of names) {
      const [across, away] = [row, line].map((name) => strings.find((one) => one.name === name))
      if (across === undefined || away === undefined) throw new Error('a check names strings that are there')
      expect(reaches(across, away.x1, across.y1) && reaches(away, away.x1, across.y1)).toBe(true)
    }
  })

  test('has the corners of every level, each with two diagonals from the corners at the wall', () => {
    const numbers = layoutCorners(deck).map(({ number }) => number)
    expect(numbers).toEqual([1, 2, 3, 4, 201, 202, 203, 204, 301, 302, 303, 304])
    // by hand: (44, 32) ft is √(44² + 32²) = 54.406 ft from the left corner, √(14² + 32²) = 34.928 ft from the right
    const far = layoutCorners(deck).find(({ along, fromWall }) => along === 44 * 384 && fromWall === 32 * 384)
    expect([far?.fromLeftCorner, far?.fromRightCorner].map((one) => one && printLength(one))).toEqual([
      `54'-4 7/8"`,
      `34'-11 1/8"`,
    ])
  })

  test('proves each further level square by its own diagonals', () => {
    // by hand: √(24² + 15²) = 28.302 ft, √(20² + 12²) = 23.324 ft
    const levels = layoutChecks(deck).filter(({ kind }) => kind === 'level')
    expect(levels.map(({ measures }) => printLength(measures))).toEqual([`28'-3 5/8"`, `23'-3 7/8"`])
  })
})
