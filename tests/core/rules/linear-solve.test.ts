import { describe, expect, it } from 'vitest'
import { solveLinear } from '../../../core/rules/linear-solve.ts'

describe('linear equations', () => {
  it('are solved for several right sides at once', () => {
    // by hand: 4 × 1 + 2 = 6, 1 + 3 × 2 = 7; 4 × −2 + 5 = −3, −2 + 15 = 13
    const [first, second] = solveLinear(
      [
        [4, 1],
        [1, 3],
      ],
      [
        [6, 7],
        [-3, 13],
      ],
    )
    for (const [i, value] of [1, 2].entries()) expect(first?.[i]).toBeCloseTo(value, 12)
    for (const [i, value] of [-2, 5].entries()) expect(second?.[i]).toBeCloseTo(value, 12)
  })

  it('may have nothing between two unknowns', () => {
    // by hand: 2 × 3 − 1 = 5, −3 + 2 × 1 − 2 = −3, −1 + 2 × 2 = 3
    const [x] = solveLinear(
      [
        [2, -1, 0],
        [-1, 2, -1],
        [0, -1, 2],
      ],
      [[5, -3, 3]],
    )
    expect(x).toHaveLength(3)
    for (const [i, value] of [3, 1, 2].entries()) expect(x?.[i]).toBeCloseTo(value, 12)
  })

  it('are refused where nothing holds an unknown', () => {
    expect(() =>
      solveLinear(
        [
          [1, 1],
          [1, 1],
        ],
        [[1, 1]],
      ),
    ).toThrow('not held by its supports')
    expect(() => solveLinear([[-1]], [[1]])).toThrow('not held by its supports')
  })
})
