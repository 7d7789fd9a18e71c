import { describe, expect, it } from 'vitest'
import { insetBy, rotate, rotateBack, rotationBy } from '../../../core/geometry/index.ts'

describe('a rotation', () => {
  it('turns from x towards y, and back', () => {
    const point = rotate({ x: 100, y: 0 }, rotationBy(30))
    expect(point.x).toBeCloseTo(86.6025, 4)
    expect(point.y).toBeCloseTo(50, 9)
    const back = rotateBack(point, rotationBy(30))
    expect(back.x).toBeCloseTo(100, 9)
    expect(back.y).toBeCloseTo(0, 9)
  })

  it('by nothing leaves a place exactly where it is', () => {
    expect(rotate({ x: 7, y: 5 }, rotationBy(0))).toEqual({ x: 7, y: 5 })
  })
})

describe('an outline moved outward', () => {
  it('meets in one point at a corner that reaches in', () => {
    // an L of 10 by 10 without its corner of 4 by 4, all edges moved out by 1
    const corners: readonly (readonly [number, number])[] = [
      [0, 0],
      [10, 0],
      [10, 6],
      [6, 6],
      [6, 10],
      [0, 10],
    ]
    const { polygon } = insetBy(
      corners.map(([x, y]) => ({ x, y })),
      corners.map(() => -1),
    )
    expect(polygon.map(({ x, y }) => [x, y])).toEqual([
      [-1, -1],
      [11, -1],
      [11, 7],
      [7, 7],
      [7, 11],
      [-1, 11],
    ])
  })
})
