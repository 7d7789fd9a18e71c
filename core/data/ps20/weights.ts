import type { Source, Species } from '../types.ts'

/** Specific gravity by species, oven-dry weight and volume (NDS Table 12.3.3A); the least of each group. */
export const specificGravity: { readonly [species in Species]: number } = {
  SP: 0.55,
  DFL: 0.5,
  HF: 0.43,
  SPF: 0.42,
  RW: 0.44,
  WC: 0.36,
}

/** Moisture of wood as reckoned for its weight, percent of dry weight. */
export const moistureContent = { seasoned: 19, freshlyTreated: 60 } as const

/** Where the density formula comes from. */
export const densitySource: Source = {
  document: 'NDS Supplement',
  edition: '2018',
  clause: '3.1.3, density = 62.4 · G ÷ (1 + 0.009 · G · MC) · (1 + MC ÷ 100), lb per cu ft',
  confidence: 'from memory',
  note:
    'Formula from memory, values recomputed. 60 % moisture is an upper estimate for freshly treated wood ' +
    '(common practice: 45 to 60 lb per cu ft).',
}
