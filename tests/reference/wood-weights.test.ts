import { describe, it } from 'vitest'
import { woodDensity } from '../../core/data/index.ts'
import { apart } from './close-to.ts'

// American Wood Council, Wood Structural Design Data, 1992 revisions, property table. The moisture that it is made for
// was not visible on the part read; 15 percent meets every row.
describe('weight of wood, lb per cu ft, example MW-02', () => {
  it.each([
    ['Southern Pine', 0.55, 36.7],
    ['Douglas fir-larch', 0.5, 33.6],
    ['hem-fir', 0.43, 29.2],
    ['spruce-pine-fir', 0.42, 28.5],
    ['western cedars', 0.36, 24.6],
    ['redwood, close grain', 0.44, 29.8],
    ['redwood, open grain', 0.37, 25.3],
    ['northern species', 0.35, 24.0],
    ['ponderosa pine', 0.43, 29.2],
    ['northern red oak', 0.68, 44.7],
  ])('%s, gravity %s: %s', (_name, gravity, published) => {
    apart(woodDensity(gravity, 15), published, 0.06)
  })
})
