import {
  DCA_BEAM_SPANS,
  DCA_FOOTING_ROUNDS,
  DCA_FOOTING_THICKNESSES,
  DCA_JOIST_OVERHANGS,
  DCA_POST_HEIGHTS,
  type LumberSize,
  SPECIES_GROUP,
  type Species,
} from '../data/index.ts'
import { type Psf, type Ticks, toFeet, toInches } from '../units/index.ts'
import { lookUpRow, type TableLookup } from './table-lookup.ts'

/** Columns of the guide's post table. */
const POST_SPECIES: { readonly [species in Species]: string } = {
  SP: 'SP',
  DFL: 'DFL',
  HF: 'HF_WC',
  WC: 'HF_WC',
  RW: 'RW',
  SPF: 'PP_RP_SPF',
}

/** Greatest overhang of joists, whole inches. AWC DCA 6 Table 2, 40 psf; at 12, 16 and 24 in only, for it does not fall with the spacing. */
export function guideOverhang(size: LumberSize, spacing: Ticks, species: Species): TableLookup {
  return lookUpRow(DCA_JOIST_OVERHANGS, {
    at: [SPECIES_GROUP[species]],
    row: size,
    column: toInches(spacing),
  })
}

/** Greatest height of a 6x6 post, whole inches. AWC DCA 6 Table 4, 40 psf, joists and beam with quarter-span overhangs. */
export function guidePostHeight(beamSpan: Ticks, joistSpan: Ticks, species: Species): TableLookup {
  const at = [POST_SPECIES[species]]
  return lookUpRow(DCA_POST_HEIGHTS, { at, row: toFeet(beamSpan), column: toFeet(joistSpan) })
}

/** Least diameter of a round footing, whole inches, the concrete's weight counted. AWC DCA 6 Table 4, 40 psf, 1,500 psf. */
export function guideFootingDiameter(beamSpan: Ticks, joistSpan: Ticks, bearing: Psf): TableLookup {
  return lookUpRow(DCA_FOOTING_ROUNDS, { at: [bearing], row: toFeet(beamSpan), column: toFeet(joistSpan) })
}

/** Thickness of a footing, whole inches, a 6x6 post on it. AWC DCA 6 Table 4, 40 psf, 1,500 psf. */
export function guideFootingThickness(beamSpan: Ticks, joistSpan: Ticks, bearing: Psf): TableLookup {
  return lookUpRow(DCA_FOOTING_THICKNESSES, {
    at: [bearing],
    row: toFeet(beamSpan),
    column: toFeet(joistSpan),
  })
}

/** Greatest span of a beam, whole inches, clear between its posts. AWC DCA 6 Table 3A, 40 psf, joists from one side. */
export function guideBeamSpan(
  size: LumberSize,
  plies: number,
  joistSpan: Ticks,
  species: Species,
): TableLookup {
  return lookUpRow(DCA_BEAM_SPANS, {
    at: [species === 'SP' ? 'SP' : 'other'],
    row: `${plies}-${size}`,
    column: toFeet(joistSpan),
  })
}
