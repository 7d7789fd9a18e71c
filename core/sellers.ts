import type { Design } from './estimate-types.ts'
import {
  atThisBook,
  goodOffers,
  goodThing,
  isFromYard,
  leaveOut,
  type PriceBook,
  productKey,
  productName,
  stockOffers,
} from './pricing/index.ts'

/** Something that a design needs, and who sells it. */
interface Needed {
  readonly thing: string
  readonly label: string
  readonly suppliers: ReadonlySet<string>
}

/** Who sells what a design needs. */
export interface Sellers {
  /** those who sell any of it, in the order in which the book names them */
  readonly names: readonly string[]
  /** those without whom something cannot be had */
  readonly only: ReadonlySet<string>
  /** what a supplier does not sell, in words */
  readonly lackedBy: (supplier: string) => readonly string[]
}

/** A board product is had where any length of it is: whether its lengths do is for the cutting plan to say. */
export function neededThings(made: Design, book: PriceBook): Sellers {
  const needed = [...neededBoards(made, book), ...neededGoods(made, book)]
  const stated = [book.supplier, ...book.suppliers.map(({ name }) => name)]
  const names = [...new Set([...stated, ...needed.flatMap(({ suppliers }) => [...suppliers])])]
  return {
    names: names.filter((name) => needed.some(({ suppliers }) => suppliers.has(name))),
    only: new Set(needed.flatMap(({ suppliers }) => (suppliers.size === 1 ? [...suppliers] : []))),
    lackedBy: (supplier) =>
      needed.filter(({ suppliers }) => !suppliers.has(supplier)).map(({ label }) => label),
  }
}

function neededBoards({ takeoff }: Design, book: PriceBook): readonly Needed[] {
  const wanted = new Set([...takeoff.pieces, ...takeoff.runs].map(({ product }) => productKey(product)))
  return book.lumber
    .filter(({ product }) => wanted.has(productKey(product)))
    .map(({ product, stock }) => ({
      thing: productKey(product),
      label: productName(product),
      suppliers: new Set(stock.flatMap((entry) => stockOffers(entry, book).map(({ supplier }) => supplier))),
    }))
}

function neededGoods({ job, takeoff }: Design, book: PriceBook): readonly Needed[] {
  const { goods } = leaveOut(job, atThisBook(job, takeoff, book))
  const wanted = new Set(goods.filter(({ thousandths }) => thousandths > 0).map(({ sku }) => sku))
  return book.goods
    .filter(({ sku }) => wanted.has(sku) && isFromYard(sku))
    .map((good) => ({
      thing: goodThing(good.sku),
      label: good.label,
      suppliers: new Set(goodOffers(good, book).map(({ supplier }) => supplier)),
    }))
}
