import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import { isBeforeOneWall, layoutChecks, layoutStrings, sightOf, tiesTo } from '../../../core/ground/index.ts'
import { footingLayout } from '../../../core/papers/drawings/footing-layout.ts'
import { footingScheduleTable, layoutCornersTable, layoutHolesTable } from '../../../core/papers/index.ts'
import { printLength } from '../../../core/units/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'

function catalogueDesign(name: string) {
  const deck = CATALOGUE.find(({ file }) => file === `${name}.json`)
  if (deck === undefined) throw new Error(`no deck ${name}`)
  const made = design(deck.job)
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value
}

/**
 * The house fills x from 8 ft on up to y = 16 ft: its walls are x = 8 ft, from corner 2 to 3, and y = 16 ft, from 3 to 4.
 * The deck is 8 ft deep around them, 28 by 24 ft outside, its beams 1 ft behind the edges, posts at 1, 7-1/2, 14, 20-1/2
 * and 27 ft along the front and 1, 6-1/2, 12, 17-1/2 and 23 ft along the left.
 */
const wrap = catalogueDesign('wrap-hip')

describe('a deck that goes around a house', () => {
  it('has no line through the house on its footing layout', () => {
    const inHouse = (x: number, y: number): boolean => x > 8 * 384 + 2 && y < 16 * 384 - 2
    for (const { x1, y1, x2, y2 } of layoutStrings(wrap).strings)
      for (let t = 0; t <= 1; t += 1 / 64)
        expect(inHouse(x1 + t * (x2 - x1), y1 + t * (y2 - y1)), `${x1} ${y1} ${x2} ${y2}`).toBe(false)
    for (const { lines } of layoutChecks(wrap))
      for (const { x1, y1, x2, y2 } of lines)
        for (let t = 0; t <= 1; t += 1 / 64)
          expect(inHouse(x1 + t * (x2 - x1), y1 + t * (y2 - y1))).toBe(false)
    const walls = footingLayout(wrap).primitives.filter(
      ({ id, kind }) => id === 'house-wall' && kind === 'line',
    )
    expect(walls).toHaveLength(2)
  })

  it('has its frame proved from the corner of the house', () => {
    const square = layoutChecks(wrap).filter(({ kind }) => kind === 'square')
    // by hand, from (8, 16) ft: to (0, 24) √(8² + 8²) = 11.314 ft; to (28, 24) √(20² + 8²) = 21.541 ft
    expect(square.map(({ measures }) => printLength(measures))).toEqual([`11'-3 3/4"`, `21'-6 1/2"`])
  })

  it('has each hole proved from two corners of the house that are in sight of it', () => {
    const rows = layoutHolesTable(wrap).rows
    // by hand: (1, 23) from (8, 16): √98 = 9.8995 ft, and from (28, 16): √(27² + 7²) = 27.8927 ft
    expect(rows[0]).toMatchObject({ one: `corner 3: 9'-10 13/16"`, other: `corner 4: 27'-10 11/16"` })
    // (1, 6-1/2) from (8, 0): √(49 + 42.25) = 9.5525 ft, and from (8, 16): √(49 + 90.25) = 11.8004 ft
    const left = rows.find(({ one }) => one?.startsWith('corner 2: 9')) ?? {}
    expect(left).toMatchObject({ one: `corner 2: 9'-6 5/8"`, other: `corner 3: 11'-9 5/8"` })
    const corners = layoutCornersTable(wrap).rows
    expect(corners.filter(({ one }) => one === 'at the house').map(({ corner }) => corner)).toEqual([
      '2',
      '3',
      '4',
    ])
  })

  it('measures its strings and its schedule from edges that are there', () => {
    const offsets = layoutStrings(wrap).strings.map(({ name, offset, from }) => [
      name,
      printLength(offset),
      from,
    ])
    expect(offsets).toContainEqual(['left', `8'-0"`, 'the wall between corners 2 and 3'])
    expect(offsets).toContainEqual(['front', `8'-0"`, 'the wall between corners 3 and 4'])
    expect(offsets).toContainEqual(['right', `20'-0"`, 'the wall between corners 2 and 3'])
    // 23 ft out of 24: 1 ft back from the front
    expect(offsets).toContainEqual(['E', `1'-0"`, 'the front edge of the frame'])
    const [first] = footingScheduleTable(wrap).rows
    expect([first?.along, first?.away]).toEqual([`1'-0"`, `1'-0"`])
  })
})

describe('what is seen from a corner of a house', () => {
  it('ends at the walls, and at their lines past the deck', () => {
    const { corners, isClear } = sightOf(wrap.layout)
    expect(corners.map(({ number }) => number).sort()).toEqual([2, 3, 4])
    const ft = (x: number, y: number) => ({ x: x * 384, y: y * 384 })
    expect(isClear(ft(0, 0), ft(0, 24))).toBe(true)
    expect(isClear(ft(0, 0), ft(28, 24))).toBe(false)
    expect(isClear(ft(8, 16), ft(0, 24))).toBe(true)
    // past corner 4 nobody has said how far the house goes
    expect(isClear(ft(30, 20), ft(30, 10))).toBe(false)
  })

  it('fixes no place by two lines that lie nearly on one another where others cross openly', () => {
    const sight = sightOf(wrap.layout)
    for (const footing of wrap.frame.footings) {
      const [one, other] = tiesTo(footing, sight)
      if (one === undefined || other === undefined) throw new Error('two ties')
      const angle = (tie: typeof one) => Math.atan2(tie.corner.y - footing.y, tie.corner.x - footing.x)
      expect(Math.abs(Math.sin(angle(one) - angle(other)))).toBeGreaterThan(0.3)
    }
  })
})

it.each([
  'l-shape',
  'rectangle-24-by-14',
  'u-shape',
  'bay-window',
  'notch-at-wall',
  'octagon-free',
  'inside-corner',
])('the layout of %s is proved or told another way, and never through a wall', (name) => {
  const made = catalogueDesign(name)
  const { isClear } = sightOf(made.layout)
  if (made.job.site.attachment === 'ledger')
    for (const { lines } of layoutChecks(made))
      for (const { x1, y1, x2, y2 } of lines) expect(isClear({ x: x1, y: y1 }, { x: x2, y: y2 })).toBe(true)
  if (name === 'l-shape' || name === 'rectangle-24-by-14') expect(isBeforeOneWall(made)).toBe(true)
})
