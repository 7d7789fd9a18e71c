/** What a column of a list may hold; 'nothing' is left unread. */
export const MEANINGS = [
  'quantity',
  'length',
  'mark',
  'product',
  'kind',
  'price',
  'supply',
  'code',
  'nothing',
] as const
