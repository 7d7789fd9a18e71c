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
  document: 'NDS',
  edition: '2018',
  clause: '12.1.4.2',
  confidence: 'verified',
  note: 'Lead hole of the thread read on a stored page; the clause’s number from memory. It widens with the density of the wood.',
}
