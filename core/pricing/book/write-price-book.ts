import type { JsonValue } from '../../job/index.ts'
import { printLength, printMoney, printUnitPrice, TICKS_PER_FOOT, type Ticks } from '../../units/index.ts'
import type { PriceBook } from '../types.ts'

/** A price book in the form of its file, for a person to read and change; reading it gives the same book. */
export function writePriceBook(book: PriceBook): { readonly [key: string]: JsonValue } {
  return {
    version: book.version,
    name: book.name,
    date: book.date,
    supplier: book.supplier,
    invented: book.invented,
    labour: { rate: printMoney(book.labourRate), crew: book.crewSize },
    lumber: book.lumber.map(({ product, useClass, code, substitutes, stock }) => ({
      ...product,
      useClass,
      code,
      substitutes: [...substitutes],
      stock: stock.map(({ length, price, code: stockCode, ...limits }) => ({
        length: stockLength(length),
        price: printMoney(price),
        code: stockCode,
        ...limits,
      })),
    })),
    goods: book.goods.map((good) => ({ ...good, price: printUnitPrice(good.price), pack: good.pack / 1000 })),
    rates: book.rates.map((rate) => ({ ...rate, crewHours: rate.crewHours / 100_000 })),
    joints: book.joints.map((joint) => ({ ...joint, material: printMoney(joint.material) })),
  }
}

function stockLength(length: Ticks): string {
  return length % TICKS_PER_FOOT === 0 ? `${length / TICKS_PER_FOOT}ft` : printLength(length)
}
