import { lumberGrades, lumberSizes, lumberSpecies, lumberTreatments } from '../../../data/index.ts'
import type { ProductClass } from '../../../frame/index.ts'
import { fail, ok, type Result } from '../../../units/index.ts'
import { productKey, productName } from '../../product-name.ts'
import { SAMPLE_BOOK } from '../../sample-book.ts'
import type { GoodPrice, PriceBook } from '../../types.ts'
import { addLength } from './change-rows.ts'
import { readCode, readGoodPrice, readText } from './read-cell.ts'
import { goodOf } from './sellers-of.ts'
import { withSupplier } from './stated-supplier.ts'
import type { BookEdit, Refusal } from './types.ts'

/** A board that the book did not have, with the first of its lengths. */
export function addProduct(
  book: PriceBook,
  edit: Extract<BookEdit, { kind: 'add product' }>,
  today: string,
): Result<PriceBook, Refusal> {
  const product = productOf(edit)
  if (!product.ok) return product
  const key = productKey(product.value)
  if (book.lumber.some((entry) => productKey(entry.product) === key))
    return fail({ message: `${productName(product.value)} is there already`, fix: 'add a length to it' })
  const useClass = readText(edit.useClass, 'the use class')
  if (!useClass.ok) return useClass
  const entry = {
    product: product.value,
    useClass: useClass.value,
    code: key.replaceAll(' ', '-'),
    substitutes: [],
    stock: [],
  }
  const { length, supplier, price, code } = edit
  return addLength(
    { ...book, lumber: [...book.lumber, entry] },
    { kind: 'add length', product: key, length, supplier, price, code },
    today,
  )
}

function productOf(
  edit: Pick<Extract<BookEdit, { kind: 'add product' }>, 'size' | 'species' | 'grade' | 'treatment'>,
): Result<ProductClass, Refusal> {
  const size = lumberSizes.find((one) => one === edit.size)
  const species = lumberSpecies.find((one) => one === edit.species)
  const grade = lumberGrades.find((one) => one === edit.grade)
  const treatment = lumberTreatments.find((one) => one === edit.treatment)
  if (size === undefined || species === undefined || grade === undefined || treatment === undefined)
    return fail({
      message: 'no deck is framed or laid with such a board here',
      fix: 'choose a size, a species, a grade and a treatment that are offered',
    })
  return ok({ size, species, grade, treatment })
}

/** Goods that jobs may need and the book has no price for; what they are is told as the sample prices tell it. */
export function goodsWithoutPrice(book: PriceBook): readonly GoodPrice[] {
  return SAMPLE_BOOK.goods.filter(({ sku }) => !book.goods.some((good) => good.sku === sku))
}

/** A good that the book had no price of, of the day on which it is typed. */
export function addGood(
  book: PriceBook,
  edit: Extract<BookEdit, { kind: 'add good' }>,
  today: string,
): Result<PriceBook, Refusal> {
  const known = goodsWithoutPrice(book).find(({ sku }) => sku === edit.sku)
  if (known === undefined)
    return fail({
      message: 'this good has a price already, or no job needs it',
      fix: 'change the price that is there, or state an allowance in the job',
    })
  const price = readGoodPrice(edit.price)
  if (!price.ok) return price
  const code = readCode(edit.code)
  if (!code.ok) return code
  const { supplier } = edit
  const offer = { supplier, price: price.value, pack: known.pack, code: code.value, date: today }
  const good = goodOf({ ...known, note: '' }, [offer], book)
  const stated = supplier === book.supplier ? book : withSupplier(book, supplier)
  return ok(good === null ? stated : { ...stated, goods: [...stated.goods, good] })
}
