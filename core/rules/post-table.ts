import { type LumberSize, POST_HEIGHTS, SPECIES_GROUP, type Species } from '../data/index.ts'
import { lookUpRow, type TableLookup } from './table-lookup.ts'

/**
 * Greatest post height, whole inches, to the underside of the beam. IRC 2021 Table R507.4.
 * @param area tributary area of the post, sq ft
 * @param load psf, as `spanTableLoad` gives it
 */
export function tabledPostHeight(
  size: LumberSize,
  area: number,
  species: Species,
  load: number,
): TableLookup {
  return lookUpRow(POST_HEIGHTS, { at: [load, SPECIES_GROUP[species]], row: size, column: area })
}
