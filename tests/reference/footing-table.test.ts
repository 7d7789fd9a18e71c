import { describe, expect, it } from 'vitest'
import { FOOTING_ROUNDS, FOOTING_SQUARES, FOOTING_THICKNESSES } from '../../core/data/index.ts'
import { footingDiameter, footingSide, footingThickness } from '../../core/rules/index.ts'

/** The footing table recomputed: 50 psf × area over the bearing, no weight of the footing, to the nearest inch. */
const LOAD = 50
const LEAST_SQUARE = 12
const LEAST_ROUND = 14

describe('IRC Table R507.3.1 at 40 psf, recomputed', () => {
  for (const area of FOOTING_ROUNDS.rowAxis.entries.map(Number)) {
    it(`${area} sq ft: 0 in apart in side, diameter and thickness`, () => {
      for (const [i, bearing] of FOOTING_ROUNDS.columnAxis.entries.map(Number).entries()) {
        const side = footingSide(LOAD * area, bearing)
        expect(FOOTING_SQUARES.blocks[0]?.rows[area]?.[i]).toBe(Math.max(LEAST_SQUARE, Math.round(side)))
        const round = Math.max(LEAST_ROUND, Math.round(footingDiameter(LOAD * area, bearing)))
        expect(FOOTING_ROUNDS.blocks[0]?.rows[area]?.[i]).toBe(round)
        // the table stands a post of 6 in on it
        expect(FOOTING_THICKNESSES.blocks[0]?.rows[area]?.[i]).toBe(Math.round(footingThickness(side, 6)))
      }
    })
  }
})
