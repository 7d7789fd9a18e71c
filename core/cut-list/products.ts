import { type LumberProduct, type PriceBook, productKey, productName } from '../pricing/index.ts'
import type { CutList, ListPiece, ListStock, RowFault } from './types.ts'

/** Pieces and stock of one product of a list. */
export interface ProductRows {
  readonly key: string
  readonly product: string
  readonly pieces: readonly ListPiece[]
  readonly stock: readonly ListStock[]
}

/** One key for the ways of writing a product: "2 X 6", "2×6" and "2x6" are one. */
export function listKey(product: string): string {
  return product
    .toLowerCase()
    .replaceAll('×', 'x')
    .replace(/(\d)\s*x\s*(?=\d)/g, '$1x')
    .replace(/\s+/g, ' ')
    .trim()
}

/** Rows of a list by product, in the order of its pieces; a row without a product among rows with one is a fault. */
export function productRows({ pieces, stock }: CutList, faults: RowFault[]): readonly ProductRows[] {
  const groups = new Map<string, { product: string; pieces: ListPiece[]; stock: ListStock[] }>()
  for (const piece of pieces) {
    const key = listKey(piece.product)
    const group = groups.get(key) ?? { product: piece.product, pieces: [], stock: [] }
    group.pieces.push(piece)
    groups.set(key, group)
  }
  if (groups.size > 1) {
    for (const piece of groups.get('')?.pieces ?? []) {
      faults.push(rowFault('list', piece, 'this row names no product, and others do', 'name its product'))
    }
  }
  const [only] = groups.size === 1 ? groups.values() : []
  for (const row of stock) {
    const group = groups.get(listKey(row.product)) ?? (row.product === '' ? only : undefined)
    if (group !== undefined) group.stock.push(row)
    else if (row.product === '') {
      const names = [...groups.values()].map(({ product }) => product).join(', ')
      faults.push(rowFault(row.source, row, 'this stock names no product', `name one of: ${names}`))
    } else if (only?.product === '') {
      faults.push(
        rowFault(
          row.source,
          row,
          'this stock names a product and the pieces name none',
          'name it in both or in neither',
        ),
      )
    }
  }
  return [...groups].map(([key, group]) => ({ key, ...group }))
}

/** The one product of a price book that a list's words mean, by its name, size or code; or why there is not one. */
export function bookProduct(
  { key, product, pieces }: ProductRows,
  book: PriceBook,
  faults: RowFault[],
): LumberProduct | null {
  const [first] = pieces
  if (first === undefined) throw new Error('a product of a list has pieces')
  const wrong = (message: string, fix: string) => {
    faults.push(rowFault('list', first, message, fix))
    return null
  }
  if (key === '')
    return wrong('no stock is given and no product is named', 'give stock lengths, or a column of products')
  const named = (words: readonly string[]) => words.some((word) => listKey(word) === key)
  const exact = book.lumber.filter((entry) =>
    named([productName(entry.product), productKey(entry.product), entry.code]),
  )
  const found = exact.length > 0 ? exact : book.lumber.filter((entry) => named([entry.product.size]))
  const [entry, other] = found.filter(({ stock }) => stock.length > 0)
  if (entry === undefined) {
    const sizes = [...new Set(book.lumber.map((one) => one.product.size))].join(', ')
    return wrong(
      `no stock is given for "${product}", and the price book "${book.name}" lists none`,
      `give its stock lengths, or name one of: ${sizes}`,
    )
  }
  if (other === undefined) return entry
  const names = found.map((one) => productName(one.product)).join('; ')
  return wrong(`"${product}" may be one of several products`, `name one of: ${names}`)
}

export function rowFault(
  source: RowFault['source'],
  { row, line }: { readonly row: number; readonly line: number },
  message: string,
  fix: string,
): RowFault {
  return { source, row, line, column: 0, heading: '', message, fix }
}
