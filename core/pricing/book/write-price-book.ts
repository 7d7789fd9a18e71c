import type { JsonValue } from '../../job/index.ts'
import { printLength, printMoney, printUnitPrice, TICKS_PER_FOOT, type Ticks } from '../../units/index.ts'
import type { PriceBook, PriceSource, StockTerms } from '../types.ts'

/** A price book in the form of its file, for a person to read and change; reading it gives the same book. */
export function writePriceBook(book: PriceBook): { readonly [key: string]: JsonValue } {
  return {
    version: book.version,
    name: book.name,
    date: book.date,
    supplier: book.supplier,
    invented: book.invented,
    suppliers: book.suppliers.map(({ name, delivery, freeFrom }) => ({
      name,
      ...(delivery === null ? {} : { delivery: printMoney(delivery) }),
      ...(freeFrom === null ? {} : { freeFrom: printMoney(freeFrom) }),
    })),
    labour: { rate: printMoney(book.labourRate), crew: book.crewSize },
    lumber: book.lumber.map(({ product, useClass, code, substitutes, stock }) => ({
      ...product,
      useClass,
      code,
      substitutes: [...substitutes],
      stock: stock.map(({ length, offers, ...terms }) => ({
        length: stockLength(length),
        ...writtenTerms(terms),
        ...(offers === undefined
          ? {}
          : { offers: offers.map(({ supplier, ...offer }) => ({ supplier, ...writtenTerms(offer) })) }),
      })),
    })),
    goods: book.goods.map(({ offers, ...good }) => ({
      ...good,
      price: printUnitPrice(good.price),
      pack: good.pack / 1000,
      ...(offers === undefined
        ? {}
        : {
            offers: offers.map((offer) => ({
              ...offer,
              price: printUnitPrice(offer.price),
              pack: offer.pack / 1000,
            })),
          }),
    })),
    rates: book.rates.map((rate) => ({ ...rate, crewHours: rate.crewHours / 100_000 })),
    joints: book.joints.map((joint) => ({ ...joint, material: printMoney(joint.material) })),
  }
}

function writtenTerms({ price, code, id: _id, breaks, ...limits }: StockTerms & Partial<PriceSource>) {
  return {
    price: printMoney(price),
    code,
    ...limits,
    ...(breaks === undefined
      ? {}
      : { breaks: breaks.map(({ from, price: each }) => ({ from, price: printMoney(each) })) }),
  }
}

function stockLength(length: Ticks): string {
  return length % TICKS_PER_FOOT === 0 ? `${length / TICKS_PER_FOOT}ft` : printLength(length)
}
