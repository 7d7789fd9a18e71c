import type { CodeLimit } from '../code-limit.ts'
import type { Confidence, Source } from '../types.ts'

function irc(clause: string, confidence: Confidence, note: string): Source {
  return { document: 'IRC', edition: '2021', clause, confidence, note }
}

/** Single numbers of the IRC that bear on stairs and on the guards beside them, beyond those of `IRC_LIMITS`. */
export const STAIR_LIMITS = {
  riserVariation: {
    id: 'irc-2021/riser-variation',
    says: 'greatest difference between the risers of a flight',
    value: 0.375,
    unit: 'in',
    source: irc('R311.7.5.1', 'verified', 'Read on a county page that quotes the 2018 edition.'),
  },
  treadVariation: {
    id: 'irc-2021/tread-variation',
    says: 'greatest difference between the treads of a flight',
    value: 0.375,
    unit: 'in',
    source: irc('R311.7.5.2', 'from memory', 'Not read.'),
  },
  nosingVariation: {
    id: 'irc-2021/nosing-variation',
    says: 'greatest difference between the nosings of stairs, those at floors and landings too',
    value: 0.375,
    unit: 'in',
    source: irc('R311.7.5.3', 'from memory', 'Not read.'),
  },
  nosingLeast: {
    id: 'irc-2021/nosing-least',
    says: 'least nosing where treads are under 11 in deep',
    value: 0.75,
    unit: 'in',
    source: irc('R311.7.5.3', 'from memory', 'Not read.'),
  },
  nosingMost: {
    id: 'irc-2021/nosing-most',
    says: 'greatest nosing',
    value: 1.25,
    unit: 'in',
    source: irc('R311.7.5.3', 'from memory', 'Not read.'),
  },
  noNosingFrom: {
    id: 'irc-2021/no-nosing-from',
    says: 'depth of tread from which no nosing is asked for',
    value: 11,
    unit: 'in',
    source: irc('R311.7.5.3', 'from memory', 'Not read.'),
  },
  openRiser: {
    id: 'irc-2021/open-riser',
    says: 'ball that no opening between treads may pass, where the rise is more than 30 in',
    value: 4,
    unit: 'in',
    source: irc('R311.7.5.1', 'from memory', 'Not read.'),
  },
  flightRise: {
    id: 'irc-2021/flight-rise',
    says: 'greatest rise of a flight between floors or landings',
    value: 151,
    unit: 'in',
    source: irc('R311.7.3', 'from memory', 'Not read.'),
  },
  landingDepth: {
    id: 'irc-2021/landing-depth',
    says: 'least depth of a landing in the direction of travel',
    value: 36,
    unit: 'in',
    source: irc('R311.7.6', 'from memory', 'Not read.'),
  },
  handrailLow: {
    id: 'irc-2021/handrail-low',
    says: 'least height of a handrail above the nosings',
    value: 34,
    unit: 'in',
    source: irc('R311.7.8.1', 'verified', 'Read on a county page that quotes the 2018 edition.'),
  },
  handrailHigh: {
    id: 'irc-2021/handrail-high',
    says: 'greatest height of a handrail above the nosings',
    value: 38,
    unit: 'in',
    source: irc('R311.7.8.1', 'verified', 'Read on a county page that quotes the 2018 edition.'),
  },
  treadLoad: {
    id: 'irc-2021/tread-load',
    says: 'load on a tread, on 4 sq in',
    value: 300,
    unit: 'lb',
    source: irc('Table R301.5', 'verified', 'Read in Washington WAC 51-51-0301.'),
  },
  guardOpening: {
    id: 'irc-2021/guard-opening',
    says: 'ball that no opening of a guard may pass',
    value: 4,
    unit: 'in',
    source: irc('R312.1.3', 'verified', 'Read on public pages (Buxton ME and others).'),
  },
  stairGuardOpening: {
    id: 'irc-2021/stair-guard-opening',
    says: 'ball that no opening of a guard on the side of a stair may pass',
    value: 4.375,
    unit: 'in',
    source: irc(
      'R312.1.3',
      'verified',
      'Read in Wisconsin SPS 320-325 Appendix B section 13, which matches the IRC.',
    ),
  },
  stairTriangle: {
    id: 'irc-2021/stair-triangle',
    says: 'ball that the opening between a tread, its riser and the lower rail of a guard may not pass',
    value: 6,
    unit: 'in',
    source: irc(
      'R312.1.3',
      'verified',
      'Read in Wisconsin SPS 320-325 Appendix B section 13, which matches the IRC.',
    ),
  },
  stairGuardHeight: {
    id: 'irc-2021/stair-guard-height',
    says: 'least height of a guard on the side of a stair, above the nosings',
    value: 34,
    unit: 'in',
    source: irc('R312.1.2', 'from memory', 'Not read.'),
  },
} as const satisfies { readonly [name: string]: CodeLimit }
