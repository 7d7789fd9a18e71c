import fc from 'fast-check'
import { intersection as polyIntersection } from 'polyclip-ts'
import { describe, expect, it } from 'vitest'
import {
  common,
  firstCrossing,
  insetBy,
  isInside,
  type PlanePoint,
  type Polygon,
  stripParts,
  turnedPositive,
  twiceArea,
  without,
} from '../../../core/geometry/index.ts'

const p = (...corners: readonly (readonly [number, number])[]): Polygon => corners.map(([x, y]) => ({ x, y }))
const square = p([0, 0], [100, 0], [100, 100], [0, 100])
const bent = p([0, 0], [100, 0], [100, 40], [60, 40], [60, 100], [0, 100])

/** A star-shaped outline on the grid, simple by its making. */
const star: fc.Arbitrary<Polygon> = fc
  .array(fc.record({ turn: fc.integer({ min: 5, max: 60 }), reach: fc.integer({ min: 200, max: 4000 }) }), {
    minLength: 4,
    maxLength: 9,
  })
  .map((spokes) => {
    const whole = spokes.reduce((sum, { turn }) => sum + turn, 0)
    let turned = 0
    return spokes.map(({ turn, reach }) => {
      turned += turn
      const angle = (2 * Math.PI * turned) / whole
      return { x: Math.round(reach * Math.cos(angle)) + 5000, y: Math.round(reach * Math.sin(angle)) + 5000 }
    })
  })
  .filter((polygon) => firstCrossing(polygon) === null && twiceArea(polygon) > 1000)

describe('areas and turns', () => {
  it('are positive where corners turn from x towards y, and exact', () => {
    expect(twiceArea(square)).toBe(20_000)
    expect(twiceArea([...square].reverse())).toBe(-20_000)
    // 100 × 40 + 60 × 60
    expect(twiceArea(bent)).toBe(2 * 7600)
  })

  it('keep the first corner when the order is turned', () => {
    const turned = turnedPositive([...bent].reverse())
    expect(turned[0]).toEqual({ x: 0, y: 100 })
    expect(twiceArea(turned)).toBe(2 * 7600)
  })
})

describe('crossings of an outline', () => {
  it('finds none in a simple one', () => {
    expect(firstCrossing(bent)).toBeNull()
  })

  it.each([
    ['edges that cross', p([0, 0], [100, 0], [0, 100], [100, 100]), [1, 3]],
    ['a corner on another edge', p([0, 0], [100, 0], [100, 100], [50, 0], [0, 100]), [0, 2]],
    ['a way that folds back', p([0, 0], [100, 0], [50, 0], [50, 100]), [0, 1]],
  ])('finds %s', (_name, polygon, edges) => {
    expect(firstCrossing(polygon)).toEqual(edges)
  })
})

describe('strips', () => {
  it('end where a slanting edge cuts either side of a board', () => {
    // the far edge falls from (60, 100) to (100, 60)
    const clipped = p([0, 0], [100, 0], [100, 60], [60, 100], [0, 100])
    const [part] = stripParts(clipped, 70, 80)
    expect([part?.left.high, part?.right.high]).toEqual([90, 80])
    expect([part?.left.low, part?.right.low]).toEqual([0, 0])
  })

  it('end square before a corner that reaches into the board', () => {
    const dented = p([0, 0], [100, 0], [100, 100], [55, 60], [10, 100], [0, 100])
    const [part] = stripParts(dented, 50, 60)
    expect([part?.left.high, part?.right.high]).toEqual([60, 60])
  })

  it('are two where the outline has a gap along the board', () => {
    const court = p([0, 0], [100, 0], [100, 100], [0, 100], [0, 60], [80, 60], [80, 40], [0, 40])
    expect(stripParts(court, 10, 20).map(({ left }) => [left.low, left.high])).toEqual([
      [0, 40],
      [60, 100],
    ])
  })

  it('are on one side of a cut into the outline, where they end at its inner corner on their long edge', () => {
    // the cut runs from (60, 0) to its inner corner at (50, 80): what lies left of it narrows to a point at (60, 0)
    const cut = p([0, 40], [60, 0], [50, 80], [100, 70], [100, 100], [0, 100])
    expect(stripParts(cut, 50, 60).map(({ left, right }) => [left.low, right.low])).toEqual([[80, 78]])
  })

  it('do not cross a cut that runs through them at a slant', () => {
    // the cut is 20 wide and falls by 40 along the strip: what is above it on the right lies beside what is below on the left
    const cut = p([0, 0], [100, 0], [100, 40], [40, 100], [40, 120], [100, 60], [100, 200], [0, 200])
    expect(
      stripParts(cut, 50, 90).map(({ left, right }) => [left.low, left.high, right.low, right.high]),
    ).toEqual([
      [0, 90, 0, 50],
      [110, 200, 70, 200],
    ])
  })

  it('are not shortened by an arm that winds around their end and comes back beyond them', () => {
    // from a block at the right two arms run left, (0, 0) and (20, 60); the first goes on around the second's end
    const wound = p(
      ...([
        [0, 0],
        [120, 0],
        [120, 100],
        [20, 100],
        [20, 60],
        [45, 60],
      ] as const),
      ...([
        [45, 20],
        [10, 20],
        [10, 120],
        [50, 120],
        [50, 140],
        [0, 140],
      ] as const),
    )
    expect(stripParts(wound, 40, 60).map(({ left }) => [left.low, left.high])).toEqual([
      [0, 20],
      [60, 100],
    ])
  })

  it('do not lie over each other where the outline forks within the board', () => {
    // left of the corner (52, 40) it is one; right of it a point stands upright and a level arm runs on
    const forked = p([0, 0], [100, 0], [100, 40], [52, 40], [70, 200], [60, 160], [0, 160])
    expect(stripParts(forked, 40, 55).map(({ left }) => [left.low, left.high])).toEqual([
      [0, 40],
      [40 + (160 * 3) / 18, 160],
    ])
  })

  it('lie inside the outline, and with the strips beside them make up its area', () => {
    fc.assert(
      fc.property(star, fc.constantFrom(2, 48), (polygon, wide) => {
        const xs = polygon.map(({ x }) => x)
        let sum = 0
        for (let x = Math.min(...xs); x < Math.max(...xs); x += wide) {
          for (const { left, right } of stripParts(polygon, x, x + wide))
            sum += ((left.high - left.low + right.high - right.low) * wide) / 2
        }
        const whole = twiceArea(polygon) / 2
        expect(sum).toBeLessThanOrEqual(whole * (1 + 1e-9))
        // what strips leave out lies where their ends are cut square and in the tips
        expect(sum).toBeGreaterThan(whole * 0.97 - 30_000 * wide)
      }),
    )
  })
})

