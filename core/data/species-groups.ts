import type { Species, SpeciesGroup } from './types.ts'

/** The group of the IRC's deck tables that a species belongs to. Ponderosa and red pine, of the last group, are not offered. */
export const SPECIES_GROUP: { readonly [species in Species]: SpeciesGroup } = {
  SP: 'SP',
  DFL: 'DF_HF_SPF',
  HF: 'DF_HF_SPF',
  SPF: 'DF_HF_SPF',
  RW: 'RW_WC_PP_RP',
  WC: 'RW_WC_PP_RP',
}
