export { guessPriceColumns } from './find-columns.ts'
export { PRICE_MEANINGS, type PriceMeaning } from './meanings.ts'
export { LONGEST_PRICE_LIST, takePriceList } from './take-price-list.ts'
export type * from './types.ts'
