import type { CutJob, FixedPiece, StockOption } from '../cutting/index.ts'
import { type PriceBook, productName, stockOffers } from '../pricing/index.ts'
import { cents, fail, ok, type Result, type Ticks, ticks } from '../units/index.ts'
import { bookProduct, type ProductRows, productRows, rowFault } from './products.ts'
import type { CutList, ListPlan, ListStock, NamedStock, RowFault, SawSettings } from './types.ts'

/** One product of a list, ready to be planned. */
export interface ListJob extends Omit<ListPlan, 'plan'> {
  readonly cutJob: CutJob
}

/**
 * One cutting job per product of a list. Stock comes from the list, else from the price book; where the list's stock
 * has no prices, the least length is bought.
 */
export function listJobs(
  list: CutList,
  saw: SawSettings,
  book: PriceBook,
): Result<readonly ListJob[], readonly RowFault[]> {
  if (list.pieces.length === 0) {
    const whole = { row: 0, line: 1 }
    return fail([rowFault('list', whole, 'the list has no pieces', 'write at least one row with a length')])
  }
  const faults: RowFault[] = []
  const jobs: ListJob[] = []
  for (const rows of productRows(list, faults)) {
    const stock = rows.stock.length > 0 ? ownStock(rows, faults) : bookStock(rows, book, faults)
    if (stock === null) continue
    const { options, label, ...named } = stock
    jobs.push({
      product: rows.product,
      ...named,
      cutJob: {
        id: rows.key,
        label,
        kerf: saw.kerf,
        endTrim: saw.endTrim,
        stock: options,
        pieces: rows.pieces.flatMap(piecesOf),
        runs: [],
        handling: cents(0),
        perCut: cents(0),
        keep: null,
        objectives: ['least cost'],
      },
    })
  }
  return faults.length > 0 ? fail(faults) : ok(jobs)
}

type Stock = Pick<ListJob, 'stock' | 'stockFrom' | 'lengthUnit'> & {
  readonly label: string
  readonly options: readonly StockOption[]
}

function ownStock({ product, stock }: ProductRows, faults: RowFault[]): Stock | null {
  const bought = stock.filter(({ offcut }) => !offcut)
  const unpriced = bought.filter(({ price }) => price === null)
  if (unpriced.length > 0 && unpriced.length < bought.length) {
    for (const row of unpriced) {
      const fix = 'price every length on sale, or none of them'
      faults.push(rowFault(row.source, row, 'this length has no price, and others of its product have', fix))
    }
    return null
  }
  const lengthUnit = unpriced.length === 0 ? null : commonDivisor(bought.map(({ length }) => length))
  const named = stock.map((row, index): NamedStock & { readonly row: ListStock } => ({
    id: `stock-${index + 1}`,
    code: row.code,
    length: row.length,
    offcut: row.offcut,
    row,
  }))
  return {
    label: product === '' ? 'the list' : product,
    stock: named.map(({ row: _row, ...rest }) => rest),
    stockFrom: 'list',
    lengthUnit,
    options: named.map(({ id, length, offcut, row }) => ({
      id,
      length,
      offcut,
      supply: row.supply,
      price: offcut ? (row.price ?? cents(0)) : (row.price ?? cents(length / (lengthUnit ?? 1))),
      ...(row.pack === null ? {} : { pack: row.pack }),
      ...(row.minimum === null ? {} : { minimum: row.minimum }),
      ...(row.priceBreak === null ? {} : { breaks: [row.priceBreak] }),
    })),
  }
}

function bookStock(rows: ProductRows, book: PriceBook, faults: RowFault[]): Stock | null {
  const entry = bookProduct(rows, book, faults)
  if (entry === null) return null
  const offers = entry.stock.flatMap((stock) =>
    stockOffers(stock, book).map((offer) => ({ ...offer, length: stock.length })),
  )
  return {
    label: productName(entry.product),
    stock: offers.map(({ id, code, length }) => ({ id, code, length, offcut: false })),
    stockFrom: 'price book',
    lengthUnit: null,
    options: offers.map(({ id, length, price, supply, pack, minimum, breaks }) => ({
      id,
      length,
      price,
      supply: supply ?? null,
      offcut: false,
      ...(pack === undefined ? {} : { pack }),
      ...(minimum === undefined ? {} : { minimum }),
      ...(breaks === undefined ? {} : { breaks }),
    })),
  }
}

/** Pieces of a row that names no mark are marked by it: #5 is the piece of row 5. */
function piecesOf({ row, mark, length, wild, count }: CutList['pieces'][number]): readonly FixedPiece[] {
  const words = mark === '' ? `#${row}` : mark
  const long = { length: ticks(length + wild), ...(wild === 0 ? {} : { wild }) }
  return Array.from({ length: count }, (_, index) => ({ id: `${row}.${index + 1}`, mark: words, ...long }))
}

/** Prices in proportion to lengths, as small as they can be: small whole numbers make a sharp bound. */
function commonDivisor(lengths: readonly Ticks[]): Ticks {
  return ticks(lengths.reduce<number>(greatest, 0))
}

function greatest(a: number, b: number): number {
  return b === 0 ? a : greatest(b, a % b)
}
