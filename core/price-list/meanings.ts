/** What a column of a price list may hold; 'nothing' is left unread. */
export const PRICE_MEANINGS = [
  'code',
  'item',
  'length',
  'price',
  'unit',
  'date',
  'supplier',
  'nothing',
] as const

export type PriceMeaning = (typeof PRICE_MEANINGS)[number]

/** Words by which people and yards head a column, the plainest first. */
const WORDS: { readonly [meaning in Exclude<PriceMeaning, 'nothing'>]: readonly string[] } = {
  code: [
    'code',
    'item code',
    'yard code',
    'sku',
    'item no',
    'item number',
    'article',
    'part no',
    'part number',
  ],
  item: ['item', 'product', 'description', 'name', 'goods', 'material', 'size', 'label'],
  length: ['length', 'len', 'stock length', 'length ft', 'length feet'],
  price: ['price', 'unit price', 'price each', 'each', 'cost', 'cost each', 'net', 'net price', 'sell'],
  unit: ['unit', 'uom', 'per', 'sold by', 'price per', 'unit of measure'],
  date: ['date', 'price date', 'prices of', 'as of', 'valid from', 'updated'],
  supplier: ['supplier', 'yard', 'vendor', 'dealer', 'source'],
}

const MEANINGS: ReadonlyMap<string, PriceMeaning> = new Map(
  Object.entries(WORDS).flatMap(([meaning, words]) =>
    words.map((word): [string, PriceMeaning] => [word, meaning as PriceMeaning]),
  ),
)

/** What a heading such as "Net price ($)" says of its column. */
export function meaningOfHeading(text: string): PriceMeaning {
  const words = (text.toLowerCase().match(/[a-z]+/g) ?? []).join(' ')
  return MEANINGS.get(words) ?? 'nothing'
}

/** Headings that would have been understood, for a fault's sentence. */
export function headingsFor(meaning: Exclude<PriceMeaning, 'nothing'>): string {
  return WORDS[meaning].slice(0, 3).join(', ')
}
