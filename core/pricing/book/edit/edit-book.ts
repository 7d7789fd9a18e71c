import { fail, ok, printLength, type Result } from '../../../units/index.ts'
import { productKey, productName } from '../../product-name.ts'
import type { PriceBook } from '../../types.ts'
import { readPriceBook } from '../read-price-book.ts'
import { writePriceBook } from '../write-price-book.ts'
import { addGood, addProduct } from './add-products.ts'
import { addLength, addPrice, addSupplier, removeRow } from './change-rows.ts'
import { setCell } from './set-cell.ts'
import type { BookEdit, BookField, BookRow, EditFault, Refusal } from './types.ts'

/** A changed book, and what was changed as a step that can be taken back. */
export interface EditedBook {
  readonly book: PriceBook
  readonly label: string
}

/**
 * All edits in order, or every one that cannot be made, with what would be right; then nothing is changed. The book that
 * comes out reads back from its file.
 * @param today ISO date: of that day is a price that is typed
 */
export function editBook(
  book: PriceBook,
  edits: readonly BookEdit[],
  today: string,
): Result<EditedBook, readonly EditFault[]> {
  const faults: EditFault[] = []
  let edited = book
  for (const [at, edit] of edits.entries()) {
    const made = editOnce(edited, edit, today)
    if (made.ok) edited = made.value
    else faults.push({ edit: at, ...made.error })
  }
  if (faults.length > 0) return fail(faults)
  const read = readPriceBook(writePriceBook(edited))
  if (!read.ok)
    return fail(read.error.map(({ message, fix }) => ({ edit: Math.max(0, edits.length - 1), message, fix })))
  return ok({ book: read.value, label: labelOf(book, read.value, edits) })
}

function editOnce(book: PriceBook, edit: BookEdit, today: string): Result<PriceBook, Refusal> {
  switch (edit.kind) {
    case 'set':
      return setCell(book, edit.row, edit.field, edit.text, today)
    case 'add price':
      return addPrice(book, edit, today)
    case 'add length':
      return addLength(book, edit, today)
    case 'add product':
      return addProduct(book, edit, today)
    case 'add good':
      return addGood(book, edit, today)
    case 'add supplier':
      return addSupplier(book, edit)
    case 'remove':
      return removeRow(book, edit.row)
  }
}

const FIELD_WORDS: { readonly [field in BookField]: string } = {
  price: 'price',
  code: 'code',
  date: 'date',
  pack: 'pack',
  minimum: 'least count',
  supply: 'supply',
  breaks: 'price breaks',
  crewHours: 'hours',
  workers: 'workers',
  material: 'material',
  minutes: 'minutes',
  name: 'name',
  delivery: 'delivery',
  freeFrom: 'free delivery',
  labourRate: 'labour rate',
  crewSize: 'crew',
}

/** @param edited the book after them: what is new has its name there */
function labelOf(book: PriceBook, edited: PriceBook, edits: readonly BookEdit[]): string {
  const [first] = edits
  if (first === undefined) return 'Nothing'
  if (edits.length > 1) return `${edits.length} changes of the price book`
  switch (first.kind) {
    case 'set': {
      const value = first.text.trim() === '' ? 'none' : first.text.trim().slice(0, 60)
      return `${rowWords(book, first.row)}: ${FIELD_WORDS[first.field]} ${value}`
    }
    case 'add price':
      return `Price of ${rowWords(book, first.row)}`
    case 'add length':
      return `${first.length.trim()} of ${productWords(book, first.product)}`
    case 'add product':
      return `New board: ${first.size} ${first.species} ${first.grade}, ${first.treatment}`
    case 'add good':
      return `Price of ${rowWords(edited, { ...first, of: 'good' })}`
    case 'add supplier':
      return `Supplier ${first.name.trim()}`
    case 'remove':
      return `Remove ${rowWords(book, first.row)}`
  }
}

/** A row as a person would call it. */
function rowWords(book: PriceBook, row: BookRow): string {
  switch (row.of) {
    case 'board':
      return `${productWords(book, row.product)}, ${printLength(row.length)}, ${row.supplier}`
    case 'product':
      return productWords(book, row.product)
    case 'good':
      return `${book.goods.find(({ sku }) => sku === row.sku)?.label ?? row.sku}, ${row.supplier}`
    case 'rate':
      return book.rates.find(({ id }) => id === row.id)?.label ?? row.id
    case 'joint':
      return book.joints.find(({ kind }) => kind === row.kind)?.label ?? row.kind
    case 'supplier':
      return row.name
    case 'book':
      return 'Price book'
  }
}

function productWords(book: PriceBook, key: string): string {
  const product = book.lumber.find((entry) => productKey(entry.product) === key)?.product
  return product === undefined ? key : productName(product)
}
