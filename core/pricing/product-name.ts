import type { Species } from '../data/index.ts'
import type { ProductClass } from '../frame/index.ts'

/** Species in the trade's words. */
export const SPECIES_NAMES: { readonly [species in Species]: string } = {
  SP: 'Southern Pine',
  DFL: 'Douglas fir-larch',
  HF: 'hem-fir',
  SPF: 'spruce-pine-fir',
  RW: 'redwood',
  WC: 'western cedar',
}

/** A product in the trade's words, e.g. "2x10 Southern Pine No.2, treated". */
export function productName(product: ProductClass): string {
  return `${product.size} ${SPECIES_NAMES[product.species]} ${product.grade}, ${product.treatment}`
}

/** One key per product class, the same for equal classes. */
export function productKey(product: ProductClass): string {
  return `${product.size} ${product.species} ${product.grade} ${product.treatment}`
}
