import type { Source } from '../types.ts'

/** Holes for the ledger's fasteners, inches. */
export const ledgerHoles = {
  /** for the thread of a 1/2 in lag screw, in the band; through the ledger as wide as its shank */
  lagLead: 0.3125,
  lagShank: 0.5,
  /** for a 1/2 in bolt */
  bolt: 0.5625,
} as const

export const ledgerHolesSource: Source = {
  document: 'published guidance for lag screws',
  edition: '',
  clause: '',
  confidence: 'verified',
  note: 'Read on a stored page. NDS 12.1.4, from memory, asks 40 to 70 % of the thread’s diameter in light woods and 60 to 75 % in those as heavy as Southern Pine: 5/16 in is 63 %.',
}
