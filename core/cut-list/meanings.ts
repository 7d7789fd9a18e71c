/** What a column of a list may hold; 'nothing' is left unread. */
export const MEANINGS = [
  'quantity',
  'length',
  'wild',
  'mark',
  'product',
  'kind',
  'price',
  'supply',
  'pack',
  'minimum',
  'break from',
  'break price',
  'code',
  'nothing',
] as const
