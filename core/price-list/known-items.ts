import {
  type GoodPrice,
  goodOffers,
  type LumberProduct,
  type PriceBook,
  productKey,
  productName,
  stockOffers,
} from '../pricing/index.ts'
import type { Ticks } from '../units/index.ts'

/** What a row of a list is about, once it is found in the book. */
export type KnownItem =
  | { readonly kind: 'good'; readonly good: GoodPrice }
  | { readonly kind: 'stock'; readonly product: LumberProduct; readonly length: Ticks }
  /** a product whose length the row must say */
  | { readonly kind: 'product'; readonly product: LumberProduct }

/** Finds things of a price book by the yard's code, or by what they are called; spaces, case and × do not matter. */
export interface KnownItems {
  /** by the supplier's own code, else by the book's */
  byCode(code: string, supplier: string): KnownItem | null
  byName(name: string): KnownItem | null
  readonly codes: readonly string[]
  readonly names: readonly string[]
}

export function knownItems(book: PriceBook): KnownItems {
  const codes = new Map<string, KnownItem>()
  const names = new Map<string, KnownItem>()
  const ofSupplier = new Map<string, KnownItem>()
  const sizes = new Map<string, LumberProduct[]>()
  for (const good of book.goods) {
    const item: KnownItem = { kind: 'good', good }
    if (good.code !== '') codes.set(plain(good.code), item)
    codes.set(plain(good.sku), item)
    names.set(plain(good.label), item)
    for (const { supplier, code } of goodOffers(good, book))
      if (code !== '') ofSupplier.set(keyOf(supplier, code), item)
  }
  for (const product of book.lumber) {
    const item: KnownItem = { kind: 'product', product }
    codes.set(plain(product.code), item)
    names.set(plain(productName(product.product)), item)
    names.set(plain(productKey(product.product)), item)
    sizes.set(product.product.size, [...(sizes.get(product.product.size) ?? []), product])
    for (const entry of product.stock) {
      const { length } = entry
      codes.set(plain(entry.code), { kind: 'stock', product, length })
      for (const { supplier, code } of stockOffers(entry, book))
        ofSupplier.set(keyOf(supplier, code), { kind: 'stock', product, length })
    }
  }
  // a bare size names a product only where the book has one of it
  for (const [size, products] of sizes) {
    const [only, other] = products
    if (only !== undefined && other === undefined) names.set(plain(size), { kind: 'product', product: only })
  }
  return {
    byCode: (code, supplier) => ofSupplier.get(keyOf(supplier, code)) ?? codes.get(plain(code)) ?? null,
    byName: (name) => names.get(plain(name)) ?? null,
    codes: [...codes.keys()],
    names: [...names.keys()],
  }
}

function keyOf(supplier: string, code: string): string {
  return JSON.stringify([supplier, plain(code)])
}

function plain(words: string): string {
  return words
    .toLowerCase()
    .replaceAll('×', 'x')
    .replace(/(\d)\s*x\s*(?=\d)/g, '$1x')
    .replace(/[\s,]+/g, ' ')
    .trim()
}
