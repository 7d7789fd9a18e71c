import type { LumberSize, Source } from '../types.ts'

/** Nails of a face-mount hanger for one joist, galvanised; the listing of the hanger bought governs. */
export const hangerNails: {
  readonly [size in LumberSize]?: { readonly face: number; readonly joist: number }
} = {
  '2x6': { face: 4, joist: 4 },
  '2x8': { face: 6, joist: 4 },
  '2x10': { face: 8, joist: 4 },
  '2x12': { face: 10, joist: 6 },
}

export const hangerNailsSource: Source = {
  document: 'typical hanger schedules',
  edition: '',
  clause: '',
  confidence: 'from memory',
  note: 'Face nails 10d common, joist nails 10d × 1-1/2 in. Use the listing of the hanger actually bought.',
}

/** Nails by joint; see `nailingSources`. */
export const nailing = {
  /** 10d × 1-1/2 in for each uplift tie */
  upliftTie: 10,
  /** 10d × 1-1/2 in for each angle at an end joist */
  endJoistAngle: 8,
  /** 16d common for each post base */
  postBase: 12,
  /** 16d common for each post cap or pair of plates */
  postCap: 16,
  /** 16d common through the rim into each joist's end; three 10d at least */
  rimToJoistEnd: 3,
  /** 16d common through each end joist into the ledger's end */
  endJoistToLedger: 3,
  /** 16d common at each end of a block */
  blockEnd: 2,
  /** 10d common through the faces of two lapped joists */
  joistLap: 3,
  /** 10d × 1-1/2 in for a pair of plates over the butt of two joists, four into each joist from either side */
  joistSplice: 16,
  /** 10d box, rows in each pair of plies side by side */
  plyRows: 2,
  /** inches between the nails of a row */
  plySpacingInches: 16,
  /** deck screws in each board at each joist */
  deckScrewsPerJoist: 2,
} as const

export const nailingSources: { readonly [joint in keyof typeof nailing]: Source } = {
  upliftTie: commonPractice(),
  endJoistAngle: commonPractice(),
  postBase: commonPractice(),
  postCap: commonPractice(),
  rimToJoistEnd: irc(
    'R507.6.2',
    'verified',
    'Three 10d nails or No.10 screws into each joist end; 16d taken.',
  ),
  endJoistToLedger: commonPractice(),
  blockEnd: irc('Table R602.3(1)', 'from memory', 'Two 16d end nails at each end.'),
  joistLap: irc(
    'R502.6.1',
    'verified',
    'Three 10d face nails; read as quoted by The Building Code Forum in two threads.',
  ),
  joistSplice: commonPractice(),
  plyRows: irc(
    'R507.5',
    'verified',
    'Two rows of 10d (3 in × 0.128) along the edges; three plies from memory.',
  ),
  plySpacingInches: irc('R507.5', 'verified', '16 in on centre along each edge.'),
  deckScrewsPerJoist: {
    document: 'AWC DCA 6',
    edition: '2015',
    clause: 'decking attachment',
    confidence: 'verified',
    note: 'Two 8d threaded nails or two No.8 screws at each joist, read as quoted.',
  },
}

function commonPractice(): Source {
  return {
    document: '',
    edition: '',
    clause: '',
    confidence: 'common practice, no source',
    note: 'The listing of the connector bought governs.',
  }
}

function irc(clause: string, confidence: Source['confidence'], note: string): Source {
  return { document: 'IRC', edition: '2021', clause, confidence, note }
}
