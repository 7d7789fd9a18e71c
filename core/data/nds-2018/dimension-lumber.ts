import type { DimensionLumber } from './types.ts'

/**
 * Reference design values of No.2 dimension lumber, 2 to 4 in thick, psi. Southern Pine is tabled by width, its size
 * effect included; the others take the size factor.
 */
export const DIMENSION_LUMBER: DimensionLumber = {
  SP: {
    source: {
      document: 'NDS Supplement',
      edition: '2018',
      clause: 'Table 4B',
      confidence: 'verified',
      note: 'Read in a public source file that quotes the SPIB values of 2013.',
    },
    common: { shear: 175, compressionAcross: 565, modulus: 1400000, leastModulus: 510000, gravity: 0.55 },
    byDepth: {
      4: { bending: 1100, tension: 675, compression: 1450 },
      6: { bending: 1000, tension: 600, compression: 1400 },
      8: { bending: 925, tension: 550, compression: 1350 },
      10: { bending: 800, tension: 475, compression: 1300 },
      12: { bending: 750, tension: 450, compression: 1250 },
    },
  },
  DFL: {
    source: {
      document: 'NDS Supplement',
      edition: '2018',
      clause: 'Table 4A',
      confidence: 'verified',
      note: 'Read in a public source file that quotes the table.',
    },
    common: { shear: 180, compressionAcross: 625, modulus: 1600000, leastModulus: 580000, gravity: 0.5 },
    byDepth: { any: { bending: 900, tension: 575, compression: 1350 } },
  },
  HF: {
    source: {
      document: 'NDS Supplement',
      edition: '2018',
      clause: 'Table 4A',
      confidence: 'verified',
      note: 'Read in a public source file that quotes the table.',
    },
    common: { shear: 150, compressionAcross: 405, modulus: 1300000, leastModulus: 470000, gravity: 0.43 },
    byDepth: { any: { bending: 850, tension: 525, compression: 1300 } },
  },
  SPF: {
    source: {
      document: 'NDS Supplement',
      edition: '2018',
      clause: 'Table 4A',
      confidence: 'verified',
      note: 'Read in a public source file that quotes the table.',
    },
    common: { shear: 135, compressionAcross: 425, modulus: 1400000, leastModulus: 510000, gravity: 0.42 },
    byDepth: { any: { bending: 875, tension: 450, compression: 1150 } },
  },
  RW: {
    source: {
      document: 'NDS Supplement',
      edition: '2018',
      clause: 'Table 4A',
      confidence: 'from memory',
      note: 'E read in a public source file; the rest not read.',
    },
    common: { shear: 160, compressionAcross: 650, modulus: 1200000, leastModulus: 440000, gravity: 0.44 },
    byDepth: { any: { bending: 925, tension: 525, compression: 950 } },
  },
  RWO: {
    source: {
      document: 'NDS Supplement',
      edition: '2018',
      clause: 'Table 4A',
      confidence: 'from memory',
      note: 'E read in a public source file; the rest not read.',
    },
    common: { shear: 160, compressionAcross: 425, modulus: 1000000, leastModulus: 370000, gravity: 0.37 },
    byDepth: { any: { bending: 725, tension: 425, compression: 700 } },
  },
  WC: {
    source: {
      document: 'NDS Supplement',
      edition: '2018',
      clause: 'Table 4A',
      confidence: 'from memory',
      note: 'E read, and it reproduces the deflection cells of the joist table; the rest not read.',
    },
    common: { shear: 155, compressionAcross: 425, modulus: 1000000, leastModulus: 370000, gravity: 0.36 },
    byDepth: { any: { bending: 700, tension: 425, compression: 650 } },
  },
  NS: {
    source: {
      document: 'NDS Supplement',
      edition: '2018',
      clause: 'Table 4A',
      confidence: 'from memory',
      note: 'Fb and Fv reproduce the bending cells of the joist table and the 2018 beam table; the rest not read.',
    },
    common: { shear: 110, compressionAcross: 350, modulus: 1100000, leastModulus: 400000, gravity: 0.35 },
    byDepth: { any: { bending: 625, tension: 275, compression: 850 } },
  },
}
