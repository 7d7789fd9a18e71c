import type { Source } from '../types.ts'

export type NailName = '10d × 1-1/2' | '10d common' | '10d box' | '16d common'

/** Bright nails to the pound, by dimensions of ASTM F1667. */
export const nailsPerPound: { readonly [nail in NailName]: number } = {
  '10d × 1-1/2': 129,
  '10d common': 65,
  '10d box': 86,
  '16d common': 45,
}

/** Galvanising adds weight: a pound holds 3 to 8 % fewer. The fewer is reckoned with, percent. */
export const GALVANISED_FEWER = 8

export const nailsPerPoundSource: Source = {
  document: 'ASTM F1667',
  edition: '2021',
  clause: 'nails by dimensions',
  confidence: 'from memory; reproduced',
  note: 'Steel volume and 6 % for the head; edition year from memory. 10d common 65 read in a public nail table; 16d 45 from memory (46 computed); box and hanger nails computed.',
}
