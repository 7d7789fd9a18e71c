import type { CodeLimit } from '../code-limit.ts'
import type { Confidence, Source } from '../types.ts'

function irc(clause: string, confidence: Confidence, note: string): Source {
  return { document: 'IRC', edition: '2021', clause, confidence, note }
}

/** Single numbers of the IRC that bear on decks. */
export const IRC_LIMITS = {
  deadLoad: {
    id: 'irc-2021/dead-load',
    says: 'dead load that the deck tables of R507 include',
    value: 10,
    unit: 'psf',
    source: irc('R507.1', 'verified', 'Read in trade articles on the 2021 deck provisions.'),
  },
  spanCap: {
    id: 'irc-2021/span-cap',
    says: 'greatest joist span of the tables',
    value: 216,
    unit: 'in',
    source: irc('Table R507.6', 'verified', 'Read in AWC DCA 6 Table 2.'),
  },
  cantileverShare: {
    id: 'irc-2021/cantilever-share',
    says: 'greatest cantilever of a joist as a share of its adjacent span',
    value: 0.25,
    unit: 'ratio',
    source: irc('R507.6', 'verified', 'Read as a quotation of the 2015 sentence, which 2021 keeps.'),
  },
  overhangShare: {
    id: 'irc-2021/overhang-share',
    says: 'greatest overhang of a beam as a share of its adjacent span',
    value: 0.25,
    unit: 'ratio',
    source: irc('R507.5', 'verified', 'Read on a public page that quotes R507.5.'),
  },
  bearingOnWood: {
    id: 'irc-2021/bearing-on-wood',
    says: 'least bearing on wood or metal',
    value: 1.5,
    unit: 'in',
    source: irc('R507.5.1 and R507.6.1', 'verified', 'Read in code summaries; also R502.6.'),
  },
  leastLedger: {
    id: 'irc-2021/least-ledger',
    says: 'least nominal depth of a ledger',
    value: 8,
    unit: 'in',
    source: irc('R507.9.1.1', 'verified', 'Read in a permit document (Everett WA).'),
  },
  footingDepth: {
    id: 'irc-2021/footing-depth',
    says: 'least depth of a footing under undisturbed ground',
    value: 12,
    unit: 'in',
    source: irc('R507.3.2 and R403.1.4', 'verified', 'Read on public pages on deck footings.'),
  },
  postHeightCap: {
    id: 'irc-2021/post-height-cap',
    says: 'greatest post height of the tables',
    value: 168,
    unit: 'in',
    source: irc('Table R507.4', 'from memory; reproduced', 'The cap of the recalled table.'),
  },
  decay: {
    id: 'irc-2021/decay',
    says: 'supports of decks in the weather are treated or naturally durable',
    value: 1,
    unit: 'count',
    source: irc('R317.1', 'verified', 'Read on a public page that quotes R317.1.'),
  },
  guardDrop: {
    id: 'irc-2021/guard-drop',
    says: 'drop to the ground above which a guard is required',
    value: 30,
    unit: 'in',
    source: irc('R312.1.1', 'verified', 'Read on public pages (Buxton ME and others).'),
  },
  guardReach: {
    id: 'irc-2021/guard-reach',
    says: 'horizontal distance from the edge within which the drop is measured',
    value: 36,
    unit: 'in',
    source: irc('R312.1.1', 'verified', 'Read on public pages (Buxton ME and others).'),
  },
  guardHeight: {
    id: 'irc-2021/guard-height',
    says: 'least height of a guard',
    value: 36,
    unit: 'in',
    source: irc('R312.1.2', 'verified', 'Read on public pages (Buxton ME and others).'),
  },
  lateralDevices: {
    id: 'irc-2021/lateral-devices',
    says: 'hold-downs of 1,500 lb each for lateral load',
    value: 2,
    unit: 'count',
    source: irc(
      'R507.9.2',
      'verified',
      'Read as a quotation of the 2015 clause; four of 750 lb are the other way.',
    ),
  },
  weakLateralDevices: {
    id: 'irc-2021/weak-lateral-devices',
    says: 'hold-downs of 750 lb each for lateral load',
    value: 4,
    unit: 'count',
    source: irc('R507.9.2', 'verified', 'Read on a public page on R507.2.3 of an earlier edition.'),
  },
  riser: {
    id: 'irc-2021/riser',
    says: 'greatest height of a riser',
    value: 7.75,
    unit: 'in',
    source: irc('R311.7.5.1', 'verified', 'Read on a county page that quotes the 2018 edition.'),
  },
  tread: {
    id: 'irc-2021/tread',
    says: 'least depth of a tread',
    value: 10,
    unit: 'in',
    source: irc('R311.7.5.2', 'verified', 'Read on a county page that quotes the 2018 edition.'),
  },
  stairWidth: {
    id: 'irc-2021/stair-width',
    says: 'least width of a stair above the handrail',
    value: 36,
    unit: 'in',
    source: irc('R311.7.1', 'verified', 'Read on a county page that quotes the 2018 edition.'),
  },
  handrailRisers: {
    id: 'irc-2021/handrail-risers',
    says: 'risers from which a handrail is required',
    value: 4,
    unit: 'count',
    source: irc('R311.7.8', 'from memory', 'Not read.'),
  },
  guardLoad: {
    id: 'irc-2021/guard-load',
    says: 'load on the top of a guard, in any direction',
    value: 200,
    unit: 'lb',
    source: irc('Table R301.5', 'verified', 'Read in Washington WAC 51-51-0301.'),
  },
  notchShare: {
    id: 'irc-2021/notch-share',
    says: 'greatest depth of a notch as a share of the joist',
    value: 1 / 6,
    unit: 'ratio',
    source: irc('R502.8.1', 'verified', 'Read as quoted; also Wisconsin SPS 321.22.'),
  },
  notchLengthShare: {
    id: 'irc-2021/notch-length-share',
    says: 'greatest length of a notch as a share of the joist depth',
    value: 1 / 3,
    unit: 'ratio',
    source: irc('R502.8.1', 'verified', 'Read as quoted; also Wisconsin SPS 321.22.'),
  },
  endNotchShare: {
    id: 'irc-2021/end-notch-share',
    says: 'greatest depth of a notch at the end of a joist as a share of it',
    value: 0.25,
    unit: 'ratio',
    source: irc('R502.8.1', 'verified', 'Read as quoted; also Wisconsin SPS 321.22.'),
  },
} as const satisfies { readonly [name: string]: CodeLimit }
