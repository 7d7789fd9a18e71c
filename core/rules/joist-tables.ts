import {
  JOIST_CANTILEVERS,
  JOIST_SPANS,
  type LumberSize,
  SPECIES_GROUP,
  type Species,
} from '../data/index.ts'
import { type Ticks, toFeet, toInches } from '../units/index.ts'
import { lookUpRow, type TableLookup } from './table-lookup.ts'

/**
 * Greatest joist span, whole inches, clear between supports. IRC 2021 Table R507.6: No.2, wet service, 10 psf dead.
 * @param load psf, as `spanTableLoad` gives it
 */
export function tabledJoistSpan(
  size: LumberSize,
  spacing: Ticks,
  species: Species,
  load: number,
): TableLookup {
  return lookUpRow(JOIST_SPANS, { at: [load, SPECIES_GROUP[species]], row: size, column: toInches(spacing) })
}

/**
 * Greatest joist cantilever, whole inches, by the adjacent span: the lesser of the neighbouring columns.
 * IRC 2021 Table R507.6, 40 psf; to be taken together with a quarter of the adjacent span.
 */
export function tabledCantilever(
  size: LumberSize,
  adjacentSpan: Ticks,
  species: Species,
  load: number,
): TableLookup {
  return lookUpRow(JOIST_CANTILEVERS, {
    at: [load, SPECIES_GROUP[species]],
    row: size,
    column: toFeet(adjacentSpan),
  })
}
