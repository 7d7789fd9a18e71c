import type { Source } from '../types.ts'

/** The two bolts of a guard post on the deck: where they go and what they are, inches. */
export const guardBolts = {
  diameter: 0.5,
  hole: 0.5625,
  /** the upper one under the joists' upper edge, the lower one over their lower edge, where the post ends */
  fromEdge: 2,
  /** beyond the wood: washer, nut and a thread or two */
  beyondWood: 1,
  /** beyond that where a hold-down stands under the nut */
  holdDown: 0.5,
  /** lengths are bought by the whole inch */
  step: 1,
} as const

export const guardBoltsSource: Source = {
  document: '',
  edition: '',
  clause: '',
  confidence: 'common practice, no source',
  note: 'Four diameters off an edge; the hold-down’s own sheet governs where its seat asks for another height.',
}

export const boltHoleSource: Source = {
  document: 'NDS',
  edition: '2018',
  clause: '12.1.3.2',
  confidence: 'verified',
  note: 'Holes 1/32 in to 1/16 in larger than the bolt, read on a page that quotes the clause.',
}
