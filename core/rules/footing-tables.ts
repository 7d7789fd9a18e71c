import { FOOTING_ROUNDS, FOOTING_THICKNESSES } from '../data/index.ts'
import type { Psf } from '../units/index.ts'
import { lookUpRow, type TableLookup } from './table-lookup.ts'

/**
 * Least diameter of a round footing, whole inches. IRC 2021 Table R507.3.1; area and load up, bearing down.
 * @param area tributary area of the post, sq ft
 */
export function tabledFootingDiameter(area: number, bearing: Psf, load: Psf): TableLookup {
  return lookUpRow(FOOTING_ROUNDS, { at: [load], row: area, column: bearing })
}

/** Least thickness of a footing, whole inches, under a 6x6 post. IRC 2021 Table R507.3.1. */
export function tabledFootingThickness(area: number, bearing: Psf, load: Psf): TableLookup {
  return lookUpRow(FOOTING_THICKNESSES, { at: [load], row: area, column: bearing })
}
