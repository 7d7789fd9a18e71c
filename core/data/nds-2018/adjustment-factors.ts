import type { Source } from '../types.ts'

interface AdjustmentFactors {
  readonly source: Source
  readonly [factor: string]: unknown
}

/** CF by nominal depth, in; not for Southern Pine. */
export const SIZE_FACTOR = {
  source: {
    document: 'NDS',
    edition: '2018',
    clause: 'Supplement Table 4A',
    confidence: 'verified',
    note: 'Read in a public source file that quotes the standard. The 1.1 for Southern Pine 4 in thick and 8 in and deeper is from memory.',
  },
  bendingThin: { '4': 1.5, '5': 1.4, '6': 1.3, '8': 1.2, '10': 1.1, '12': 1.0 },
  bendingFour: { '4': 1.5, '5': 1.4, '6': 1.3, '8': 1.3, '10': 1.2, '12': 1.1 },
  tension: { '4': 1.5, '5': 1.4, '6': 1.3, '8': 1.2, '10': 1.1, '12': 1.0 },
  compression: { '4': 1.15, '5': 1.1, '6': 1.1, '8': 1.05, '10': 1.0, '12': 1.0 },
  southernPineFourThickWide: 1.1,
} as const satisfies AdjustmentFactors

/** CM: moisture over 19 % in use. */
export const WET_SERVICE = {
  source: {
    document: 'NDS',
    edition: '2018',
    clause: 'Supplement Tables 4A, 4B and 4D',
    confidence: 'verified',
    note: 'Read in a public source file that quotes the standard.',
  },
  dimension: {
    bending: 0.85,
    tension: 1.0,
    shear: 0.97,
    compressionAcross: 0.67,
    compression: 0.8,
    modulus: 0.9,
  },
  timber: {
    bending: 1.0,
    tension: 1.0,
    shear: 1.0,
    compressionAcross: 0.67,
    compression: 0.91,
    modulus: 1.0,
  },
  bendingFreeTo: 1150,
  compressionFreeTo: 750,
} as const satisfies AdjustmentFactors

/** Ci: lumber incised for treatment. */
export const INCISING = {
  source: {
    document: 'NDS',
    edition: '2018',
    clause: '4.3.8',
    confidence: 'verified',
    note: 'Read in two public source files that quote the table.',
  },
  modulus: 0.95,
  strength: 0.8,
  compressionAcross: 1,
} as const satisfies AdjustmentFactors

/** CD by the shortest load of a combination. */
export const LOAD_DURATION = {
  source: {
    document: 'NDS',
    edition: '2018',
    clause: '2.3.2',
    confidence: 'verified',
    note: 'Read in a public source file that quotes the standard.',
  },
  permanent: 0.9,
  floor: 1,
  snow: 1.15,
  construction: 1.25,
  wind: 1.6,
  impact: 2,
} as const satisfies AdjustmentFactors

/** Cr: three bending members or more, at most 24 in apart, joined so that they share load. */
export const REPETITIVE = {
  source: {
    document: 'NDS',
    edition: '2018',
    clause: '4.3.9',
    confidence: 'verified',
    note: 'Read in a public source file that quotes the standard.',
  },
  factor: 1.15,
  leastMembers: 3,
  greatestSpacing: 24,
} as const satisfies AdjustmentFactors