describe('insets', () => {
  it('move each edge by its own width', () => {
    expect(insetBy(square, [10, 0, 5, 0]).polygon).toEqual(p([0, 10], [100, 10], [100, 95], [0, 95]))
  })

  it('step where two edges of one line have unlike widths', () => {
    const edged = p([0, 0], [50, 0], [100, 0], [100, 100], [0, 100])
    const { polygon, edgeOf } = insetBy(edged, [10, 20, 0, 0, 0])
    expect(polygon).toEqual(p([0, 10], [50, 10], [50, 20], [100, 20], [100, 100], [0, 100]))
    expect(edgeOf).toEqual([0, null, 1, 2, 3, 4])
  })

  it('meet at a corner that reaches in, where one edge moves inward and the other outward', () => {
    // of a 100 x 100 square all but 50 x 50 at its far right; edge 2 moves in by 4 and edge 3 out by 2
    const reaching = p([0, 0], [100, 0], [100, 50], [50, 50], [50, 100], [0, 100])
    const { polygon, edgeOf } = insetBy(reaching, [0, 0, 4, -2, 0, 0])
    expect(polygon).toEqual(p([0, 0], [100, 0], [100, 46], [52, 46], [52, 100], [0, 100]))
    expect(edgeOf).toEqual([0, 1, 2, 3, 4, 5])
    const turned = insetBy(reaching, [0, 0, -2, 4, 0, 0])
    expect(turned.polygon).toEqual(p([0, 0], [100, 0], [100, 52], [46, 52], [46, 100], [0, 100]))
  })

  it('move outward by a negative width', () => {
    expect(twiceArea(insetBy(square, [-1, -1, -1, -1]).polygon)).toBe(2 * 102 * 102)
  })
})

describe('clipping', () => {
  const areaOf = (polygons: readonly Polygon[]) => polygons.reduce((sum, one) => sum + twiceArea(one) / 2, 0)

  it('agrees with another clipping library on what two outlines share', () => {
    const ring = (polygon: Polygon): [number, number][] => polygon.map(({ x, y }) => [x, y])
    fc.assert(
      fc.property(star, star, (a, b) => {
        const theirs = polyIntersection([[ring(a)]], [[ring(b)]])
        const area = theirs.reduce(
          (sum, shape) =>
            sum +
            shape.reduce((own, one) => own + twiceArea(one.map(([x, y]): PlanePoint => ({ x, y }))) / 2, 0),
          0,
        )
        expect(Math.abs(areaOf(common([a], [b])) - Math.abs(area))).toBeLessThan(20)
      }),
    )
  })

  it('parts an outline into what is shared and what is not', () => {
    fc.assert(
      fc.property(star, star, (a, b) => {
        const sum = areaOf(common([a], [b])) + areaOf(without([a], [b]))
        expect(Math.abs(sum - twiceArea(a) / 2)).toBeLessThan(20)
      }),
    )
  })

  it('holds a place inside just where the shared part does', () => {
    expect(isInside(bent, { x: 60, y: 70 })).toBe(true)
    expect(isInside(bent, { x: 61, y: 70 })).toBe(false)
    expect(isInside(bent, { x: 30, y: 30 })).toBe(true)
  })
})
