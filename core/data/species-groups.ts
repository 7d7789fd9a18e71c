import type { TableAxis } from './code-table.ts'
import type { Species, SpeciesGroup } from './types.ts'

/** The axis of the species groups; a table need not have a page for each. */
export const SPECIES_GROUP_AXIS: TableAxis = {
  name: 'species group',
  unit: '',
  entries: ['SP', 'DF_HF_SPF', 'RW_WC_PP_RP'],
  safeSide: 'exact',
  labels: {
    SP: 'Southern Pine',
    DF_HF_SPF: 'Douglas fir-larch, hem-fir and spruce-pine-fir',
    RW_WC_PP_RP: 'redwood, western cedars, ponderosa and red pine',
  },
}

/** The group of the IRC's deck tables that a species belongs to. Ponderosa and red pine, of the last group, are not offered. */
export const SPECIES_GROUP: { readonly [species in Species]: SpeciesGroup } = {
  SP: 'SP',
  DFL: 'DF_HF_SPF',
  HF: 'DF_HF_SPF',
  SPF: 'DF_HF_SPF',
  RW: 'RW_WC_PP_RP',
  WC: 'RW_WC_PP_RP',
}
