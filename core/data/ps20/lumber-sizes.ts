/** Nominal sizes of lumber that the program frames, decks and trims with. */
export const lumberSizes = [
  '2x4',
  '2x6',
  '2x8',
  '2x10',
  '2x12',
  '4x4',
  '4x6',
  '6x6',
  '8x8',
  '5/4x6',
  '5/4x6 grooved',
  '1x8',
  '1x10',
  '1x12',
] as const
