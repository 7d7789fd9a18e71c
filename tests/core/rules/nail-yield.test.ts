import { expect, it } from 'vitest'
import { nailLateral } from '../../../core/rules/index.ts'

// NDS 2018 Table 12N, 16d common of 0.162 in, side member of 1-1/2 in, from memory: gravity 0.55, 0.50, 0.43, 0.42
it.each([
  [0.55, 154],
  [0.5, 141],
  [0.43, 122],
  [0.42, 120],
])(
  'a 16d common in wood of gravity %f bears %i lb across, as the table of nails has it',
  (gravity, pounds) => {
    expect(Math.abs(nailLateral(gravity, 0.162) - pounds)).toBeLessThan(1)
  },
)
