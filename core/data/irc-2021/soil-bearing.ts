import type { SoilClass, Source } from '../types.ts'

/** Presumptive bearing of soils, psf, where nothing better is known; a geotechnical report replaces it. */
export const SOIL_BEARING: {
  readonly source: Source
  readonly rows: readonly {
    readonly soil: Exclude<SoilClass, 'unknown'>
    readonly psf: number
    readonly says: string
  }[]
} = {
  source: {
    document: 'IRC',
    edition: '2021',
    clause: 'Table R401.4.1',
    confidence: 'verified',
    note: 'Read in a copy of IBC 2012 Table 1806.2 and a quotation of R401.4.1.',
  },
  rows: [
    {
      soil: 'clay or silt',
      psf: 1500,
      says: 'clay, sandy clay, silty clay, clayey silt, silt, sandy silt (CL, ML, MH, CH)',
    },
    {
      soil: 'sand',
      psf: 2000,
      says: 'sand, silty sand, clayey sand, silty gravel, clayey gravel (SW, SP, SM, SC, GM, GC)',
    },
    { soil: 'sandy gravel or gravel', psf: 3000, says: 'sandy gravel, gravel (GW, GP)' },
    { soil: 'rock', psf: 4000, says: 'sedimentary and foliated rock; crystalline bedrock carries 12,000' },
  ],
}
