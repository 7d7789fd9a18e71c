import type { Source } from '../types.ts'

/** Diagonal bracing of the AWC deck guide: knee braces at the end posts, along the beam. */
export const DCA_BRACING: {
  /** height of the deck above the ground from which it is asked for, in */
  readonly from: number
  /** along post and beam, from their corner to the brace, in */
  readonly leg: number
  readonly source: Source
} = {
  from: 24,
  leg: 24,
  source: {
    document: 'AWC DCA 6',
    edition: '2012 IRC version',
    clause: 'Figure 10',
    confidence: 'from memory',
    note: 'That only end posts are braced, parallel to the beam, was read in a trade summary (June 2014); 2 ft legs and 2 ft of height were not. County sheets ask for more where a deck stands free: braces both ways.',
  },
}
