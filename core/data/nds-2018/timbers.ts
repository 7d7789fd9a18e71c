import type { Timbers } from './types.ts'

/** Reference design values of No.2 posts and timbers, 5x5 and larger, psi; wet or dry. */
export const TIMBERS: Timbers = {
  SP: {
    source: {
      document: 'NDS Supplement',
      edition: '2018',
      clause: 'Table 4D',
      confidence: 'verified',
      note: 'Fc and Emin read in a public test file that quotes the table; the other values are from memory.',
    },
    values: {
      bending: 850,
      tension: 550,
      shear: 165,
      compressionAcross: 375,
      compression: 525,
      modulus: 1200000,
      leastModulus: 440000,
      gravity: 0.55,
    },
  },
  DFL: {
    source: {
      document: 'NDS Supplement',
      edition: '2018',
      clause: 'Table 4D',
      confidence: 'verified',
      note: 'Fc and Emin read in a public test file that quotes the table; the whole row in a second file. Timbers graded by another agency may carry less in compression (475 or 375 psi, from memory): look at the grade stamp.',
    },
    values: {
      bending: 750,
      tension: 475,
      shear: 170,
      compressionAcross: 625,
      compression: 700,
      modulus: 1300000,
      leastModulus: 470000,
      gravity: 0.5,
    },
  },
  HF: {
    source: {
      document: 'NDS Supplement',
      edition: '2018',
      clause: 'Table 4D',
      confidence: 'verified',
      note: 'Fc and Emin read in a public test file that quotes the table; the other values are from memory. Timbers graded by another agency may carry less in compression (475 or 375 psi, from memory): look at the grade stamp.',
    },
    values: {
      bending: 575,
      tension: 375,
      shear: 140,
      compressionAcross: 405,
      compression: 575,
      modulus: 1100000,
      leastModulus: 400000,
      gravity: 0.43,
    },
  },
  SPF: {
    source: {
      document: 'NDS Supplement',
      edition: '2018',
      clause: 'Table 4D',
      confidence: 'verified',
      note: 'Fc and Emin read in a public test file that quotes the table; the other values are from memory.',
    },
    values: {
      bending: 500,
      tension: 325,
      shear: 125,
      compressionAcross: 425,
      compression: 500,
      modulus: 1000000,
      leastModulus: 370000,
      gravity: 0.42,
    },
  },
  RW: {
    source: {
      document: 'NDS Supplement',
      edition: '2018',
      clause: 'Table 4D',
      confidence: 'from memory',
      note: 'Not read.',
    },
    values: {
      bending: 1000,
      tension: 525,
      shear: 145,
      compressionAcross: 650,
      compression: 900,
      modulus: 1100000,
      leastModulus: 400000,
      gravity: 0.44,
    },
  },
  WC: {
    source: {
      document: 'NDS Supplement',
      edition: '2018',
      clause: 'Table 4D',
      confidence: 'from memory',
      note: 'Not read.',
    },
    values: {
      bending: 600,
      tension: 350,
      shear: 140,
      compressionAcross: 425,
      compression: 475,
      modulus: 800000,
      leastModulus: 290000,
      gravity: 0.36,
    },
  },
}
