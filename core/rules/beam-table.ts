import { BEAM_SPANS, type LumberSize, SPECIES_GROUP, type Species } from '../data/index.ts'
import { toFeet } from '../units/index.ts'
import { lookUpRow, type TableLookup } from './table-lookup.ts'

/**
 * Greatest beam span, whole inches, centre to centre of posts. IRC 2021 Table R507.5(1): joists from one side, No.2,
 * wet service, 10 psf dead. Only Southern Pine under 40 psf has a row that can be relied on.
 * @param effectiveSpan effective joist span, ticks, not necessarily whole
 * @param load psf, as `spanTableLoad` gives it
 */
export function tabledBeamSpan(
  size: LumberSize,
  plies: number,
  effectiveSpan: number,
  species: Species,
  load: number,
): TableLookup {
  const at = [load, SPECIES_GROUP[species]]
  return lookUpRow(BEAM_SPANS, { at, row: `${plies}-${size}`, column: toFeet(effectiveSpan) })
}
